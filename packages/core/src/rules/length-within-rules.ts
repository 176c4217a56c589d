import { doesNotFit, fits, fitsWithWork, type Outcome, unsettled } from "../findings/outcome.ts";
import { smallestRefusal } from "../findings/smallest-refusal.ts";
import {
  buttExtensionMaxIn,
  missingLengthFact,
  rulesMethodSlackIn,
  type UncutLengthFacts,
  uncutLengthIn,
  uncutLengthInterval,
  vaguestLengthFact,
} from "../measure/uncut-length.ts";
import { defineRule } from "./rule.ts";

export const clubLengthMinIn = 18;
/** Putters are exempt. */
export const clubLengthMaxIn = 48;

type Code =
  | "target-too-short"
  | "target-too-long"
  | "too-short"
  | "cut-to-rules"
  | "lengthened-to-rules"
  | "length-near-limit"
  | "target-just-outside"
  | "length-too-vague"
  | "length-unknown"
  | "club-type-unknown";

const limits = { minIn: clubLengthMinIn, maxIn: clubLengthMaxIn };

function ofTarget(targetIn: number, clubType: unknown): Outcome<Code> {
  const data = { lengthIn: targetIn, ...limits };
  if (targetIn < clubLengthMinIn - rulesMethodSlackIn)
    return doesNotFit("target-too-short", ["targetIn"], data);
  if (targetIn < clubLengthMinIn) return unsettled("target-just-outside", "targetIn", data);
  if (targetIn <= clubLengthMinIn + rulesMethodSlackIn) return fits("length-near-limit", data);
  if (targetIn < clubLengthMaxIn - rulesMethodSlackIn || clubType === "putter") return fits();
  if (targetIn <= clubLengthMaxIn) return fits("length-near-limit", data);
  if (clubType === undefined) return unsettled("club-type-unknown", "clubType", data);
  if (targetIn <= clubLengthMaxIn + rulesMethodSlackIn)
    return unsettled("target-just-outside", "targetIn", data);
  return doesNotFit("target-too-long", ["targetIn", "clubType"], data);
}

function ofUncut(facts: UncutLengthFacts, clubType: unknown, localRule46: unknown): Outcome<Code> {
  const { low, high } = uncutLengthInterval(facts);
  if (high + buttExtensionMaxIn < clubLengthMinIn) return doesNotFit("too-short", [], limits);
  const clear =
    low > clubLengthMinIn + rulesMethodSlackIn &&
    (high < clubLengthMaxIn - rulesMethodSlackIn || clubType === "putter");
  const uncutIn = uncutLengthIn(facts);
  if (facts.aloneLengthIn === undefined) return unsettled("length-unknown", "aloneLengthIn", limits);
  if (clear) return fits();
  if (uncutIn === undefined)
    return unsettled("length-unknown", missingLengthFact(facts) ?? "aloneLengthIn", limits);
  if (uncutIn < clubLengthMinIn) return lengthened(uncutIn, low);
  if (uncutIn > clubLengthMaxIn && clubType !== "putter") return cut(uncutIn, clubType, localRule46);
  return nearOrVague(facts, uncutIn, clubType);
}

function lengthened(uncutIn: number, lowIn: number): Outcome<Code> {
  if (lowIn + buttExtensionMaxIn < clubLengthMinIn)
    return unsettled("length-unknown", "aloneLengthIn", limits);
  const extensionIn = clubLengthMinIn - uncutIn;
  return fitsWithWork("lengthened-to-rules", [{ step: "butt-extension", data: { extensionIn } }], {
    extensionIn,
    ...limits,
  });
}

function nearOrVague(facts: UncutLengthFacts, uncutIn: number, clubType: unknown): Outcome<Code> {
  const { low, high } = uncutLengthInterval(facts);
  const data = { lengthIn: uncutIn, ...limits };
  const isNear =
    low >= clubLengthMinIn - rulesMethodSlackIn &&
    (high <= clubLengthMaxIn + rulesMethodSlackIn || clubType === "putter");
  return isNear
    ? fits("length-near-limit", data)
    : unsettled("length-too-vague", vaguestLengthFact(facts), data);
}

function cut(uncutIn: number, clubType: unknown, localRule46: unknown): Outcome<Code> {
  const data = { lengthIn: uncutIn, ...limits };
  if (clubType === undefined) return unsettled("club-type-unknown", "clubType", data);
  // The shorter limit does the cutting: a shaft is cut once.
  if (localRule46 === true) return fits();
  const trimIn = uncutIn - clubLengthMaxIn;
  return fitsWithWork("cut-to-rules", [{ step: "butt-trim", data: { trimIn } }], { trimIn, ...data });
}

