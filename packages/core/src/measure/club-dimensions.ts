import type { Reference } from "../parts/reference.ts";
import type { Build, ClubParts } from "./build.ts";
import { buildClub } from "./built-club.ts";
import { clubFacts } from "./club-facts.ts";
import type { NumberKey } from "./club-numbers.ts";

/** Where everything of one club lies along its shaft axis, best figures in inches; `null` where one is not known. */
export interface ClubDimensions {
  readonly playingLengthIn: number | null;
  /** Tip to butt, with an extension where there is one. */
  readonly cutLengthIn: number | null;
  /** The shaft as it came to the bench, tip to butt. */
  readonly uncutLengthIn: number | null;
  readonly tipTrimIn: number | null;
  /** Negative where the butt is extended. */
  readonly buttTrimIn: number | null;
  /** From where the tip stops to the ground. */
  readonly bbgmIn: number | null;
  /** How much of the shaft is inside the bore. */
  readonly insertionIn: number | null;
  /** From the face that an adapter rests on to the ground; `null` too where the head has a bore. */
  readonly seatToGroundIn: number | null;
  readonly capThicknessIn: number | null;
  readonly gripLengthIn: number | null;
  readonly lieDeg: number | null;
  /** Names of those above that a typical figure went into. */
  readonly typical: readonly DimensionName[];
}

/** The figures of `ClubDimensions`: every field of it but `typical`. */
export const clubDimensionNames = [
  "playingLengthIn",
  "cutLengthIn",
  "uncutLengthIn",
  "tipTrimIn",
  "buttTrimIn",
  "bbgmIn",
  "insertionIn",
  "seatToGroundIn",
  "capThicknessIn",
  "gripLengthIn",
  "lieDeg",
] as const;
type DimensionName = (typeof clubDimensionNames)[number];

/** The figures that each dimension is read from, so that it can be said which are only typical. */
const readFrom: Readonly<Partial<Record<DimensionName, readonly NumberKey[]>>> = {
  bbgmIn: ["bbgmIn", "seatToGroundIn", "tipStopFromSeatIn"],
  insertionIn: ["holderDepthIn"],
  seatToGroundIn: ["seatToGroundIn"],
  capThicknessIn: ["capThicknessIn"],
  gripLengthIn: ["gripLengthIn"],
  lieDeg: ["lieDeg"],
};

/** The same lengths that `estimateClub` gives, and those in between that a drawing needs. */
export function clubDimensions(
  parts: ClubParts,
  build: Build,
  reference: Pick<Reference, "typical">,
): ClubDimensions {
  const { numbers, shape, inputs } = clubFacts(parts, build, reference.typical);
  const club = buildClub(numbers, shape);
  const typical = new Set(inputs.filter(({ source }) => source === "typical").map(({ key }) => key));
  return {
    playingLengthIn: known(club.playingLengthIn),
    cutLengthIn: known(club.cutLengthIn),
    uncutLengthIn: known(club.before.lengthIn),
    tipTrimIn: known(numbers.tipTrimIn),
    buttTrimIn: known(club.buttTrimIn),
    bbgmIn: known(club.bbgmIn),
    insertionIn: known(numbers.holderDepthIn),
    seatToGroundIn: parts.adapter ? known(numbers.seatToGroundIn) : null,
    capThicknessIn: known(numbers.capThicknessIn),
    gripLengthIn: known(numbers.gripLengthIn),
    lieDeg: known(numbers.lieDeg),
    typical: clubDimensionNames.filter((name) => readFrom[name]?.some((key) => typical.has(key))),
  };
}

function known(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
