import type { Reference } from "../parts/reference.ts";
import type { Build, ClubParts } from "./build.ts";
import { buildClub } from "./built-club.ts";
import { clubFacts } from "./club-facts.ts";
import { massQuantity } from "./mass.ts";
import { swingWeightQuantity } from "./swing-weight-of-club.ts";

/** The best estimates without their intervals: for ranking many clubs. `null` where something is missing. */
export interface ClubSummary {
  readonly playingLengthIn: number | null;
  readonly cutLengthIn: number | null;
  /** Negative where the butt has to be extended. */
  readonly buttTrimIn: number | null;
  readonly massG: number | null;
  readonly swingWeightPoints: number | null;
}

/** As `estimateClub`, without intervals and without refusing anything. */
export function clubSummary(
  parts: ClubParts,
  build: Build,
  reference: Pick<Reference, "typical">,
): ClubSummary {
  const { numbers, shape } = clubFacts(parts, build, reference.typical);
  const club = buildClub(numbers, shape);
  return {
    playingLengthIn: known(club.playingLengthIn),
    cutLengthIn: known(club.cutLengthIn),
    buttTrimIn: known(club.buttTrimIn),
    massG: known(massQuantity.of(club)),
    swingWeightPoints: known(swingWeightQuantity.of(club)),
  };
}

function known(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
