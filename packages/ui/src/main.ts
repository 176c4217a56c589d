import "./app.ts";
