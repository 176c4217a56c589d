import { gInFromOzIn, ozInFromGIn } from "../units.ts";
import type { BuiltClub } from "./built-club.ts";
import { momentAtPoints, swingWeightFulcrumIn, swingWeightPoints } from "./physics/swing-weight.ts";
import { swingMoment } from "./swing-weight-of-club.ts";

/** What is added to a club, in grams. */
export interface AddedMasses {
  readonly extraHeadMassG: number;
  readonly counterweightG: number;
}

/**
 * The added masses that bring a club to a swing weight, exactly: the moment about the fulcrum is linear in each, with the
 * mass's distance from the fulcrum as its slope. By head mass alone, by counterweight alone, and, where the head mass on it is
 * not enough to take off, by all of that and a counterweight. A club that is within `tolerancePoints` is left as it is.
 */
export function massChanges(
  club: BuiltClub,
  targetPoints: number,
  tolerancePoints: number,
): readonly AddedMasses[] {
  const { numbers } = club;
  const now = { extraHeadMassG: numbers.extraHeadMassG, counterweightG: numbers.counterweightG };
  const moment = swingMoment(club);
  if (Math.abs(swingWeightPoints(ozInFromGIn(moment)) - targetPoints) <= tolerancePoints) return [now];
  const lackGIn = gInFromOzIn(momentAtPoints(targetPoints)) - moment;
  const { headArmIn, counterweightArmIn } = arms(club);
  const byHead = { ...now, extraHeadMassG: now.extraHeadMassG + lackGIn / headArmIn };
  const byCounterweight = { ...now, counterweightG: now.counterweightG + lackGIn / counterweightArmIn };
  const bareLackGIn = lackGIn + now.extraHeadMassG * headArmIn;
  const byBoth = { extraHeadMassG: 0, counterweightG: now.counterweightG + bareLackGIn / counterweightArmIn };
  const ways =
    now.extraHeadMassG > 0 && byHead.extraHeadMassG < 0
      ? [byHead, byCounterweight, byBoth]
      : [byHead, byCounterweight];
  return ways.filter(({ extraHeadMassG, counterweightG }) => extraHeadMassG >= 0 && counterweightG >= 0);
}

function arms({ numbers, playingLengthIn }: BuiltClub): {
  readonly headArmIn: number;
  readonly counterweightArmIn: number;
} {
  return {
    headArmIn: playingLengthIn - numbers.cgAlongAxisIn - swingWeightFulcrumIn,
    counterweightArmIn: numbers.capThicknessIn - swingWeightFulcrumIn,
  };
}
