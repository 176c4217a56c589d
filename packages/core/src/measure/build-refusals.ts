import type { Refusal } from "../parts/refusal.ts";
import type { Build, ClubParts } from "./build.ts";
import type { BuiltClub } from "./built-club.ts";
import { writtenReading } from "./part-reading.ts";
import { coverageFactor95 } from "./uncertainty.ts";
import { buttExtensionMaxIn } from "./uncut-length.ts";

/** Why nobody can make this build of these parts; empty where they can, or where it is not known that they cannot. */
export function buildRefusals(
  parts: ClubParts,
  build: Build,
  club: BuiltClub,
  lengthPlusMinusIn: number,
): readonly Refusal[] {
  return [
    ...taperRefusals(parts, build),
    ...balanceRefusals(parts, club),
    ...trimRefusals(build, club),
    ...extensionRefusals(build, club, lengthPlusMinusIn),
  ];
}

/** A taper tip is made to its length: cut, it no longer fits its bore (golfclubshaftreview.com, parallel and taper tips). */
function taperRefusals({ shaft }: ClubParts, { tipTrimIn = 0 }: Build): readonly Refusal[] {
  if (tipTrimIn === 0 || shaft.tip?.form !== "taper") return [];
  return [
    {
      field: "build.tipTrimIn",
      got: String(tipTrimIn),
      expected: "no tip trim, for the shaft has a taper tip",
    },
  ];
}

/** Outside this a straight line of density would be negative at one end. Derived, no published source. */
function balanceRefusals({ shaft }: ClubParts, { before }: BuiltClub): readonly Refusal[] {
  const balance = writtenReading(shaft, "balanceFromTipIn");
  if (balance === undefined || Number.isNaN(before.lengthIn)) return [];
  const beta = balance.value / before.lengthIn;
  if (beta >= 1 / 3 && beta <= 2 / 3) return [];
  const expected = `from 1/3 to 2/3 of the shaft's length, which is ${inches(before.lengthIn)}`;
  return [{ field: "shaft.balanceFromTipIn", got: String(balance.value), expected }];
}

function trimRefusals(build: Build, { before, cutLengthIn }: BuiltClub): readonly Refusal[] {
  if (!(cutLengthIn <= 0) || Number.isNaN(before.lengthIn)) return [];
  const field =
    build.playingLengthIn !== undefined
      ? "playingLengthIn"
      : (build.buttTrimIn ?? 0) > 0
        ? "buttTrimIn"
        : "tipTrimIn";
  const expected = `something left of a shaft of ${inches(before.lengthIn)}`;
  return [{ field: `build.${field}`, got: String(build[field]), expected }];
}

/** An extension that is asked for is held to the limit; one that only follows from readings has to be past it for certain. */
function extensionRefusals(build: Build, club: BuiltClub, lengthPlusMinusIn: number): readonly Refusal[] {
  if (build.playingLengthIn === undefined) {
    if ((build.buttTrimIn ?? 0) >= -buttExtensionMaxIn) return [];
    return [
      {
        field: "build.buttTrimIn",
        got: String(build.buttTrimIn),
        expected: `an extension of at most ${inches(buttExtensionMaxIn)}`,
      },
    ];
  }
  const overIn = -club.buttTrimIn - buttExtensionMaxIn;
  if (!(overIn > coverageFactor95 * lengthPlusMinusIn)) return [];
  const expected = `at most ${inches(build.playingLengthIn - overIn)}, which takes an extension of ${inches(buttExtensionMaxIn)}`;
  return [{ field: "build.playingLengthIn", got: String(build.playingLengthIn), expected }];
}

function inches(valueIn: number): string {
  return `${Number(valueIn.toFixed(2))} in`;
}
