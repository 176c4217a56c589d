import { doesNotFit, fits, fitsWithWork, type Outcome, unsettled } from "../findings/outcome.ts";
import {
  missingLengthFact,
  rulesMethodSlackIn,
  type UncutLengthFacts,
  uncutLengthIn,
  uncutLengthInterval,
  vaguestLengthFact,
} from "../measure/uncut-length.ts";
import { defineRule } from "./rule.ts";

/** Putters are exempt. */
export const localRuleLengthMaxIn = 46;

type Code =
  | "target-too-long"
  | "cut-to-local-rule"
  | "length-near-limit"
  | "target-just-over-limit"
  | "length-too-vague"
  | "length-unknown"
  | "club-type-unknown";

const nearStartIn = localRuleLengthMaxIn - rulesMethodSlackIn;
const nearEndIn = localRuleLengthMaxIn + rulesMethodSlackIn;

function ofTarget(targetIn: number, clubType: unknown): Outcome<Code> {
  const data = { lengthIn: targetIn, maxIn: localRuleLengthMaxIn };
  if (targetIn < nearStartIn) return fits();
  if (targetIn <= localRuleLengthMaxIn) return fits("length-near-limit", data);
  if (clubType === undefined) return unsettled("club-type-unknown", "clubType", data);
  if (targetIn <= nearEndIn) return unsettled("target-just-over-limit", "targetIn", data);
  return doesNotFit("target-too-long", ["localRule46", "targetIn", "clubType"], data);
}

function ofUncut(facts: UncutLengthFacts, clubType: unknown): Outcome<Code> {
  const { high } = uncutLengthInterval(facts);
  if (facts.aloneLengthIn && high < nearStartIn) return fits();
  const uncutIn = uncutLengthIn(facts);
  if (uncutIn === undefined) {
    return unsettled("length-unknown", missingLengthFact(facts) ?? "aloneLengthIn", {
      maxIn: localRuleLengthMaxIn,
    });
  }
  const data = { lengthIn: uncutIn, maxIn: localRuleLengthMaxIn };
  if (uncutIn <= localRuleLengthMaxIn)
    return high <= nearEndIn
      ? fits("length-near-limit", data)
      : unsettled("length-too-vague", vaguestLengthFact(facts), data);
  if (clubType === undefined) return unsettled("club-type-unknown", "clubType", data);
  const trimIn = uncutIn - localRuleLengthMaxIn;
  return fitsWithWork("cut-to-local-rule", [{ step: "butt-trim", data: { trimIn } }], { trimIn, ...data });
}

/** Where the model local rule is in force, a club is 46 in long at most, unless it is a putter. */
export const lengthWithinLocalRule = defineRule({
  id: "length-within-local-rule",
  intent:
    "Where the local rule is on, the club has to be 46 in long or less unless it is a putter, because its committee says so.",
  strength: "must",
  grain: "part",
  needs: {},
  uses: {
    localRule46: "goal.localRule46",
    clubType: "head.clubType",
    targetIn: "goal.playingLengthIn",
    aloneLengthIn: "shaft.aloneLengthIn",
    bbgmIn: "holder.bbgmIn",
    capThicknessIn: "grip.capThicknessIn",
  },
  typical: ["bbgmIn", "capThicknessIn"],
  source: { title: "Model Local Rule G-10, announced 12 October 2021 (thegolfnewsnet.com)" },
  check: ({ localRule46, clubType, targetIn, aloneLengthIn, bbgmIn, capThicknessIn }) => {
    if (localRule46 !== true || clubType === "putter") return fits();
    return targetIn === undefined
      ? ofUncut({ aloneLengthIn, bbgmIn, capThicknessIn }, clubType)
      : ofTarget(targetIn, clubType);
  },
  say: {
    "target-too-long": ({ lengthIn, maxIn }, teller) =>
      `the goal asks for ${teller.inches(Number(lengthIn))}, and the local rule allows ${teller.inches(Number(maxIn))} for any club but a putter`,
    "cut-to-local-rule": ({ lengthIn, maxIn, trimIn }, teller) =>
      `uncut, the club would be about ${teller.inches(Number(lengthIn))} long, and has to lose ${teller.inches(Number(trimIn))} to be within the ${teller.inches(Number(maxIn))} of the local rule`,
    "length-near-limit": ({ lengthIn, maxIn }, teller) =>
      `the club would be about ${teller.inches(Number(lengthIn))} long, so close to the ${teller.inches(Number(maxIn))} of the local rule that it has to be measured by the Rules' method, at 60 degrees`,
    "target-just-over-limit": ({ lengthIn, maxIn }, teller) =>
      `the goal asks for ${teller.inches(Number(lengthIn))}, over the ${teller.inches(Number(maxIn))} of the local rule by no more than two ways of measuring differ, so only a measurement by the Rules' method, at 60 degrees, can tell`,
    "length-too-vague": ({ lengthIn, maxIn }, teller) =>
      `the club would be about ${teller.inches(Number(lengthIn))} long, and the lengths it is made of are too vague to say whether it is within the ${teller.inches(Number(maxIn))} of the local rule`,
    "length-unknown": ({ maxIn }, teller) =>
      `nobody can say whether ${teller.part("shaft")} is within the ${teller.inches(Number(maxIn))} of the local rule while a length is missing`,
    "club-type-unknown": ({ lengthIn, maxIn }, teller) =>
      `${teller.inches(Number(lengthIn))} is over the ${teller.inches(Number(maxIn))} of the local rule unless the club is a putter`,
  },
  hint: { "target-too-long": () => "a shorter club in the goal, or the local rule off" },
  ask: {
    targetIn:
      "How long is the club to be, measured by the Rules' method with its sole against a plane at 60 degrees? Ask for a length at or under the limit to be safe.",
    clubType: "What kind of club is the head?",
    aloneLengthIn: "How long is the shaft from its tip to its butt?",
    bbgmIn:
      "How far above the ground does the shaft's tip stop, along the shaft? In a bored head stand a rod in the bore; where an adapter goes, measure from its seat to the ground.",
    capThicknessIn: "How far does the grip's cap stand beyond the end of the shaft?",
  },
});
