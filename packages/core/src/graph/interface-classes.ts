import type { Part } from "../parts/part.ts";
import type { CompiledRule } from "./compiled-rule.ts";
import { rawAt } from "./fact.ts";
import type { Place } from "./shape.ts";

/**
 * Numbers for parts that are alike. For every reader (a rule, several rules together, or a single fact), parts with the same
 * values in the fields that it reads get the same number, so that it is asked once for all of them; parts alike for every
 * reader are of one class.
 */
export class InterfaceClasses {
  private readonly paths: readonly (readonly string[])[];
  /** For every reader, which of the paths it reads. */
  private readonly reads: readonly (readonly number[])[];
  private readonly values: readonly Map<unknown, number>[];
  private readonly numbers: readonly Map<string, number>[];
  private readonly classes = new Map<string, number>();
  private readonly known = new WeakMap<Part, { forReader: Int32Array; class: number }>();

  constructor(readers: readonly Pick<CompiledRule, "depends">[], place: Place) {
    const joined = readers.map(({ depends }) => depends[place].map((keys) => keys.join(".")));
    const all = [...new Set(joined.flat())];
    this.paths = all.map((path) => path.split("."));
    this.reads = joined.map((paths) => paths.map((path) => all.indexOf(path)));
    this.values = all.map(() => new Map());
    this.numbers = readers.map(() => new Map());
  }

  /** The numbers of a part, one for each reader and 0 where it reads nothing here, and its class. */
  of(part: Part): { readonly forReader: Int32Array; readonly class: number } {
    const found = this.known.get(part);
    if (found) return found;
    const values = this.paths.map((keys, at) =>
      intern(this.values[at] as Map<unknown, number>, comparable(rawAt(part, keys))),
    );
    const forReader = Int32Array.from(this.reads, (read, at) =>
      read.length === 0 ? 0 : this.number(read, at, values),
    );
    const entry = { forReader, class: intern(this.classes, values.join(" ")) };
    this.known.set(part, entry);
    return entry;
  }

  private number(read: readonly number[], at: number, values: readonly number[]): number {
    return intern(this.numbers[at] as Map<string, number>, read.map((path) => values[path]).join(" "));
  }
}

/** A value that is equal to another exactly when they say the same. */
function comparable(value: unknown): unknown {
  return typeof value === "object" ? JSON.stringify(value) : value;
}

function intern<Key>(map: Map<Key, number>, key: Key): number {
  let number = map.get(key);
  if (number === undefined) {
    number = map.size + 1;
    map.set(key, number);
  }
  return number;
}
