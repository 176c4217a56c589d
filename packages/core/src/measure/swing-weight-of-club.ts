import { ozInFromGIn } from "../units.ts";
import type { BuiltClub } from "./built-club.ts";
import type { Estimate, SwingWeightEstimate } from "./estimate.ts";
import { clubFirstMoment } from "./physics/club-balance.ts";
import { clubMass } from "./physics/club-mass.ts";
import { swingWeightFulcrumIn, swingWeightLabel, swingWeightPoints } from "./physics/swing-weight.ts";
import { momentNeeds, type Quantity } from "./quantity.ts";

/** Swing weight in points from A0, about 14 in from the edge of the grip cap. */
export const swingWeightQuantity: Quantity = {
  name: "swingWeight",
  needs: momentNeeds,
  of: (club) => swingWeightPoints(ozInFromGIn(swingMoment(club))),
};

/** First moment in g·in about the fulcrum of the scale. */
export function swingMoment({ components }: BuiltClub): number {
  return clubFirstMoment(components) - swingWeightFulcrumIn * clubMass(components);
}

/** An estimate in points with its label. */
export function labelled({ value, low, high, basis }: Estimate): SwingWeightEstimate {
  return { points: value, label: swingWeightLabel(value), low, high, basis };
}
