import { createHash } from "node:crypto";
import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { defineConfig, type Plugin } from "vite";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** Tells the service worker which files there are; a build of other files is thereby another service worker. */
const shellFiles: Plugin = {
  name: "shell-files",
  enforce: "post",
  generateBundle(_options, bundle) {
    const built = Object.keys(bundle).filter((name) => name.startsWith("assets/"));
    const own = readdirSync(here("public"), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map(({ parentPath, name }) => `${parentPath}/${name}`.slice(here("public").length + 1));
    const files = [...built, ...own].map((name) => `/${name}`).sort();
    const version = createHash("sha256").update(files.join("\n")).digest("hex").slice(0, 12);
    const worker = bundle["service-worker.js"];
    if (worker?.type !== "chunk") throw new Error("the build has no service worker");
    worker.code = `const shellFiles = ${JSON.stringify(files)};\nconst shellVersion = "${version}";\n${worker.code}`;
  },
};

/** `dist` holds the type check's declarations; the page that the server serves goes to `dist-page`. */
export default defineConfig({
  root: here("."),
  resolve: { alias: { "@ferrule/core": here("../core/src/index.ts") } },
  plugins: [shellFiles],
  worker: { format: "es" },
  build: {
    outDir: "dist-page",
    emptyOutDir: true,
    target: "es2022",
    rolldownOptions: {
      input: {
        index: here("index.html"),
        pair: here("pair.html"),
        trust: here("trust.html"),
        "service-worker": here("src/offline/service-worker.ts"),
      },
      output: {
        entryFileNames: ({ name }) =>
          name === "service-worker" ? "service-worker.js" : "assets/[name]-[hash].js",
      },
    },
  },
});
