import { doesNotFit, fits, type Outcome, unsettled } from "../findings/outcome.ts";
import { readingInterval } from "../measure/reading-interval.ts";
import type { Reading } from "../parts/reading.ts";
import { defineRule } from "./rule.ts";

export const gripCrossSectionMaxIn = 1.75;
export const gripLengthMinIn = 7;

type Code =
  | "grip-too-thick"
  | "grip-thickness-near-limit"
  | "grip-too-short"
  | "grip-length-near-limit"
  | "club-type-unknown";

function thickness(reading: Reading | undefined): Outcome<Code> {
  if (reading === undefined || reading.value <= gripCrossSectionMaxIn) return fits();
  const data = { thicknessIn: reading.value, limitIn: gripCrossSectionMaxIn };
  if (readingInterval(reading).low > gripCrossSectionMaxIn)
    return doesNotFit("grip-too-thick", ["outsideDiameterIn"], data);
  return unsettled("grip-thickness-near-limit", "outsideDiameterIn", data);
}

function length(reading: Reading | undefined, clubType: unknown): Outcome<Code> {
  // Putter grips have terms of their own (two grips on one shaft), which one length cannot tell.
  if (reading === undefined || reading.value >= gripLengthMinIn || clubType === "putter") return fits();
  const data = { lengthIn: reading.value, limitIn: gripLengthMinIn };
  if (readingInterval(reading).high >= gripLengthMinIn)
    return unsettled("grip-length-near-limit", "lengthIn", data);
  if (clubType === undefined) return unsettled("club-type-unknown", "clubType", data);
  return doesNotFit("grip-too-short", ["lengthIn", "clubType"], data);
}

/** A grip may be 1.75 in thick at most, and has to be 7 in long for both hands. */
export const gripWithinRules = defineRule({
  id: "grip-within-rules",
  intent: "The grip has to be 7 in long or more and 1.75 in thick or less, because the Rules of Golf say so.",
  strength: "must",
  grain: "part",
  needs: {},
  uses: { outsideDiameterIn: "grip.outsideDiameterIn", lengthIn: "grip.lengthIn", clubType: "head.clubType" },
  source: { title: "USGA Equipment Rules Part 2 s.3b(iii) and the interpretations of s.3" },
  check: ({ outsideDiameterIn, lengthIn, clubType }) => {
    const outcomes = [thickness(outsideDiameterIn), length(lengthIn, clubType)];
    const worst = outcomes.find(({ verdict }) => verdict === "does-not-fit");
    return worst ?? outcomes.find(({ verdict }) => verdict === "unsettled") ?? fits();
  },
  say: {
    "grip-too-thick": ({ thicknessIn, limitIn }, teller) =>
      `${teller.part("grip")} is ${teller.inches(Number(thicknessIn))} thick, and the Rules allow ${teller.inches(Number(limitIn))}`,
    "grip-thickness-near-limit": ({ thicknessIn, limitIn }, teller) =>
      `${teller.part("grip")} may be over the ${teller.inches(Number(limitIn))} of thickness the Rules allow, at about ${teller.inches(Number(thicknessIn))}`,
    "grip-too-short": ({ lengthIn, limitIn }, teller) =>
      `${teller.part("grip")} is ${teller.inches(Number(lengthIn))} long, and the Rules ask for ${teller.inches(Number(limitIn))}`,
    "grip-length-near-limit": ({ lengthIn, limitIn }, teller) =>
      `${teller.part("grip")} may be shorter than the ${teller.inches(Number(limitIn))} the Rules ask for, at about ${teller.inches(Number(lengthIn))}`,
    "club-type-unknown": ({ lengthIn }, teller) =>
      `${teller.part("grip")} is ${teller.inches(Number(lengthIn))} long, too short unless the club is a putter`,
  },
  hint: {
    "grip-too-thick": () => "a thinner grip",
    "grip-too-short": () => "a longer grip",
  },
  ask: {
    outsideDiameterIn: "How thick is the grip at its thickest, measured with a calliper?",
    lengthIn: "How long is the grip from end to end?",
    clubType: "What kind of club is the head?",
  },
});
