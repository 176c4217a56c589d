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

  find({ head, adapter, shaft, grip }: Numbers, flags: number): Value | undefined {
    const { at } = this;
    const byInner = this.known.get(outerKey(head[at], adapter[at]));
    return byInner?.get(innerKey(shaft[at], grip[at], flags));
  }

  /** Keeps a value and hands it back. */
  keep({ head, adapter, shaft, grip }: Numbers, flags: number, value: Value): Value {
    const { at } = this;
    const outer = outerKey(head[at], adapter[at]);
    const byInner = this.known.get(outer) ?? new Map<number, Value>();
    this.known.set(outer, byInner.set(innerKey(shaft[at], grip[at], flags), value));
    return value;
  }
}

function outerKey(head = 0, adapter = 0): number {
  return head * 2 ** 22 + adapter;
}

function innerKey(shaft = 0, grip = 0, flags = 0): number {
  return (shaft * 2 ** 20 + grip) * 4 + flags;
}
