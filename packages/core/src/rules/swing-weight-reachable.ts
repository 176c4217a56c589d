import { doesNotFit, fits, fitsWithWork, type Outcome, unsettled } from "../findings/outcome.ts";
import {
  type SwingWeightFacts,
  type SwingWeightReach,
  type SwingWeightReading,
  swingWeightReach,
  swingWeightSpread,
} from "../measure/swing-weight-reach.ts";
import type { Reading } from "../parts/reading.ts";
import { defineRule } from "./rule.ts";

/** Closer than this to the wanted swing weight asks for no work: practically nobody feels one point. */
export const swingWeightTolerancePoints = 1;
/** The most weight that goes on a head by ordinary means, and into a butt: our own default, no source. */
export const headWeightMaxG = 12;
export const counterweightMaxG = 30;

type Code =
  | "mass-unknown"
  | "balance-impossible"
  | "head-too-light"
  | "head-too-heavy"
  | "weight-at-head"
  | "weight-at-butt"
  | "maybe-out-of-reach";

const readingNames = [
  "headMassG",
  "cgAlongAxisIn",
  "shaftMassG",
  "balanceFromTipIn",
  "aloneLengthIn",
  "bbgmIn",
  "capThicknessIn",
  "gripMassG",
  "cgFromCapIn",
] as const satisfies readonly SwingWeightReading[];

const noAdapter: Reading = { value: 0, plusMinus: 0, source: "measured" };

function judge(
  club: SwingWeightFacts,
  reach: SwingWeightReach,
  targetPoints: number,
  because: readonly string[],
): Outcome<Code> {
  const shortPoints = targetPoints - reach.points;
  const data = { targetPoints, points: reach.points };
  if (Math.abs(shortPoints) <= swingWeightTolerancePoints) return fits();
  const atHead = shortPoints > 0;
  const addG = Math.abs(shortPoints) / (atHead ? reach.headPointsPerG : reach.buttPointsPerG);
  const maxG = atHead ? headWeightMaxG : counterweightMaxG;
  if (addG <= maxG) {
    const step = atHead ? "head-weight" : "counterweight";
    return fitsWithWork(atHead ? "weight-at-head" : "weight-at-butt", [{ step, data: { addG } }], {
      ...data,
      addG,
    });
  }
  const { low, high, vaguest } = swingWeightSpread(club);
  const mayReach = atHead
    ? high + headWeightMaxG * reach.headPointsPerG + swingWeightTolerancePoints >= targetPoints
    : low - counterweightMaxG * reach.buttPointsPerG - swingWeightTolerancePoints <= targetPoints;
  if (mayReach)
    return unsettled("maybe-out-of-reach", vaguest === "adapterMassG" ? "holderMassG" : vaguest, data);
  return doesNotFit(atHead ? "head-too-light" : "head-too-heavy", because, { ...data, maxG });
}

