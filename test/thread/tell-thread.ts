import { inject } from "vitest";

// A thread takes over the environment of who starts it, and nothing else before its code is there.
process.env["FERRULE_TEST_THREAD"] = inject("threadFile");
