import { join, relative } from "node:path";
import { performance } from "node:perf_hooks";
import { pathToFileURL } from "node:url";
import { build } from "vite";
import { beforeTests, collectedTests } from "./test-collector.mjs";
import { testFiles } from "./test-files.mjs";

const collector = new URL("./test-collector.mjs", import.meta.url).href;
const entry = "virtual:every-test";

/** One mutant in so many is tried, always the same ones: for a first look, or for a machine that has other things to do. */
const sampledOneIn = Number(process.env.SAMPLE ?? 1);

/** Leads `vitest` to the collector, names each file of tests, and tells every module the place that a bundle would forget. */
const asOneModule = (root) => ({
  name: "as-one-module",
  enforce: "pre",
  async resolveId(id, importer, options) {
    if (id === entry) return id;
    if (id === "vitest") return { id: collector, external: true };
    const found = await this.resolve(id, importer, { ...options, skipSelf: true });
    // A package stays where it is: some have files of their own beside their code.
    return found?.id.includes("/node_modules/")
      ? { id: pathToFileURL(found.id).href, external: true }
      : found;
  },
  load(id) {
    if (id !== entry) return null;
    return testFiles(root)
      .map((path) => `import ${JSON.stringify(join(root, path))};`)
      .join("\n");
  },
  transform(code, id) {
    if (!id.endsWith(".ts") || id.includes("/node_modules/")) return null;
    const placed = code.replaceAll("import.meta.url", JSON.stringify(pathToFileURL(id).href));
    if (!id.endsWith(".test.ts")) return placed;
    const name = JSON.stringify(relative(root, id));
    return `import { beginFile as beginFileOfTests } from "vitest"; beginFileOfTests(${name});\n${placed}`;
  },
});

async function bundleOfTests(root) {
  const outDir = join(root, ".every-test", String(process.pid));
  await build({
    configFile: false,
    root,
    logLevel: "error",
    resolve: { alias: { "@ferrule/core": join(root, "packages/core/src/index.ts") } },
    plugins: [asOneModule(root)],
    build: {
      ssr: true,
      outDir,
      minify: false,
      rolldownOptions: { treeshake: false, input: entry, output: { entryFileNames: "every-test.mjs" } },
    },
  });
  return pathToFileURL(join(outDir, "every-test.mjs")).href;
}

/** What mutated code reads and writes: which mutant is on, and what was reached. */
function switchboard() {
  globalThis.__stryker__ ??= {};
  return globalThis.__stryker__;
}

/**
 * Runs the tests in one process, loaded once: a mutant is switched on where the code stands, and only the tests that reach it are
 * run, the quickest first, until one fails. A runner that begins anew for every mutant takes some hundred times as long.
 */
class OneProcessRunner {
  #durationMs = new Map();
  #state = switchboard();

  capabilities() {
    return { reloadEnvironment: false };
  }

  async init() {
    await import(await bundleOfTests(process.cwd()));
    await beforeTests();
  }

  async dryRun() {
    const tests = [];
    for (const test of collectedTests()) {
      this.#state.currentTestId = test.id;
      tests.push(await this.#run(test));
      this.#state.currentTestId = undefined;
    }
    return { status: "complete", tests, mutantCoverage: this.#state.mutantCoverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit }) {
    if (Number(activeMutant.id) % sampledOneIn !== 0)
      return { status: "error", errorMessage: "not in the sample" };
    Object.assign(this.#state, { activeMutant: activeMutant.id, hitCount: hitLimit && 0, hitLimit });
    let nrOfTests = 0;
    for (const test of this.#quickestFirst(testFilter)) {
      nrOfTests += 1;
      const { status, failureMessage } = await this.#run(test);
      if (this.#state.hitCount > hitLimit) return this.#off({ status: "timeout", reason: "too many rounds" });
      if (status === 1)
        return this.#off({ status: "killed", killedBy: [test.id], failureMessage, nrOfTests });
    }
    return this.#off({ status: "survived", nrOfTests });
  }

  #off(result) {
    Object.assign(this.#state, { activeMutant: undefined, hitCount: undefined, hitLimit: undefined });
    return result;
  }

  #quickestFirst(testFilter) {
    const wanted = testFilter && new Set(testFilter);
    const timeMs = ({ id }) => this.#durationMs.get(id) ?? 0;
    return collectedTests()
      .filter(({ id }) => wanted?.has(id) ?? true)
      .sort((one, other) => timeMs(one) - timeMs(other));
  }

  /** Status 0 is a test that passed and 1 one that failed, as the interface of runners has it. */
  async #run({ id, name, fileName, run }) {
    const begunMs = performance.now();
    const result = { id, name, fileName: join(process.cwd(), fileName) };
    let failure;
    try {
      await run();
    } catch (error) {
      failure = { status: 1, failureMessage: String(error?.message ?? error) };
    }
    const timeSpentMs = performance.now() - begunMs;
    this.#durationMs.set(id, timeSpentMs);
    return { ...result, timeSpentMs, ...(failure ?? { status: 0 }) };
  }
}

export const strykerPlugins = [
  { kind: "TestRunner", name: "one-process", injectableClass: OneProcessRunner },
];
