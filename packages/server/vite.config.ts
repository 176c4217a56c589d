import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/**
 * Puts the server and its packages into a few files, so that a start reads those instead of more than a thousand, which took
 * half of its time. What has compiled code or files of its own beside it stays a package.
 */
export default defineConfig({
  root: here("."),
  ssr: { noExternal: true, external: ["@photostructure/sqlite", "highs"] },
  build: {
    ssr: true,
    outDir: "bundle",
    // A server that runs from here may still want a file of it.
    emptyOutDir: false,
    target: "node20",
    minify: true,
    rolldownOptions: {
      input: {
        main: here("src/main.ts"),
        thread: here("src/threads/thread.ts"),
        "command-line": here("src/command-line/main.ts"),
      },
      output: { entryFileNames: "[name].js", chunkFileNames: "[name].js" },
    },
  },
});
