import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "vite";

/** What a page has fetched by then. */
export const sizes = ["the first view", "and the view of a listing", "and all other views"];
export const numberOf = () => 0;
export const sizeText = (size) => size;
export const about =
  "Scripts and styles as gzip sends them, of the page's files in so many views, against the same page built into one script.";

const ui = (path) => fileURLToPath(new URL(`../../packages/ui/${path}`, import.meta.url));

export async function ready() {
  const split = filesOf(
    await build({ configFile: ui("vite.config.ts"), logLevel: "error", build: { write: false } }),
  );
  const whole = filesOf(
    await build({
      ...{ configFile: false, root: ui("."), logLevel: "error" },
      resolve: { alias: { "@ferrule/core": ui("../core/src/index.ts") } },
      worker: { format: "es" },
      build: {
        ...{ write: false, target: "es2022" },
        rolldownOptions: { input: { index: ui("index.html") }, output: { codeSplitting: false } },
      },
    }),
  );
  const baseline = kb([...whole.values()].filter(isSent));
  const first = withImports(split, "index");
  const listing = new Set([...first, ...withImports(split, "listing-view")]);
  const all = new Set([...split.keys()].filter((name) => isSent(split.get(name)) && isOfPage(name)));
  const needed = [first, listing, all];
  return (size) => [
    {
      ...{ what: "weight of the page", unit: "kB of gzip", against: "one script" },
      ...{ ours: kb([...needed[sizes.indexOf(size)]].map((name) => split.get(name))), baseline },
    },
  ];
}

const filesOf = (built) =>
  new Map(
    [built]
      .flat()
      .flatMap(({ output }) => output)
      .map((file) => [file.fileName, file]),
  );
const isSent = ({ fileName }) => /\.(js|css)$/.test(fileName);
/** The pages for a device that is not paired yet and what works without a signal are fetched apart. */
const isOfPage = (name) => !/(^|\/)(pair|trust|service-worker)/.test(name);

/** The entry or view of this name, what it imports at once, and their styles. */
function withImports(files, stem) {
  const start = [...files.values()].find(({ type, name }) => type === "chunk" && name === stem);
  if (!start) throw new Error(`the page has no chunk ${stem}`);
  const [found, waiting] = [new Set(), [start.fileName]];
  while (waiting.length > 0) {
    const name = waiting.pop();
    if (found.has(name)) continue;
    found.add(name);
    const { imports = [], viteMetadata } = files.get(name);
    waiting.push(...imports, ...(viteMetadata?.importedCss ?? []));
  }
  return found;
}

function kb(files) {
  const texts = files.map((file) => file.code ?? file.source);
  return texts.reduce((sum, text) => sum + gzipSync(text).length, 0) / 1000;
}
