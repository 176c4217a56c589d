import { doesNotFit, fits, type Outcome, unsettled } from "../findings/outcome.ts";
import { readingInterval } from "../measure/reading-interval.ts";
import { coverageFactor95 } from "../measure/uncertainty.ts";
import type { Reading } from "../parts/reading.ts";
import { defineRule } from "./rule.ts";

export const heelToToeMaxIn = 5;
export const soleToCrownMaxIn = 2.8;

const woods: readonly unknown[] = ["driver", "fairway"];

type Code =
  | "heel-to-toe-too-long"
  | "heel-to-toe-near-limit"
  | "sole-to-crown-too-high"
  | "sole-to-crown-near-limit"
  | "deeper-than-wide"
  | "about-as-deep-as-wide"
  | "club-type-unknown";

function overLimit(
  name: string,
  reading: Reading | undefined,
  limitIn: number,
  over: Code,
  near: Code,
): Outcome<Code> {
  if (reading === undefined || reading.value <= limitIn) return fits();
  const data = { sizeIn: reading.value, limitIn };
  return readingInterval(reading).low > limitIn
    ? doesNotFit(over, [name, "clubType"], data)
    : unsettled(near, name, data);
}

function widerThanDeep(heelToToeIn: Reading | undefined, faceToBackIn: Reading | undefined): Outcome<Code> {
  if (heelToToeIn === undefined || faceToBackIn === undefined) return fits();
  const widerIn = heelToToeIn.value - faceToBackIn.value;
  if (widerIn > 0) return fits();
  const data = { heelToToeIn: heelToToeIn.value, faceToBackIn: faceToBackIn.value };
  const halfWidthIn = coverageFactor95 * Math.hypot(heelToToeIn.plusMinus, faceToBackIn.plusMinus);
  if (widerIn + halfWidthIn > 0) return unsettled("about-as-deep-as-wide", "faceToBackIn", data);
  return doesNotFit("deeper-than-wide", ["heelToToeIn", "faceToBackIn", "clubType"], data);
}

/** A wood's head has its limits: 5 in from heel to toe and more than from face to back, 2.8 in from sole to crown. */
export const headSizeWithinRules = defineRule({
  id: "head-size-within-rules",
  intent:
    "A wood's head has to stay within 5 in by 2.8 in and be wider than deep, because the Rules of Golf say so.",
  strength: "must",
  grain: "part",
  needs: {},
  uses: {
    clubType: "head.clubType",
    heelToToeIn: "head.heelToToeIn",
    faceToBackIn: "head.faceToBackIn",
    soleToCrownIn: "head.soleToCrownIn",
  },
  source: {
    title: "USGA Equipment Rules Part 2 s.4b(i); R&A Guide to the Rules on Clubs and Balls, ch. 7 s. 1",
  },
  check: ({ clubType, heelToToeIn, faceToBackIn, soleToCrownIn }) => {
    if (clubType !== undefined && !woods.includes(clubType)) return fits();
    const outcomes = [
      overLimit("heelToToeIn", heelToToeIn, heelToToeMaxIn, "heel-to-toe-too-long", "heel-to-toe-near-limit"),
      overLimit(
        "soleToCrownIn",
        soleToCrownIn,
        soleToCrownMaxIn,
        "sole-to-crown-too-high",
        "sole-to-crown-near-limit",
      ),
      widerThanDeep(heelToToeIn, faceToBackIn),
    ];
    const refusal = outcomes.find(({ verdict }) => verdict === "does-not-fit");
    if (refusal && clubType === undefined) return unsettled("club-type-unknown", "clubType");
    return refusal ?? outcomes.find(({ verdict }) => verdict === "unsettled") ?? fits();
  },
  say: {
    "heel-to-toe-too-long": ({ sizeIn, limitIn }, teller) =>
      `${teller.part("head")} is ${teller.inches(Number(sizeIn))} from heel to toe, and the Rules allow a wood ${teller.inches(Number(limitIn))}`,
    "heel-to-toe-near-limit": ({ sizeIn, limitIn }, teller) =>
      `${teller.part("head")} may be over the ${teller.inches(Number(limitIn))} from heel to toe that the Rules allow a wood, at about ${teller.inches(Number(sizeIn))}`,
    "sole-to-crown-too-high": ({ sizeIn, limitIn }, teller) =>
      `${teller.part("head")} is ${teller.inches(Number(sizeIn))} from sole to crown, and the Rules allow a wood ${teller.inches(Number(limitIn))}`,
    "sole-to-crown-near-limit": ({ sizeIn, limitIn }, teller) =>
      `${teller.part("head")} may be over the ${teller.inches(Number(limitIn))} from sole to crown that the Rules allow a wood, at about ${teller.inches(Number(sizeIn))}`,
    "deeper-than-wide": ({ heelToToeIn, faceToBackIn }, teller) =>
      `${teller.part("head")} measures ${teller.inches(Number(heelToToeIn))} from heel to toe and ${teller.inches(Number(faceToBackIn))} from face to back, and the Rules ask a wood to be wider than deep`,
    "about-as-deep-as-wide": (_data, teller) =>
      `${teller.part("head")} is about as deep as it is wide, and the Rules ask a wood to be wider than deep`,
    "club-type-unknown": (_data, teller) =>
      `${teller.part("head")} is too big for a wood, and nobody has said what it is`,
  },
  ask: {
    clubType: "What kind of club is the head?",
    heelToToeIn: "How far is it from heel to toe at the widest, with the shaft at 60 degrees?",
    faceToBackIn: "How far is it from the face to the back of the head?",
    soleToCrownIn: "How far is it from the sole to the top of the crown?",
  },
});
