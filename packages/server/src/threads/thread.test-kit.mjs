import { rmSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import { threadId } from "node:worker_threads";
import { build } from "vite";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

// Runs the thread from its source, which Node alone could not, since it is TypeScript: as one file, where its packages are found.
const outDir = here(`../../node_modules/.thread-test/${process.pid}-${threadId}`);
await build({
  configFile: false,
  logLevel: "error",
  resolve: { alias: { "@ferrule/core": here("../../../core/src/index.ts") } },
  ssr: { noExternal: ["fuse.js", "zod"], external: ["highs"] },
  build: {
    ssr: here("thread.ts"),
    outDir,
    emptyOutDir: true,
    rollupOptions: { output: { entryFileNames: "thread.mjs" } },
  },
});
const { main } = await import(pathToFileURL(`${outDir}/thread.mjs`).href);
rmSync(outDir, { recursive: true });
main();
