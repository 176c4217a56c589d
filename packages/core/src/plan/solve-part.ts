import { type Counts, Draft, draftOf } from "./draft.ts";
import { type DualBound, dualBound, type Prices, plainPrices, wholeBound } from "./dual-bound.ts";
import { greedyDraft } from "./greedy-plan.ts";
import { guideOf, scoresByNet, scoresByScarcity, scoresByTime } from "./guide.ts";
import { fill, improve } from "./improve-draft.ts";
import type { LinearAnswer, LinearSolver } from "./linear-solver.ts";
import { type Neighbourhood, neighbourhoodOf, withKept } from "./neighbourhood.ts";
import type { Packing } from "./packing.ts";
import type { PlanSolution } from "./plan-model.ts";
import { countsOf, planProgramme, pricesOf, valuesOf } from "./plan-programme.ts";

/** What may be spent on solving. `now` is in milliseconds; solving ends at `until`. */
export interface Effort {
  readonly relativeGap: number;
  readonly until: number;
  readonly now: () => number;
  readonly shouldStop: () => boolean;
  readonly onBetter: (sofar: SolvedPart) => void;
}

export interface SolvedPart {
  readonly counts: Counts;
  readonly net: number;
  readonly bound: number;
  /** Of the relaxation; null where it was not solved. */
  readonly prices: Prices | null;
  readonly method: PlanSolution["method"];
  readonly stopped: boolean;
}

/** Up to so many uses, exchanges are tried on all of them before the relaxation says which are worth it. */
const fewUses = 600;
/** A first whole-number solve sees this many: all of them where the model is small, and then that is the end of it. */
const fewAlive = 300;
/** The next whole-number solve sees about so many uses, those nearest to paying at the prices of the relaxation. */
const firstUses = 1_500;
/** With more uses than this the whole-number solver does not come to anything, nor back in time. */
const manyUses = 12_000;

/** The share of the time left that search may take before the whole-number solver has its turn. */
const searchShare = 0.2;
/** The share of what is left then that goes into solving parts of the choice anew. */
const aroundShare = 0.7;
/** So many uses at most are looked at when a part of the choice is solved anew. */
const aroundUses = 800;
/** After so many parts in a row that brought nothing, no more are solved. */
const mostVain = 60;

/** What is known of a part before anything is tried: nothing done, and the bound that needs no solver. */
export function nothingOf(packing: Packing): SolvedPart {
  return {
    counts: new Draft(packing).counts,
    net: 0,
    bound: wholeBound(dualBound(packing, plainPrices(packing)).bound),
    prices: null,
    method: "heuristic",
    stopped: true,
  };
}

/** The best choice of one part that was found, and how good it could be at most. */
export async function solvePart(packing: Packing, solver: LinearSolver, effort: Effort): Promise<SolvedPart> {
  const search = new PartSearch(packing, solver, effort);
  search.begin();
  // Even where the first choice is near enough: the prices say what binds.
  if (!search.out()) await search.relax();
  if (!search.done) search.round();
  if (!search.done) await search.solveWhole(fewAlive, 0.4);
  if (!search.done) await search.searchAround();
  if (!search.done) await search.solveWhole(firstUses, 0.5);
  if (!search.done) await search.solveWhole(manyUses, 1);
  return search.result;
}

class PartSearch {
  private readonly packing: Packing;
  private readonly solver: LinearSolver;
  private readonly effort: Effort;
  private best: Draft;
  private bound: number;
  private prices: Prices | null = null;
  private dual: DualBound;
  private relaxed: Counts | null = null;
  private method: PlanSolution["method"] = "heuristic";

  constructor(packing: Packing, solver: LinearSolver, effort: Effort) {
    this.packing = packing;
    this.solver = solver;
    this.effort = effort;
    this.best = new Draft(packing);
    this.dual = dualBound(packing, plainPrices(packing));
    this.bound = wholeBound(this.dual.bound);
  }

  get result(): SolvedPart {
    const { net, counts } = this.best;
    return {
      counts,
      net,
      bound: Math.max(this.bound, net),
      prices: this.prices,
      method: this.method,
      stopped: !this.isNear,
    };
  }

  get done(): boolean {
    return this.isNear || this.out();
  }

  private get isNear(): boolean {
    return this.bound - this.best.net <= this.effort.relativeGap * Math.abs(this.bound);
  }

  readonly out = () => this.effort.shouldStop() || this.effort.now() >= this.effort.until;

