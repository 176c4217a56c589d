import type { Reference } from "../parts/reference.ts";
import type { Refusal } from "../parts/refusal.ts";
import { angleNeeds, headAngleQuantities, settingEstimates } from "./angles.ts";
import { balanceQuantity } from "./balance.ts";
import { bondEstimate } from "./bond.ts";
import type { Build, ClubParts } from "./build.ts";
import { buildRefusals } from "./build-refusals.ts";
import { type BuiltClub, buildClub } from "./built-club.ts";
import { type ClubFacts, clubFacts } from "./club-facts.ts";
import type { NumberKey } from "./club-numbers.ts";
import type { Estimate, Estimates } from "./estimate.ts";
import { frequencyQuantity } from "./frequency.ts";
import { type JointModel, jointEstimates } from "./joint-estimates.ts";
import { massQuantity } from "./mass.ts";
import { moiQuantity } from "./moi.ts";
import { playingLengthQuantity } from "./playing-length.ts";
import type { Quantity } from "./quantity.ts";
import { rulesLengthQuantity } from "./rules-length-of-club.ts";
import { labelled, swingWeightQuantity } from "./swing-weight-of-club.ts";
import { cutLengthQuantity, shaftBalanceQuantity, shaftMassQuantity } from "./trimmed-shaft.ts";

/** The estimates, or why nobody could make the parts into a club with that build. */
export type EstimatedClub =
  | { readonly ok: true; readonly estimates: Estimates }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** Everything that is estimated of a club in one propagation, in the order of `Estimates`. */
export const quantities: readonly Quantity[] = [
  playingLengthQuantity,
  rulesLengthQuantity,
  massQuantity,
  balanceQuantity,
  swingWeightQuantity,
  moiQuantity,
  frequencyQuantity,
  ...headAngleQuantities,
  cutLengthQuantity,
  shaftMassQuantity,
  shaftBalanceQuantity,
];

/**
 * How the parts would measure and swing as one club with this build: every figure with its 95 % interval and the readings it
 * rests on. Refuses builds that nobody could make; a figure that rests on something unknown is `null` and told in `missing`.
 */
export function estimateClub(
  parts: ClubParts,
  build: Build,
  reference: Pick<Reference, "typical">,
): EstimatedClub {
  const facts = clubFacts(parts, build, reference.typical);
  const club = buildClub(facts.numbers, facts.shape);
  const refusals = buildRefusals(parts, build, club, buttTrimPlusMinus(facts));
  if (refusals.length > 0) return { ok: false, refusals };
  return { ok: true, estimates: estimatesOf(parts, facts) };
}

/** Standard uncertainty of the butt trim that a chosen playing length comes to; 0 where the trim itself is chosen. */
function buttTrimPlusMinus({ shape, inputs }: ClubFacts): number {
  if (shape.cutTo === "butt-trim") return 0;
  const weights = new Map<NumberKey, number>(shape.aloneTerms.map(({ key, weight }) => [key, weight]));
  for (const key of ["bbgmIn", "seatToGroundIn", "tipStopFromSeatIn"] as const) weights.set(key, 1);
  weights.set("capThicknessIn", 1 + (weights.get("capThicknessIn") ?? 0));
  return Math.hypot(...inputs.map(({ key, plusMinus }) => (weights.get(key) ?? 0) * plusMinus));
}

function estimatesOf(parts: ClubParts, facts: ClubFacts): Estimates {
  const model: JointModel = (at, out, moved) => writeQuantities(buildClub(at, facts.shape), out, moved);
  const results = jointEstimates(model, facts.numbers, facts.inputs, quantities.length);
  const named = Object.fromEntries(quantities.map(({ name }, k) => [name, results[k] ?? null])) as Record<
    Quantity["name"],
    Estimate | null
  >;
  const settings = settingEstimates(parts.adapter, facts);
  const bond = bondEstimate(parts, facts.numbers);
  return {
    ...named,
    swingWeight: named.swingWeight && labelled(named.swingWeight),
    settings,
    bond,
    missing: [
      ...missingQuantities(named, facts),
      ...missingSettings(parts, facts, settings.length),
      ...missingBond(parts, bond !== null),
    ],
  };
}

function writeQuantities(club: BuiltClub, out: Float64Array, moved: NumberKey | undefined): void {
  for (let k = 0; k < quantities.length; k++) {
    const { of, still } = quantities[k]!;
    if (moved === undefined || !still?.has(moved)) out[k] = of(club);
  }
}

type Missing = Estimates["missing"][number];

function missingQuantities(
  named: Readonly<Record<string, Estimate | null>>,
  facts: ClubFacts,
): readonly Missing[] {
  return quantities
    .filter(({ name }) => named[name] === null)
    .map(({ name, needs }) => missing(name, needs, facts));
}

/** The first of the needs that is unknown. Nothing unknown among them means that the figures themselves leave no answer, such as a clamp longer than the shaft. */
function missing(quantity: string, needs: readonly NumberKey[], { gaps }: ClubFacts): Missing {
  const gap = needs.map((need) => gaps.find(({ key }) => key === need)).find((found) => found !== undefined);
  if (gap === undefined)
    return {
      quantity,
      part: "build",
      field: "length",
      reason: "these figures leave nothing to estimate it from",
    };
  return { quantity, part: gap.part, field: gap.field, reason: gap.reason };
}

function missingSettings({ adapter }: ClubParts, facts: ClubFacts, told: number): readonly Missing[] {
  const asked = adapter?.settings?.length ?? 0;
  return asked > told ? [missing("settings", angleNeeds, facts)] : [];
}

function missingBond({ shaft }: ClubParts, told: boolean): readonly Missing[] {
  if (told) return [];
  return [
    {
      quantity: "bond",
      part: shaft.id,
      field: "tip.diameterIn",
      reason:
        "neither the tip's nor the bore's diameter is known, or the bore's depth or the head's mass is not",
    },
  ];
}
