import type { ClubDimensions } from "@ferrule/core";
import { type LengthUnit, lengthText } from "../format/length.ts";
import { lengthLabel } from "../format/length-label.ts";
import type { AxisDimension, AxisDimensionName, ClubLayout } from "./club-layout.ts";

interface DimensionWords {
  readonly short: string;
  readonly long: string;
  /** Which of the core's figures a typical one would make doubtful. */
  readonly from?: ClubDimensions["typical"][number];
}

export const dimensionWords: Readonly<Record<AxisDimensionName, DimensionWords>> = {
  "playing-length": { short: "playing length", long: "Playing length" },
  "cut-length": { short: "shaft", long: "Shaft, from tip to butt" },
  insertion: { short: "in the bore", long: "Of it in the bore", from: "insertionIn" },
  bbgm: { short: "BBGM", long: "BBGM, bottom of bore to ground", from: "bbgmIn" },
  grip: { short: "grip", long: "Grip", from: "gripLengthIn" },
  fulcrum: { short: "fulcrum", long: "Fulcrum of the swing-weight scale" },
  balance: { short: "balance", long: "Balance point, from the grip's end" },
};

const isTypical = ({ name }: AxisDimension, typical: ClubDimensions["typical"]) =>
  typical.some((one) => one === dimensionWords[name].from);

/** "BBGM ≈ 1 3/8 in": the sign says that it rests on a typical figure. */
export function dimensionLabel(
  one: AxisDimension,
  typical: ClubDimensions["typical"],
  unit: LengthUnit,
): string {
  const about = isTypical(one, typical) ? "≈ " : "";
  return `${dimensionWords[one.name].short} ${about}${lengthLabel(one.toIn - one.fromIn, unit)}`;
}

/** Every measure of the drawing by its full name, cuts included. */
export function dimensionRows(
  layout: ClubLayout,
  typical: ClubDimensions["typical"],
  unit: LengthUnit,
): readonly (readonly [name: string, text: string])[] {
  const length = (piece: { fromIn: number; toIn: number }) => lengthText(piece.toIn - piece.fromIn, unit);
  const rows = layout.dimensions.map(
    (one) =>
      [
        dimensionWords[one.name].long,
        `${length(one)}${isTypical(one, typical) ? ", a typical figure" : ""}`,
      ] as const,
  );
  const { cap, uncut, buttCut, tipCut, extension, hidden, groundIn } = layout;
  const more: readonly (readonly [string, { fromIn: number; toIn: number } | undefined])[] = [
    ["Grip cap beyond the butt", cap],
    ["Hosel, from its mouth to the ground", hidden && { fromIn: hidden.fromIn, toIn: groundIn }],
    ["The shaft as it came", extension ? { fromIn: extension.toIn, toIn: uncut?.toIn ?? 0 } : uncut],
    ["To cut from the butt", buttCut],
    ["To add at the butt", extension],
    ["To cut from the tip", tipCut],
  ];
  return [...rows, ...more.flatMap(([name, piece]) => (piece ? [[name, length(piece)] as const] : []))];
}

/** What the drawing shows, for those who cannot see it. */
export function clubSentence(
  layout: ClubLayout,
  typical: ClubDimensions["typical"],
  unit: LengthUnit,
): string {
  const rows = dimensionRows(layout, typical, unit).map(([name, text]) => `${name} ${text}`);
  return `The club drawn to scale, from the grip on the left to the head on the right. ${rows.join("; ")}.`;
}