  private get secondsLeft(): number {
    return Math.max(0, (this.effort.until - this.effort.now()) / 1000);
  }

  /** Greedy in several orders, the best of them improved by exchanges where there are few enough uses to try all. */
  begin(): void {
    for (const scores of [scoresByNet, scoresByScarcity, scoresByTime])
      this.offer(greedyDraft(this.packing, scores(this.packing)), "heuristic");
    if (this.packing.uses.length > fewUses) return;
    const draft = draftOf(this.packing, this.best.counts);
    improve(draft, guideOf(this.packing, scoresByNet(this.packing)), this.out);
    this.offer(draft, "heuristic");
  }

  async relax(): Promise<void> {
    const all = this.packing.uses.map((_, place) => place);
    const programme = planProgramme(this.packing, all, false);
    const answer = await this.ask(programme.programme, { seconds: this.secondsLeft, relativeGap: 0 });
    if (answer.prices === null) return;
    const prices = pricesOf(this.packing, programme, answer.prices);
    const dual = dualBound(this.packing, prices);
    if (dual.bound > this.dual.bound) return;
    this.prices = prices;
    this.dual = dual;
    this.bound = Math.min(this.bound, wholeBound(dual.bound));
    if (answer.values !== null) this.relaxed = countsOf(this.packing, programme, answer.values);
    if (this.relaxed !== null && isWhole(this.relaxed))
      this.offer(draftOf(this.packing, rounded(this.relaxed)), "relaxation");
    this.effort.onBetter(this.result);
  }

  /** The relaxation made whole: bundles it takes enough of are bought, uses rounded down, and the rest filled up. */
  round(): void {
    if (this.relaxed !== null) this.roundOff(this.relaxed);
    this.improveAlive();
  }

  private roundOff(relaxed: Counts): void {
    const { dual } = this;
    const scores = dual.beyond.map((beyond, place) => {
      const part = (relaxed.uses[place] ?? 0) % 1;
      return part > 1e-6 && part < 1 - 1e-6 ? 1e7 * part : beyond;
    });
    const guide = guideOf(this.packing, scores);
    for (const enough of [0.9, 0.5, 0.2]) {
      const draft = draftOf(this.packing, {
        uses: relaxed.uses.map((times) => Math.floor(times + 1e-6)),
        bundles: relaxed.bundles.map((times) => Math.floor(times + 1 - enough + 1e-6)),
      });
      fill(draft, guide);
      this.offer(draft, "heuristic");
    }
  }

  /** Exchanges among the uses that could still be in a better choice. */
  private improveAlive(): void {
    const alive = this.aliveUses(2 * firstUses);
    const places = [...new Set([...alive, ...used(this.best.counts)])].sort((a, b) => a - b);
    const small = { ...this.packing, uses: places.flatMap((place) => this.packing.uses[place] ?? []) };
    const counts = this.best.counts;
    const draft = draftOf(small, { ...counts, uses: places.map((place) => counts.uses[place] ?? 0) });
    const until = this.effort.now() + this.secondsLeft * 1000 * searchShare;
    const stop = () => this.out() || this.effort.now() > until;
    const guide = guideOf(
      small,
      places.map((place) => this.dual.beyond[place] ?? 0),
    );
    improve(draft, guide, stop);
    this.offerSome(places, draft.counts);
  }

  private offerSome(places: readonly number[], counts: Counts): void {
    const uses = this.packing.uses.map(() => 0);
    places.forEach((place, at) => {
      uses[place] = counts.uses[at] ?? 0;
    });
    this.offer(draftOf(this.packing, { uses, bundles: counts.bundles }), "heuristic");
  }

  /**
   * Solves, again and again, what is left to decide when a part of the best choice is let go and the rest kept. More is let go
   * after what was solved to its end, less after what was not. What is drawn is the same every time.
   */
  async searchAround(): Promise<void> {
    const until = this.effort.now() + this.secondsLeft * 1000 * aroundShare;
    const draw = parkMiller();
    let share = 0.4;
    let vain = 0;
    while (!this.done && this.effort.now() < until && vain < mostVain && share < 1) {
      const alive = this.aliveUses(Number.POSITIVE_INFINITY);
      alive.sort((a, b) => (this.dual.beyond[b] ?? 0) - (this.dual.beyond[a] ?? 0) || a - b);
      const around = neighbourhoodOf(this.packing, this.best.counts, alive, share, aroundUses, draw);
      const before = this.best.net;
      const ended = await this.solveAround(around, Math.min(1, (until - this.effort.now()) / 1000));
      share *= ended ? 1.04 : 0.9;
      vain = this.best.net > before ? 0 : vain + 1;
    }
  }

