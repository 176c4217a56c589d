import type { Part } from "../parts/part.ts";
import type { CompiledRule } from "./compiled-rule.ts";
import { rawAt } from "./fact.ts";
import type { Place } from "./shape.ts";

interface ClassNumbers {
  readonly forReader: Int32Array;
  readonly class: number;
}

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
  private readonly classes = new Map<string, ClassNumbers>();
  private readonly known = new WeakMap<Part, ClassNumbers>();

  constructor(readers: readonly Pick<CompiledRule, "depends">[], place: Place) {
    const joined = readers.map(({ depends }) => depends[place].map((keys) => keys.join(".")));
    const all = [...new Set(joined.flat())];
    this.paths = all.map((path) => path.split("."));
    this.reads = joined.map((paths) => paths.map((path) => all.indexOf(path)));
    this.values = all.map(() => new Map());
    this.numbers = readers.map(() => new Map());
  }

  /** The numbers of a part, one for each reader and 0 where it reads nothing here, and its class. */
  of(part: Part): ClassNumbers {
    let found = this.known.get(part);
    if (!found) {
      found = this.ofClass(part);
      this.known.set(part, found);
    }
    return found;
  }

  private ofClass(part: Part): ClassNumbers {
    const values = this.paths.map((keys, at) =>
      intern(this.values[at] as Map<unknown, number>, comparable(rawAt(part, keys))),
    );
    const name = values.join(" ");
    let found = this.classes.get(name);
    if (!found) {
      const forReader = Int32Array.from(this.reads, (read, at) =>
        read.length === 0 ? 0 : this.number(read, at, values),
      );
      found = { forReader, class: this.classes.size + 1 };
      this.classes.set(name, found);
    }
    return found;
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