/** A club is 18 to 48 in long, a putter as long as you like. */
export const lengthWithinRules = defineRule({
  id: "length-within-rules",
  intent:
    "The club has to be 18 in long or more and, unless it is a putter, 48 in or less, because the Rules of Golf say so.",
  strength: "must",
  grain: "part",
  needs: {},
  uses: {
    clubType: "head.clubType",
    localRule46: "goal.localRule46",
    targetIn: "goal.playingLengthIn",
    aloneLengthIn: "shaft.aloneLengthIn",
    bbgmIn: "holder.bbgmIn",
    capThicknessIn: "grip.capThicknessIn",
  },
  typical: ["bbgmIn", "capThicknessIn"],
  source: {
    title:
      'R&A and USGA "Procedure for measuring the length of golf clubs" rev. 1.1, s. 4.1 and 5.0.1; tutelman.com/golf/measure/ruler.php (the two methods differ by less than 1/12 in)',
  },
  check: ({ clubType, localRule46, targetIn, aloneLengthIn, bbgmIn, capThicknessIn }) =>
    targetIn === undefined
      ? smallestRefusal((facts) => ofUncut(facts, clubType, localRule46), {
          bbgmIn,
          capThicknessIn,
          aloneLengthIn,
        })
      : ofTarget(targetIn, clubType),
  say: {
    "target-too-short": ({ lengthIn, minIn }, teller) =>
      `the goal asks for ${teller.inches(Number(lengthIn))}, and the Rules for ${teller.inches(Number(minIn))} or more`,
    "target-too-long": ({ lengthIn, maxIn }, teller) =>
      `the goal asks for ${teller.inches(Number(lengthIn))}, and the Rules allow ${teller.inches(Number(maxIn))} for any club but a putter`,
    "too-short": ({ minIn }, teller) =>
      `${teller.part("shaft")} makes a club shorter than the ${teller.inches(Number(minIn))} of the Rules, even lengthened`,
    "cut-to-rules": ({ lengthIn, maxIn, trimIn }, teller) =>
      `uncut, the club would be about ${teller.inches(Number(lengthIn))} long, and has to lose ${teller.inches(Number(trimIn))} to be within the ${teller.inches(Number(maxIn))} of the Rules`,
    "lengthened-to-rules": ({ extensionIn, minIn }, teller) =>
      `${teller.part("shaft")} has to be lengthened by about ${teller.inches(Number(extensionIn))} to reach the ${teller.inches(Number(minIn))} of the Rules`,
    "length-near-limit": ({ lengthIn }, teller) =>
      `the club would be about ${teller.inches(Number(lengthIn))} long, so close to a limit of the Rules that it has to be measured by their method, at 60 degrees`,
    "target-just-outside": ({ lengthIn }, teller) =>
      `the goal asks for ${teller.inches(Number(lengthIn))}, outside a limit of the Rules by no more than two ways of measuring differ, so only a measurement by their method, at 60 degrees, can tell`,
    "length-too-vague": ({ lengthIn }, teller) =>
      `the club would be about ${teller.inches(Number(lengthIn))} long, and the lengths it is made of are too vague to say whether it is within the limits of the Rules`,
    "length-unknown": (_data, teller) =>
      `nobody can say how long a club ${teller.part("shaft")} makes while a length is missing or vague`,
    "club-type-unknown": ({ lengthIn, maxIn }, teller) =>
      `${teller.inches(Number(lengthIn))} is over the ${teller.inches(Number(maxIn))} of the Rules unless the club is a putter`,
  },
  hint: {
    "target-too-long": () => "a shorter club in the goal",
    "too-short": () => "a longer shaft",
  },
  ask: {
    targetIn:
      "How long is the club to be, measured by the Rules' method with its sole against a plane at 60 degrees? Ask for a length within the limits to be safe.",
    clubType: "What kind of club is the head?",
    aloneLengthIn: "How long is the shaft from its tip to its butt?",
    bbgmIn:
      "How far above the ground does the shaft's tip stop, along the shaft? In a bored head stand a rod in the bore; where an adapter goes, measure from its seat to the ground.",
    capThicknessIn: "How far does the grip's cap stand beyond the end of the shaft?",
  },
});
