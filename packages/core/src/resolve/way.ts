import type { Occupancy } from "../graph/occupancy.ts";
import { type Chosen, type Route, routeOf } from "../graph/route.ts";
import type { Ranked } from "../graph/verdict-index.ts";

/** A way to make a club of a head and a shaft, with what it comes to. */
export interface Way {
  readonly route: Route;
  readonly ranked: Ranked;
}

/** A way whose route is worked out when it is first asked for: most ways are looked at only for their rank. */
export class LazyWay implements Way {
  readonly ranked: Ranked;
  private readonly chosen: Chosen;
  private readonly occupancy: Occupancy;
  private made: Route | undefined;

  constructor(chosen: Chosen, ranked: Ranked, occupancy: Occupancy) {
    this.chosen = chosen;
    this.ranked = ranked;
    this.occupancy = occupancy;
  }

  get route(): Route {
    this.made ??= routeOf(this.chosen, this.occupancy);
    return this.made;
  }
}

/** Below nought when the first is better: by verdict, then by skill, then by joints left alone, then by steps saved. */
export function compareWays(a: Way, b: Way): number {
  return (
    a.ranked.verdict - b.ranked.verdict ||
    a.ranked.skill - b.ranked.skill ||
    a.route.undoes.length - b.route.undoes.length ||
    a.route.steps.length - b.route.steps.length
  );
}
