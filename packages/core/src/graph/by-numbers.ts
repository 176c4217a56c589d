import type { Place } from "./shape.ts";

/** The numbers of the chosen parts, by place and reader; 0 where a place is open or a reader reads nothing there. */
export type Numbers = Readonly<Record<Place, Int32Array>>;

/** What a reader came to, remembered by the numbers of the parts it read and by what was on the shaft. */
export class ByNumbers<Value> {
  private readonly at: number;
  private readonly known = new Map<number, Map<number, Value>>();

  /** `at` is the reader's place among the numbers. */
  constructor(at: number) {
    this.at = at;
  }

  /** Looked up, or made and kept. */
  of({ head, adapter, shaft, grip }: Numbers, flags: number, make: () => Value): Value {
    const { at } = this;
    const outer = (head[at] ?? 0) * 2 ** 22 + (adapter[at] ?? 0);
    const inner = ((shaft[at] ?? 0) * 2 ** 20 + (grip[at] ?? 0)) * 4 + flags;
    let byInner = this.known.get(outer);
    if (!byInner) {
      byInner = new Map();
      this.known.set(outer, byInner);
    }
    let value = byInner.get(inner);
    if (value === undefined) {
      value = make();
      byInner.set(inner, value);
    }
    return value;
  }
}
