import { describeViews } from "./views.test-kit.ts";

describeViews(1280, 900);
