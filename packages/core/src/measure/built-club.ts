import { gIn2FromKgCm2 } from "../units.ts";
import type { ClubNumbers } from "./club-numbers.ts";
import type { ClubShape } from "./club-shape.ts";
import type { ClubComponent } from "./physics/club-component.ts";
import { rodOwnMoi } from "./physics/club-moi.ts";
import { cutLength, playingLength } from "./physics/playing-length.ts";
import { shaftAfterTrim } from "./physics/shaft-after-trim.ts";

/** A club as its figures make it. Anything that rests on a missing figure is NaN. */
export interface BuiltClub {
  readonly numbers: ClubNumbers;
  readonly shape: ClubShape;
  /** The shaft before this build: length, mass and balance from its tip. */
  readonly before: ShaftState;
  readonly bbgmIn: number;
  /** Cut from the butt; negative where the butt is extended. */
  readonly buttTrimIn: number;
  /** Tip to butt, with an extension where there is one. */
  readonly cutLengthIn: number;
  readonly playingLengthIn: number;
  /** The shaft after this build, without the plug of an extension. */
  readonly shaft: ShaftState & { readonly moiAboutTipGIn2: number };
  readonly components: readonly ClubComponent[];
}

export interface ShaftState {
  readonly lengthIn: number;
  readonly massG: number;
  readonly balanceFromTipIn: number;
}

/** Builds the club from its figures: lengths first, then the shaft that is left, then where every mass sits. */
export function buildClub(numbers: ClubNumbers, shape: ClubShape): BuiltClub {
  const before = shaftBefore(numbers, shape);
  const bbgmIn = numbers.bbgmIn + numbers.seatToGroundIn - numbers.tipStopFromSeatIn;
  const { capThicknessIn } = numbers;
  const uncutIn = before.lengthIn - numbers.tipTrimIn;
  const chosen = shape.cutTo === "playing-length";
  const cutLengthIn = chosen
    ? cutLength({ bbgmIn, capThicknessIn, playingLengthIn: numbers.chosenLengthIn })
    : uncutIn - numbers.buttTrimIn;
  const buttTrimIn = chosen ? uncutIn - cutLengthIn : numbers.buttTrimIn;
  const playingLengthIn = chosen
    ? numbers.chosenLengthIn
    : playingLength({ bbgmIn, capThicknessIn, cutLengthIn });
  const shaft = trimmed(before, numbers.tipTrimIn, shape.extended ? 0 : buttTrimIn);
  const components = clubComponents({ numbers, shape, bbgmIn, buttTrimIn, playingLengthIn, shaft });
  return { numbers, shape, before, bbgmIn, buttTrimIn, cutLengthIn, playingLengthIn, shaft, components };
}

type LaidOut = Pick<BuiltClub, "numbers" | "shape" | "bbgmIn" | "buttTrimIn" | "playingLengthIn" | "shaft">;

/** The shaft as it came to the bench, from the sum of its length's terms and from what was read of its mass and balance. */
function shaftBefore(numbers: ClubNumbers, shape: ClubShape): ShaftState {
  let lengthIn = 0;
  for (const { key, weight } of shape.aloneTerms) lengthIn += weight * numbers[key];
  if (shape.massRead === "raw") return shaftFromRaw(numbers, shape, lengthIn);
  const balanceFromTipIn = shape.balanceRead ? numbers.balanceFromTipIn : numbers.balanceFraction * lengthIn;
  return { lengthIn, massG: numbers.shaftMassG, balanceFromTipIn };
}

/** What the maker's shaft was cut to: the tip trim that is known of, and from the butt whatever else is gone. */
function shaftFromRaw(numbers: ClubNumbers, shape: ClubShape, lengthIn: number): ShaftState {
  const { rawLengthIn, rawMassG, tipTrimmedIn, balanceFraction } = numbers;
  const raw = { lengthIn: rawLengthIn, massG: rawMassG, balanceFromTipIn: balanceFraction * rawLengthIn };
  const now = trimmed(raw, tipTrimmedIn, rawLengthIn - tipTrimmedIn - lengthIn);
  return shape.balanceRead ? { lengthIn, massG: now.massG, balanceFromTipIn: numbers.balanceFromTipIn } : now;
}

/** The mass of an untouched shaft needs no length, so that a shaft of unknown length can still be weighed. */
export function trimmed(shaft: ShaftState, tipTrimIn: number, buttTrimIn: number): BuiltClub["shaft"] {
  // Written out, for this runs some hundreds of times a club and a spread costs more than the sums.
  const { massG: wholeG, lengthIn, balanceFromTipIn } = shaft;
  const left = shaftAfterTrim({ massG: wholeG, lengthIn, balanceFromTipIn, tipTrimIn, buttTrimIn });
  if (left.ok) return left;
  const untouched = tipTrimIn === 0 && buttTrimIn === 0 && Number.isNaN(shaft.lengthIn);
  const massG = untouched ? shaft.massG : Number.NaN;
  return { lengthIn: Number.NaN, massG, balanceFromTipIn: Number.NaN, moiAboutTipGIn2: Number.NaN };
}

/**
 * Every mass along the shaft axis from the edge of the grip cap: the head at its centre, the adapter a little above the tip,
 * epoxy in the middle and the ferrule at the top of the bond, the shaft by its line of density, the grip at its centre and
 * its tape along it, added head mass at the head's centre, a counterweight in the butt and the plug of an extension at it.
 */
function clubComponents(club: LaidOut): readonly ClubComponent[] {
  const n = club.numbers;
  const tipIn = club.playingLengthIn - club.bbgmIn;
  const headIn = club.playingLengthIn - n.cgAlongAxisIn;
  const gripRod = rodOwnMoi({ massG: n.gripMassG, lengthIn: n.gripLengthIn });
  const tapeRod = rodOwnMoi({ massG: n.tapeMassG, lengthIn: n.gripLengthIn });
  return [
    { massG: n.headMassG, cgFromButtIn: headIn, ownMoiGIn2: gIn2FromKgCm2(n.headOwnMoiKgCm2) },
    point(n.extraHeadMassG, headIn),
    point(n.adapterMassG, tipIn - n.adapterCgAboveTipStopIn),
    point(n.epoxyMassG, tipIn - n.holderDepthIn / 2),
    point(n.ferruleMassG, tipIn - n.holderDepthIn),
    shaftComponent(club.shaft, tipIn),
    { massG: n.gripMassG, cgFromButtIn: n.gripCgFromCapIn, ownMoiGIn2: gripRod },
    { massG: n.tapeMassG, cgFromButtIn: n.gripLengthIn / 2, ownMoiGIn2: tapeRod },
    point(n.counterweightG, n.capThicknessIn),
    point(club.shape.extended ? n.extensionMassG : 0, n.capThicknessIn - club.buttTrimIn),
  ];
}

function point(massG: number, cgFromButtIn: number): ClubComponent {
  return { massG, cgFromButtIn, ownMoiGIn2: 0 };
}

function shaftComponent(shaft: BuiltClub["shaft"], tipIn: number): ClubComponent {
  const ownMoiGIn2 = shaft.moiAboutTipGIn2 - shaft.massG * shaft.balanceFromTipIn ** 2;
  return { massG: shaft.massG, cgFromButtIn: tipIn - shaft.balanceFromTipIn, ownMoiGIn2 };
}
