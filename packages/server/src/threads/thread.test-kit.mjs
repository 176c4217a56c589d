import { pathToFileURL } from "node:url";

// Runs the thread from its source, which Node alone could not, since it is TypeScript: put together once for a run of the tests.
const built = process.env.FERRULE_TEST_THREAD;
if (built === undefined)
  throw new Error("The thread is put together by test/thread/build-thread.ts, and was not");
const { main } = await import(pathToFileURL(built).href);
main();
