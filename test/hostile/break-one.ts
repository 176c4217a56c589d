import fc from "fast-check";
import {
  deepJson,
  hostileNames,
  hostileNumbers,
  hostileTexts,
  longTexts,
  wrongKinds,
} from "./hostile-values.ts";
import { Members } from "./json-text.ts";

type Path = readonly (string | number)[];
type Change = (value: unknown) => unknown;

const hostileValue: fc.Arbitrary<unknown> = fc.oneof(
  { arbitrary: fc.constantFrom(...wrongKinds), weight: 3 },
  { arbitrary: fc.constantFrom(...hostileNumbers), weight: 3 },
  { arbitrary: fc.constantFrom(...hostileTexts), weight: 4 },
  { arbitrary: fc.constantFrom(...longTexts, ...deepJson), weight: 1 },
);

/** A value with one thing in it wrong: another value, one left out, one too many, or the same twice. */
export function breakOne(value: unknown): fc.Arbitrary<unknown> {
  const paths = pathsOf(value);
  return fc
    .tuple(fc.constantFrom(...paths), change)
    .map(([path, changed]) => changedAt(value, path, changed));
}

const change: fc.Arbitrary<Change> = fc.oneof(
  { arbitrary: hostileValue.map((hostile) => () => hostile), weight: 6 },
  { arbitrary: fc.constant<Change>(() => undefined), weight: 1 },
  {
    arbitrary: fc
      .tuple(fc.constantFrom(...hostileNames), hostileValue)
      .map(([name, inner]) => added(name, inner)),
    weight: 2,
  },
  { arbitrary: fc.constant<Change>(twice), weight: 1 },
);

/** An object with one more member, a list with one more item. */
function added(name: string, inner: unknown): Change {
  return (value) => {
    if (Array.isArray(value)) return [...value, inner];
    return new Members([...membersOf(value), [name, inner]]);
  };
}

/** A list with its first item again, an object with all its members again. */
function twice(value: unknown): unknown {
  if (Array.isArray(value)) return [...value, ...value.slice(0, 1)];
  return new Members([...membersOf(value), ...membersOf(value)]);
}

function membersOf(value: unknown): Members["list"] {
  return typeof value === "object" && value !== null ? Object.entries(value) : [["x", value]];
}

function pathsOf(value: unknown, path: Path = []): Path[] {
  if (typeof value !== "object" || value === null) return [path];
  const inner = Object.entries(value).flatMap(([key, each]) => pathsOf(each, [...path, key]));
  return [path, ...inner];
}

function changedAt(value: unknown, [first, ...rest]: Path, changed: Change): unknown {
  if (first === undefined) return changed(value);
  if (Array.isArray(value))
    return value.flatMap((each, at) => {
      const next = at === Number(first) ? changedAt(each, rest, changed) : each;
      return next === undefined ? [] : [next];
    });
  const record = value as Record<string, unknown>;
  return { ...record, [first]: changedAt(record[first], rest, changed) };
}
