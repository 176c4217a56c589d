import { doesNotFit, fits, fitsWithWork, type Outcome, unsettled } from "../findings/outcome.ts";
import { smallestRefusal } from "../findings/smallest-refusal.ts";
import {
  buttExtensionMaxIn,
  missingLengthFact,
  type UncutLengthFacts,
  uncutLengthIn,
  uncutLengthInterval,
  vaguestLengthFact,
} from "../measure/uncut-length.ts";
import { defineRule } from "./rule.ts";

/** Closer than this to the wanted length asks for no work. Common practice, no source. */
export const lengthToleranceIn = 1 / 16;

type Code = "too-short" | "length-unknown" | "maybe-too-short" | "cut-down" | "lengthened";

interface Facts extends UncutLengthFacts {
  readonly targetIn?: number;
  readonly basis?: string;
}

/** A club can be cut to a shorter length, and lengthened only so far. */
export const lengthReachable = defineRule<Code>({
  id: "length-reachable",
  intent:
    "The wanted length has to be reachable, because a shaft can be cut as you like and lengthened only a little.",
  strength: "must",
  grain: "part",
  needs: {},
  uses: {
    targetIn: "goal.playingLengthIn",
    aloneLengthIn: "shaft.aloneLengthIn",
    bbgmIn: "holder.bbgmIn",
    capThicknessIn: "grip.capThicknessIn",
    basis: "shaft.length.basis",
  },
  typical: ["bbgmIn", "capThicknessIn"],
  source: {
    title:
      "tutelman.com/golf/design/flex4.php (cut length); the longest extension is our own default, no source",
  },
  check: ({ targetIn, aloneLengthIn, bbgmIn, capThicknessIn, basis }) =>
    // Left out in this order where a refusal holds without them.
    smallestRefusal<Facts, Code>(judge, { basis, bbgmIn, capThicknessIn, aloneLengthIn, targetIn }),
  say: {
    "too-short": ({ targetIn, extensionMaxIn }, teller) =>
      `${teller.part("shaft")} is too short for a club of ${teller.inches(Number(targetIn))}, even lengthened by ${teller.inches(Number(extensionMaxIn))}`,
    "length-unknown": ({ targetIn }, teller) =>
      `nobody can say whether ${teller.part("shaft")} makes a club of ${teller.inches(Number(targetIn))} while a length is missing`,
    "maybe-too-short": ({ targetIn, uncutIn }, teller) =>
      `${teller.part("shaft")} makes a club of about ${teller.inches(Number(uncutIn))}, which may or may not be enough for ${teller.inches(Number(targetIn))}`,
    "cut-down": ({ targetIn, trimIn }, teller) =>
      `${teller.part("shaft")} has to lose about ${teller.inches(Number(trimIn))} at the butt for a club of ${teller.inches(Number(targetIn))}`,
    lengthened: ({ targetIn, extensionIn }, teller) =>
      `${teller.part("shaft")} has to be lengthened by about ${teller.inches(Number(extensionIn))} at the butt for a club of ${teller.inches(Number(targetIn))}`,
  },
  hint: { "too-short": () => "a longer shaft, or a shorter club in the goal" },
  ask: {
    aloneLengthIn: "How long is the shaft from its tip to its butt?",
    bbgmIn:
      "How far above the ground does the shaft's tip stop, along the shaft? In a bored head stand a rod in the bore; where an adapter goes, measure from its seat to the ground.",
    capThicknessIn: "How far does the grip's cap stand beyond the end of the shaft?",
    basis:
      "Is the length that of the bare shaft, of the shaft with its adapter, or of the whole club it came from?",
  },
});

function judge({ targetIn, basis, ...facts }: Facts): Outcome<Code> {
  if (targetIn === undefined) return fits();
  const furthestIn = buttExtensionMaxIn + lengthToleranceIn;
  const uncut = uncutLengthInterval(facts);
  if (uncut.high + furthestIn < targetIn)
    return doesNotFit("too-short", [], { targetIn, extensionMaxIn: buttExtensionMaxIn });
  const uncutIn = uncutLengthIn(facts);
  if (uncutIn === undefined)
    return unsettled("length-unknown", missingLengthFact(facts) ?? "aloneLengthIn", { targetIn });
  if (uncut.low + furthestIn < targetIn) {
    const isBasisStated = basis !== undefined && basis !== "unstated";
    return unsettled("maybe-too-short", isBasisStated ? vaguestLengthFact(facts) : "basis", {
      targetIn,
      uncutIn,
    });
  }
  return workFor(targetIn, uncutIn - targetIn);
}

function workFor(targetIn: number, spareIn: number): Outcome<Code> {
  if (Math.abs(spareIn) <= lengthToleranceIn) return fits();
  if (spareIn > 0)
    return fitsWithWork("cut-down", [{ step: "butt-trim", data: { trimIn: spareIn } }], {
      targetIn,
      trimIn: spareIn,
    });
  const extensionIn = -spareIn;
  return fitsWithWork("lengthened", [{ step: "butt-extension", data: { extensionIn } }], {
    targetIn,
    extensionIn,
  });
}
