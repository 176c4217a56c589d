import type { Amount, Packing } from "./packing.ts";

/** A little more than a limit on minutes is within it, since minutes need not be whole. */
const slack = 1e-9;

/** A choice without the packing it is of: how often each use and how many of each bundle, by place. */
export interface Counts {
  readonly uses: readonly number[];
  readonly bundles: readonly number[];
}

/**
 * A choice that is being made and changed. Changes are remembered, so that what did not help can be taken back. It never takes
 * more than there is, but for whoever changes it by force, who has to make room before anyone else looks.
 */
export class Draft {
  readonly packing: Packing;
  readonly uses: Int32Array;
  readonly bundles: Int32Array;
  readonly free: Int32Array;
  net = 0;
  minutesLeft: number;
  budgetLeft: number;
  private readonly kindsLeft: Float64Array;
  private readonly tripUse: Int32Array;
  private readonly done: { readonly bundle: boolean; readonly place: number; readonly times: number }[] = [];

  constructor(packing: Packing) {
    this.packing = packing;
    this.uses = new Int32Array(packing.uses.length);
    this.bundles = new Int32Array(packing.bundles.length);
    this.free = Int32Array.from(packing.resources, ({ count }) => count);
    this.minutesLeft = packing.minutes;
    this.budgetLeft = packing.budget;
    this.kindsLeft = Float64Array.from(packing.kinds, ({ most }) => most);
    this.tripUse = new Int32Array(packing.trips.length);
  }

  /** How often more the use can be done with what is left. */
  roomFor(place: number): number {
    const use = this.packing.uses[place];
    if (use === undefined) return 0;
    let times = use.kind < 0 ? Number.POSITIVE_INFINITY : (this.kindsLeft[use.kind] ?? 0);
    for (const { resource, count } of use.takes)
      times = Math.min(times, Math.floor((this.free[resource] ?? 0) / count));
    if (use.minutes > 0) times = Math.min(times, Math.floor((this.minutesLeft + slack) / use.minutes));
    if (use.outlay > 0) times = Math.min(times, Math.floor(this.budgetLeft / use.outlay));
    return Math.max(times, 0);
  }

  /** Does a use so many times more, or less if negative, whether or not there is room. */
  do(place: number, times: number): void {
    this.apply(false, place, times);
    this.done.push({ bundle: false, place, times });
  }

  /** Buys so many more of a bundle, or less if negative, and drives where it has to be fetched. */
  buy(place: number, times: number): void {
    this.apply(true, place, times);
    this.done.push({ bundle: true, place, times });
  }

  /** Whether one more of the bundle is to be had and can be paid, its trip too. */
  canBuy(place: number): boolean {
    const bundle = this.packing.bundles[place];
    if (bundle === undefined || (this.bundles[place] ?? 0) >= bundle.ids.length) return false;
    const trip = this.tripUse[bundle.trip] === 0 ? this.packing.trips[bundle.trip] : undefined;
    return (
      bundle.outlay + (trip?.outlay ?? 0) <= this.budgetLeft &&
      bundle.minutes + (trip?.minutes ?? 0) <= this.minutesLeft + slack
    );
  }

  /** Whether nothing is used more than there is of it. */
  get holds(): boolean {
    return (
      this.minutesLeft >= -slack &&
      this.budgetLeft >= 0 &&
      this.free.every((count) => count >= 0) &&
      this.kindsLeft.every((count) => count >= 0)
    );
  }

  isKindOver(kind: number): boolean {
    return (this.kindsLeft[kind] ?? 0) < 0;
  }

  kindLeft(kind: number): number {
    return this.kindsLeft[kind] ?? 0;
  }

  isDriven(trip: number): boolean {
    return (this.tripUse[trip] ?? 0) > 0;
  }

  /** A mark to come back to. */
  get mark(): number {
    return this.done.length;
  }

  backTo(mark: number): void {
    while (this.done.length > mark) {
      const last = this.done.pop();
      if (last !== undefined) this.apply(last.bundle, last.place, -last.times);
    }
  }

  /** Forgets how to go back. */
  settle(): void {
    this.done.length = 0;
  }

  get counts(): Counts {
    return { uses: Array.from(this.uses), bundles: Array.from(this.bundles) };
  }

  private apply(bundle: boolean, place: number, times: number): void {
    if (bundle) this.applyBundle(place, times);
    else this.applyUse(place, times);
  }

  private applyUse(place: number, times: number): void {
    const use = this.packing.uses[place];
    if (use === undefined) return;
    this.uses[place] = (this.uses[place] ?? 0) + times;
    this.move(use.takes, -times);
    this.net += use.net * times;
    this.minutesLeft -= use.minutes * times;
    this.budgetLeft -= use.outlay * times;
    if (use.kind >= 0) this.kindsLeft[use.kind] = (this.kindsLeft[use.kind] ?? 0) - times;
  }

  private applyBundle(place: number, times: number): void {
    const bundle = this.packing.bundles[place];
    if (bundle === undefined) return;
    this.bundles[place] = (this.bundles[place] ?? 0) + times;
    this.move(bundle.gives, times);
    this.pay(bundle, times);
    const trip = this.packing.trips[bundle.trip];
    if (trip === undefined) return;
    const before = this.tripUse[bundle.trip] ?? 0;
    this.tripUse[bundle.trip] = before + times;
    this.pay(trip, Number(before + times > 0) - Number(before > 0));
  }

  private pay(what: { cost: number; outlay: number; minutes: number }, times: number): void {
    this.net -= what.cost * times;
    this.minutesLeft -= what.minutes * times;
    this.budgetLeft -= what.outlay * times;
  }

  private move(amounts: readonly Amount[], times: number): void {
    for (const { resource, count } of amounts)
      this.free[resource] = (this.free[resource] ?? 0) + count * times;
  }
}

/** The choice as a draft, as far as there is room for it. */
export function draftOf(packing: Packing, { uses, bundles }: Counts): Draft {
  const draft = new Draft(packing);
  bundles.forEach((times, place) => {
    for (let time = 0; time < times && draft.canBuy(place); time += 1) draft.buy(place, 1);
  });
  uses.forEach((times, place) => {
    const room = times > 0 ? Math.min(times, draft.roomFor(place)) : 0;
    if (room > 0) draft.do(place, room);
  });
  draft.settle();
  return draft;
}