/** The wanted swing weight should be reachable with a few grams at the head or in the butt. */
export const swingWeightReachable = defineRule<Code>({
  id: "swing-weight-reachable",
  intent:
    "The wanted swing weight should be reachable with a few grams at one end, because more spoils how the club swings.",
  strength: "should",
  grain: "part",
  needs: {},
  uses: {
    targetPoints: "goal.swingWeightPoints",
    targetIn: "goal.playingLengthIn",
    headMassG: "head.massG",
    cgAlongAxisIn: "head.cgAlongAxisIn",
    // Whatever holds the tip: only an adapter has a mass beside the head's own.
    holderKind: "holder.kind",
    holderMassG: "holder.massG",
    shaftMassG: "shaft.massG",
    balanceFromTipIn: "shaft.balanceFromTipIn",
    balanceFraction: "shaft.balanceFraction",
    aloneLengthIn: "shaft.aloneLengthIn",
    bbgmIn: "holder.bbgmIn",
    capThicknessIn: "grip.capThicknessIn",
    gripMassG: "grip.massG",
    cgFromCapIn: "grip.cgFromCapIn",
  },
  typical: [
    "headMassG",
    "cgAlongAxisIn",
    "holderMassG",
    "shaftMassG",
    "balanceFraction",
    "bbgmIn",
    "capThicknessIn",
    "gripMassG",
    "cgFromCapIn",
  ],
  source: {
    title:
      "US patent 1,953,916 (moment about 14 in); tutelman.com/golf/design/swingwt3.php (one point is not felt); the size of a point and the grams that can be added are common practice, no source",
  },
  check: ({ targetPoints, targetIn, holderKind, holderMassG, balanceFraction, ...facts }) => {
    if (targetPoints === undefined) return fits();
    const balanceFromTipIn = facts.balanceFromTipIn ?? balanceFrom(balanceFraction, facts.aloneLengthIn);
    const known: Partial<Record<SwingWeightReading, Reading>> = { ...facts, balanceFromTipIn };
    const missing = readingNames.find((name) => known[name] === undefined);
    if (missing) return unsettled("mass-unknown", missing, { targetPoints });
    const hasAdapter = holderKind === "adapter";
    if (hasAdapter && holderMassG === undefined)
      return unsettled("mass-unknown", "holderMassG", { targetPoints });
    const readings = { ...known, adapterMassG: hasAdapter ? holderMassG : noAdapter } as Record<
      SwingWeightReading,
      Reading
    >;
    const club = { builtLengthIn: targetIn, readings };
    const reach = swingWeightReach(club);
    if (reach === undefined) return unsettled("balance-impossible", "balanceFromTipIn", { targetPoints });
    const balanceName = facts.balanceFromTipIn === undefined ? "balanceFraction" : "balanceFromTipIn";
    const read = readingNames.map((name) => (name === "balanceFromTipIn" ? balanceName : name));
    const chosen = targetIn === undefined ? ["targetPoints"] : ["targetPoints", "targetIn"];
    return judge(club, reach, targetPoints, [...chosen, ...read, ...(hasAdapter ? ["holderMassG"] : [])]);
  },
  say: {
    "mass-unknown": ({ targetPoints }, teller) =>
      `nobody can say whether the club reaches ${teller.points(Number(targetPoints))} while a mass, a balance or a length is missing`,
    "balance-impossible": (_data, teller) =>
      `the balance point stated for ${teller.part("shaft")} is one that no shaft has`,
    "head-too-light": ({ targetPoints, points, maxG }, teller) =>
      `the club comes to about ${teller.points(Number(points))}, and even ${teller.grams(Number(maxG))} more at the head leave it short of ${teller.points(Number(targetPoints))}`,
    "head-too-heavy": ({ targetPoints, points, maxG }, teller) =>
      `the club comes to about ${teller.points(Number(points))}, and even ${teller.grams(Number(maxG))} in the butt leave it over ${teller.points(Number(targetPoints))}`,
    "weight-at-head": ({ targetPoints, points, addG }, teller) =>
      `the club comes to about ${teller.points(Number(points))}, and ${teller.grams(Number(addG))} more at the head make it ${teller.points(Number(targetPoints))}`,
    "weight-at-butt": ({ targetPoints, points, addG }, teller) =>
      `the club comes to about ${teller.points(Number(points))}, and ${teller.grams(Number(addG))} in the butt make it ${teller.points(Number(targetPoints))}`,
    "maybe-out-of-reach": ({ targetPoints, points }, teller) =>
      `the club comes to about ${teller.points(Number(points))}, too vague to say whether ${teller.points(Number(targetPoints))} is in reach`,
  },
  hint: {
    "head-too-light": () => "a heavier head, a lighter grip or a longer club",
    "head-too-heavy": () => "a lighter head, a heavier grip or a shorter club",
  },
  ask: {
    headMassG: "What does the head weigh?",
    cgAlongAxisIn: "How high is the head's centre of mass above the ground, measured along the shaft?",
    holderMassG: "What does the adapter weigh with its screw?",
    shaftMassG: "What does the bare shaft weigh as it is now?",
    balanceFromTipIn: "How far from the tip does the bare shaft balance on an edge?",
    balanceFraction: "How far from the tip does the bare shaft balance on an edge?",
    aloneLengthIn: "How long is the shaft from its tip to its butt?",
    bbgmIn: "How far is the bottom of the bore from the ground, along the shaft?",
    capThicknessIn: "How far does the grip's cap stand beyond the end of the shaft?",
    gripMassG: "What does the grip weigh?",
    cgFromCapIn: "How far from its cap does the grip balance?",
  },
});

function balanceFrom(fraction: Reading | undefined, length: Reading | undefined): Reading | undefined {
  if (fraction === undefined || length === undefined) return undefined;
  return {
    value: fraction.value * length.value,
    plusMinus: fraction.plusMinus * length.value,
    source: fraction.source,
  };
}
