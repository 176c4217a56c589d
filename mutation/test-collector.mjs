import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";
import { format } from "node:util";

// The matchers are vitest's own; it only does not hand them out outside its workers.
const fromVitest = createRequire(createRequire(import.meta.url).resolve("vitest/package.json"));
const matchers = await import(pathToFileURL(fromVitest.resolve("@vitest/expect")).href);
const { chai } = matchers;

export const expect = (value, message) => chai.expect(value, message);

function readyExpect() {
  for (const plugin of ["JestExtend", "JestChaiExpect", "JestAsymmetricMatchers"]) chai.use(matchers[plugin]);
  Object.assign(expect, chai.expect, globalThis[matchers.ASYMMETRIC_MATCHERS_OBJECT]);
  expect.getState = () => matchers.getState(expect);
  expect.setState = (state) => matchers.setState(state, expect);
  expect.setState({ assertionCalls: 0, isExpectingAssertions: false, expectedAssertionsNumber: null });
  globalThis[matchers.GLOBAL_EXPECT] = expect;
}
readyExpect();

/** @typedef {{ id: string, fileName: string, name: string, run: () => unknown }} CollectedTest */

/** What the files of tests said while they were loaded: the one thing that is kept here between calls. */
const collection = { tests: /** @type {CollectedTest[]} */ ([]), hooks: [], fileName: "", groups: [] };

/** Every test of the files loaded so far; the work that a file does before its tests is done by `beforeTests`. */
export const collectedTests = () => collection.tests;

export async function beforeTests() {
  for (const hook of collection.hooks) await hook();
}

export function beginFile(fileName) {
  collection.fileName = fileName;
  collection.groups = [];
}

export function describe(name, body) {
  collection.groups.push(name);
  body();
  collection.groups.pop();
}

export function it(name, run) {
  const { tests, fileName, groups } = collection;
  const whole = [...groups, name].join(" ");
  const same = tests.filter((test) => test.fileName === fileName && test.name === whole).length;
  const id = `${fileName}#${whole}${same > 0 ? ` (${same + 1})` : ""}`;
  tests.push({ id, fileName, name: whole, run });
}

it.each = (rows) => (name, body) => {
  for (const row of rows) {
    const given = Array.isArray(row) ? row : [row];
    it(titled(name, given), () => body(...given));
  }
};
describe.each = (rows) => (name, body) => {
  for (const row of rows) {
    const given = Array.isArray(row) ? row : [row];
    describe(titled(name, given), () => body(...given));
  }
};

export const test = it;
export const beforeAll = (hook) => collection.hooks.push(hook);
export const afterAll = () => {};

function titled(name, given) {
  const [first] = given;
  const named = name.replaceAll(/\$([\w.]+)/g, (_, path) =>
    String(path.split(".").reduce((value, key) => value?.[key], first)),
  );
  const places = (named.match(/%[a-z]/g) ?? []).length;
  return format(named, ...given.slice(0, places));
}
