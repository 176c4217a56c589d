const core = "packages/core/src";
const tests = "\\.(test|test-kit)\\.ts$";
/** Files at the root of core that belong to the lowest layer; any other there may bind the layers together. */
const base = ["units", "interval", "money", "ids"];
/**
 * From the lowest. A folder imports from its own layer's folder and from lower layers only. `sheet` and `ids` do not
 * exist yet: their place is settled before they are made.
 */
const layers = ["parts", "findings", "measure", "rules", "graph", "explain", "resolve", "worth"];
/** Judging what something is worth starts from the words read, so `worth` and all above it see `listing` too. */
const fromListing = ["worth"];
/** The top: each sees all the layers and none sees another. */
const tops = ["plan", "sheet"];

const folders = (names) => `^${core}/(${names.join("|")})/`;
const baseFiles = `^${core}/(${base.join("|")})(/|\\.ts$)`;

const layerRule = (name, allowed) => ({
  name: `core-${name}-looks-down`,
  comment: `${name} may import only ${allowed.join(", ")}`,
  severity: "error",
  from: { path: folders([name]), pathNot: tests },
  to: { path: `^${core}/`, pathNot: [folders([name, ...allowed]), baseFiles] },
});

module.exports = {
  forbidden: [
    {
      name: "core-base-sees-nothing-above",
      comment: `${base.join(", ")} may import only each other`,
      severity: "error",
      from: { path: baseFiles, pathNot: tests },
      to: { path: `^${core}/`, pathNot: baseFiles },
    },
    ...layers.map((name, place) =>
      layerRule(name, [...layers.slice(0, place), ...(fromListing.includes(name) ? ["listing"] : [])]),
    ),
    ...tops.map((name) => layerRule(name, [...layers, "listing"])),
    {
      name: "core-listing-sees-parts-and-money",
      comment: "listing may import only parts and the base (money, units)",
      severity: "error",
      from: { path: folders(["listing"]), pathNot: tests },
      to: { path: `^${core}/`, pathNot: [folders(["listing", "parts"]), baseFiles] },
    },
    {
      name: "core-has-known-folders",
      comment: "A new folder of core needs its place among the layers above",
      severity: "error",
      from: {
        path: `^${core}/[^/]+/`,
        pathNot: [tests, folders([...layers, ...tops, "listing"]), baseFiles],
      },
      to: {},
    },
    {
      name: "rules-stand-alone",
      comment: "A rule imports no other rule; only rules/index.ts knows them all",
      severity: "error",
      from: { path: `^${core}/rules/`, pathNot: [tests, `^${core}/rules/index\\.ts$`] },
      to: { path: `^${core}/rules/`, pathNot: `^${core}/rules/rule\\.ts$` },
    },
    {
      name: "rules-come-as-an-argument",
      comment: "The folders of core take the rules as an argument; only a file at its root may bind them",
      severity: "error",
      from: { path: `^${core}/(?!rules/)[^/]+/`, pathNot: tests },
      to: { path: `^${core}/rules/`, pathNot: `^${core}/rules/rule\\.ts$` },
    },
    {
      name: "core-only-by-its-door",
      comment: "The server and the page import core as @ferrule/core",
      severity: "error",
      from: { path: "^packages/(server|ui)/" },
      to: { path: "^packages/core/", dependencyTypes: ["local"] },
    },
    {
      name: "core-only-by-its-door-deep",
      comment: "The server and the page import nothing inside @ferrule/core",
      severity: "error",
      from: { path: "^packages/(server|ui)/" },
      to: { path: "(^packages/core/(?!dist/index\\.(js|d\\.ts)$)|^@ferrule/core/)" },
    },
    {
      name: "packages-stand-alone",
      comment: "core imports neither the server nor the page, and neither imports the other",
      severity: "error",
      from: { path: "^packages/([^/]+)/", pathNot: tests },
      to: { path: "^(packages/(server|ui)/|@ferrule/(server|ui))", pathNot: "^packages/$1/" },
    },
    {
      name: "core-touches-no-system",
      comment: "core does no input or output",
      severity: "error",
      from: { path: `^${core}/`, pathNot: tests },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "core-needs-only-zod-and-fuse",
      comment: "core imports no package but zod, and fuse.js in the one file that finds models",
      severity: "error",
      from: { path: `^${core}/`, pathNot: [tests, `^${core}/listing/find-model\\.ts$`] },
      to: {
        path: "(node_modules/|^[^./])",
        pathNot: ["node_modules/zod/", "^packages/", "^zod$"],
        dependencyTypesNot: ["core", "local"],
      },
    },
    {
      name: "only-fuse-finds-models",
      severity: "error",
      from: { path: `^${core}/listing/find-model\\.ts$` },
      to: {
        path: "(node_modules/|^[^./])",
        pathNot: ["node_modules/fuse\\.js/", "^packages/", "^fuse\\.js$"],
        dependencyTypesNot: ["core", "local"],
      },
    },
    {
      name: "tests-are-not-imported",
      comment: "What ships imports no test and no test kit",
      severity: "error",
      from: { path: "^packages/", pathNot: tests },
      to: { path: tests },
    },
    {
      name: "no-cycles",
      comment: "No cycles, and none of types only",
      severity: "error",
      from: {},
      to: { circular: true },
    },
    {
      name: "everything-resolves",
      severity: "error",
      from: { path: "^packages/[^/]+/src/" },
      // Older Node has no node:sqlite, and the store falls back from it by itself.
      to: { couldNotResolve: true, pathNot: "^node:" },
    },
  ],
  options: {
    // TypeScript 7 has no compiler API; swc reads the imports, those of types included.
    parser: "swc",
    tsPreCompilationDeps: true,
    exclude: { path: "^packages/[^/]+/(dist-page/|vite\\.config\\.ts$)" },
    doNotFollow: { path: ["node_modules", "^packages/[^/]+/dist/"] },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "node", "default", "types"],
      extensions: [".ts", ".js", ".mjs", ".json", ".css", ".svg"],
    },
  },
};
