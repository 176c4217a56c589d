import type { ClubComponent } from "./club-component.ts";
import { clubMass } from "./club-mass.ts";

type Weighed = Pick<ClubComponent, "massG" | "cgFromButtIn">;

/** First moment of mass about the grip end, in g·in. */
export function clubFirstMoment(components: readonly Weighed[]): number {
  let sumGIn = 0;
  for (const { massG, cgFromButtIn } of components) sumGIn += massG * cgFromButtIn;
  return sumGIn;
}

/** The balance point in inches from the grip end; not a number when nothing weighs anything. */
export function clubBalance(components: readonly Weighed[]): number {
  return clubFirstMoment(components) / clubMass(components);
}
