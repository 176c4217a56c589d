import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** `dist` holds the type check's declarations; the page that the server serves goes to `dist-page`. */
export default defineConfig({
  root: here("."),
  resolve: { alias: { "@ferrule/core": here("../core/src/index.ts") } },
  build: { outDir: "dist-page", emptyOutDir: true, target: "es2022" },
});