  /** Whether it was solved to its end. */
  private async solveAround(around: Neighbourhood, seconds: number): Promise<boolean> {
    const all = around.uses.map((_, at) => at);
    const programme = planProgramme(around.packing, all, true);
    const start = valuesOf(around.packing, programme, around.start);
    const options = { seconds, relativeGap: 0, ...(start === null ? {} : { start }) };
    const answer = await this.ask(programme.programme, options);
    if (answer.values === null) return false;
    const chosen = rounded(countsOf(around.packing, programme, answer.values));
    // Choices as good as the best are taken too: from another one, other ways lead on.
    this.offer(draftOf(this.packing, withKept(around, chosen)), "heuristic", true);
    return answer.status === "best";
  }

  /** The places of uses that a better choice could have, at most so many, those nearest to paying. */
  private aliveUses(most: number): number[] {
    const gap = this.dual.bound - this.best.net;
    const alive = this.dual.beyond.flatMap((beyond, place) => (gap + Math.min(0, beyond) > 0 ? [place] : []));
    if (alive.length <= most) return alive;
    const nearest = alive.toSorted(
      (a, b) => (this.dual.beyond[b] ?? 0) - (this.dual.beyond[a] ?? 0) || a - b,
    );
    return nearest.slice(0, most).sort((a, b) => a - b);
  }

  /**
   * The whole-number solve over the most promising uses, from the best choice so far. A choice with any use left out brings no
   * more than the relaxation less what that use lacks, so the bound holds for them all.
   */
  async solveWhole(most: number, share: number): Promise<void> {
    const alive = this.aliveUses(most);
    const places = [...new Set([...alive, ...used(this.best.counts)])].sort((a, b) => a - b);
    const inside = new Set(places);
    const lack = this.dual.beyond.reduce(
      (least, beyond, place) => (inside.has(place) ? least : Math.max(least, beyond)),
      Number.NEGATIVE_INFINITY,
    );
    const programme = planProgramme(this.packing, places, true);
    const start = valuesOf(this.packing, programme, this.best.counts);
    const answer = await this.ask(programme.programme, {
      seconds: this.secondsLeft * share,
      relativeGap: this.effort.relativeGap * 0.9,
      ...(start === null ? {} : { start }),
    });
    if (answer.values !== null)
      this.offer(
        draftOf(this.packing, rounded(countsOf(this.packing, programme, answer.values))),
        "whole-numbers",
      );
    if (answer.bound === null) return;
    const outside = wholeBound(this.dual.bound + Math.min(0, lack));
    const bound = Math.max(wholeBound(answer.bound), inside.size === this.packing.uses.length ? 0 : outside);
    if (Math.max(bound, this.best.net) < this.bound) {
      this.bound = Math.max(bound, this.best.net);
      this.method = "whole-numbers";
    }
    this.effort.onBetter(this.result);
  }

  private async ask(...[programme, options]: Parameters<LinearSolver>): Promise<LinearAnswer> {
    return this.solver(programme, { ...options, shouldStop: this.out });
  }

  private offer(draft: Draft, method: PlanSolution["method"], orAsGood = false): void {
    if (!draft.holds || draft.net < this.best.net) return;
    if (draft.net === this.best.net) {
      if (orAsGood) this.best = draft;
      return;
    }
    this.best = draft;
    this.method = method;
    this.effort.onBetter(this.result);
  }
}

/** S. K. Park and K. W. Miller, Communications of the ACM 31 (1988) 1192–1201, as numbers above 0 and below 1. */
function parkMiller(): () => number {
  let value = 1;
  return () => {
    value = (value * 16807) % 2147483647;
    return value / 2147483647;
  };
}

function used({ uses }: Counts): number[] {
  return uses.flatMap((times, place) => (times > 0 ? [place] : []));
}

function rounded({ uses, bundles }: Counts): Counts {
  return { uses: uses.map(Math.round), bundles: bundles.map(Math.round) };
}

function isWhole({ uses, bundles }: Counts): boolean {
  return [...uses, ...bundles].every((times) => Math.abs(times - Math.round(times)) < 1e-6);
}
