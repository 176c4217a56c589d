import { type Counts, Draft, draftOf } from "./draft.ts";
import { type DualBound, dualBound, type Prices, plainPrices, wholeBound } from "./dual-bound.ts";
import type { Effort, SolvedPart } from "./effort.ts";
import type { LinearAnswer, LinearProgramme, LinearSolver } from "./linear-solver.ts";
import type { Packing } from "./packing.ts";
import type { PlanSolution } from "./plan-model.ts";

/** Time enough for what takes a hundredth of it on a machine that has nothing else to do. */
const leastSeconds = 2;

/** The search for the best choice of one part: the best so far, the bound, and the time that is left. */
export class PartSearch {
  readonly packing: Packing;
  readonly effort: Effort;
  /** What the best prices so far prove. */
  dual: DualBound;
  private readonly solver: LinearSolver;
  private best: Draft;
  private bound: number;
  private prices: Prices | null = null;
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

  get net(): number {
    return this.best.net;
  }

  get counts(): Counts {
    return this.best.counts;
  }

  get done(): boolean {
    return this.isNear || this.out();
  }

  get isNear(): boolean {
    return this.bound - this.best.net <= this.effort.relativeGap * Math.abs(this.bound);
  }

  readonly out = () => this.effort.shouldStop() || this.effort.now() >= this.effort.until;

  get secondsLeft(): number {
    return Math.max(0, (this.effort.until - this.effort.now()) / 1000);
  }

  ask(...[programme, options]: Parameters<LinearSolver>): Promise<LinearAnswer> {
    return this.solver(programme, { ...options, shouldStop: this.out });
  }

  /** The same of what is soon solved: only the user stops it, not the time. */
  askSurely(programme: LinearProgramme): Promise<LinearAnswer> {
    const { shouldStop } = this.effort;
    return this.solver(programme, {
      seconds: Math.max(leastSeconds, this.secondsLeft),
      relativeGap: 0,
      shouldStop,
    });
  }

  /** Takes a choice that is better than the best so far; one as good as it where that is asked for. */
  offer(draft: Draft, method: PlanSolution["method"], orAsGood = false): void {
    if (!draft.holds || draft.net < this.best.net) return;
    if (draft.net === this.best.net) {
      if (orAsGood) this.best = draft;
      return;
    }
    this.best = draft;
    this.method = method;
    this.tell();
  }

  /** The same of a choice among some of the uses, given by their places. */
  offerSome(places: readonly number[], counts: Counts): void {
    const uses = this.packing.uses.map(() => 0);
    places.forEach((place, at) => {
      uses[place] = counts.uses[at] ?? 0;
    });
    this.offer(draftOf(this.packing, { uses, bundles: counts.bundles }), "heuristic");
  }

  /** Whether the prices that need no solver prove the best so far, and then what binds. */
  isPlainlyBest(): boolean {
    if (Math.abs(this.dual.bound - this.best.net) > 1e-6) return false;
    this.prices = plainPrices(this.packing);
    return true;
  }

  /** Prices of a relaxation: taken where what they prove is no worse than what is known. */
  takePrices(prices: Prices): boolean {
    const dual = dualBound(this.packing, prices);
    if (dual.bound > this.dual.bound) return false;
    this.prices = prices;
    this.dual = dual;
    this.bound = Math.min(this.bound, wholeBound(dual.bound));
    return true;
  }

  /** A bound that the whole-number solver has proved. */
  takeBound(bound: number): void {
    if (Math.max(bound, this.best.net) >= this.bound) return;
    this.bound = Math.max(bound, this.best.net);
    this.method = "whole-numbers";
  }

  tell(): void {
    this.effort.onBetter(this.result);
  }

  /** The places of uses that a better choice could have, at most so many, those nearest to paying. */
  aliveUses(most: number): number[] {
    const gap = this.dual.bound - this.best.net;
    const alive = this.dual.beyond.flatMap((beyond, place) => (gap + Math.min(0, beyond) > 0 ? [place] : []));
    return alive.length <= most ? alive : this.nearestFirst(alive).slice(0, most).sort(inPlace);
  }

  /** Those of some uses that are nearest to paying first. */
  nearestFirst(places: readonly number[]): number[] {
    const { beyond } = this.dual;
    return places.toSorted((a, b) => (beyond[b] ?? 0) - (beyond[a] ?? 0) || a - b);
  }

  /** These uses and those of the best choice so far, in their order. */
  withChosen(places: readonly number[]): number[] {
    const used = this.best.counts.uses.flatMap((times, place) => (times > 0 ? [place] : []));
    return [...new Set([...places, ...used])].sort(inPlace);
  }
}

const inPlace = (a: number, b: number) => a - b;
