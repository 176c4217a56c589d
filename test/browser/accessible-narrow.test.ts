import { describeViews } from "./views.test-kit.ts";

describeViews(360, 760);
