import { doesNotFit, fits, type Outcome, unsettled } from "../findings/outcome.ts";
import { smallestRefusal } from "../findings/smallest-refusal.ts";
import { formBySize } from "../measure/form-by-size.ts";
import { differenceInterval } from "../measure/reading-interval.ts";
import type { Form } from "../parts/part.ts";
import type { Reading } from "../parts/reading.ts";
import { defineRule } from "./rule.ts";

type Code =
  | "tip-form-unknown"
  | "taper-tip-trimmed"
  | "section-unknown"
  | "depth-unknown"
  | "section-near-depth"
  | "section-too-short";

interface Facts {
  readonly tipForm?: Form;
  readonly tipDiameterIn?: Reading;
  readonly trimmedIn?: Reading;
  readonly parallelSectionIn?: Reading;
  readonly depthIn?: Reading;
}

/** Past its parallel section a tip widens, so it stops in the bore; a taper tip has none, and must never have been tip-trimmed. */
export const parallelSectionLongEnough = defineRule<Code>({
  id: "parallel-section-long-enough",
  intent:
    "What is left of a parallel tip after trimming and pulling has to reach the bottom of the bore, because above it the shaft is too wide to enter; a taper tip that was cut is too wide at once.",
  strength: "must",
  grain: "interface",
  needs: {},
  uses: {
    tipForm: "shaft.tip.form",
    tipDiameterIn: "shaft.tip.diameterIn",
    trimmedIn: "shaft.tip.trimmedIn",
    parallelSectionIn: "shaft.tip.parallelSectionIn",
    depthIn: "holder.bore.depthIn",
  },
  typical: ["parallelSectionIn", "depthIn"],
  source: {
    title:
      "taper shafts are never tip-trimmed: golfclubshaftreview.com, parallel and taper tip shafts; the section against the depth is derived, no published source",
  },
  check: (facts) => smallestRefusal(judge, pick(facts)),
  say: {
    "tip-form-unknown": (_, t) =>
      `nobody has said whether the tip of ${t.part("shaft")} is taper or parallel, nor its size`,
    "taper-tip-trimmed": (d, t) =>
      `${t.part("shaft")} has a taper tip that ${t.inches(Number(d.trimmedIn))} has been cut from, so what is left starts too wide and too stiff for its bore`,
    "section-unknown": (_, t) =>
      `nobody has said how much of the tip of ${t.part("shaft")} is still parallel`,
    "depth-unknown": (_, t) => `nobody has said how deep the bore of ${t.part("holder")} is`,
    "section-near-depth": (d, t) =>
      `about ${t.inches(Number(d.sectionIn))} of the tip of ${t.part("shaft")} is still parallel, which may or may not be enough for a bore of ${t.part("holder")} about ${t.inches(Number(d.depthIn))} deep`,
    "section-too-short": (d, t) =>
      `${t.inches(Number(d.sectionIn))} of the tip of ${t.part("shaft")} is still parallel, and the bore of ${t.part("holder")} is ${t.inches(Number(d.depthIn))} deep`,
  },
  hint: {
    "section-too-short": () => "a shaft with more of its parallel tip left, or a shallower bore",
    "taper-tip-trimmed": () => "a taper shaft whose tip was never cut",
  },
  ask: {
    tipForm:
      "Is the shaft's tip taper or parallel? Read its diameter at the end and again 2 in up: a parallel tip reads the same.",
    parallelSectionIn:
      "How far up from the tip does the diameter stay the same? Slide callipers up, set to the tip, until they stop.",
    depthIn:
      "How deep does the bore take the shaft? Put a clean rod or a pencil in, mark it at the mouth and measure.",
  },
});

function pick({ tipForm, tipDiameterIn, trimmedIn, parallelSectionIn, depthIn }: Facts): Facts {
  return { tipForm, tipDiameterIn, trimmedIn, parallelSectionIn, depthIn };
}

function judge(facts: Facts): Outcome<Code> {
  const form = facts.tipForm ?? formBySize(facts.tipDiameterIn);
  if (form === undefined) return unsettled("tip-form-unknown", "tipForm");
  return form === "taper" ? judgeTaper(facts) : judgeParallel(facts);
}

function judgeTaper({ trimmedIn }: Facts): Outcome<Code> {
  if (trimmedIn === undefined || trimmedIn.value === 0) return fits();
  return doesNotFit("taper-tip-trimmed", [], { trimmedIn: trimmedIn.value });
}

function judgeParallel({ trimmedIn, parallelSectionIn, depthIn }: Facts): Outcome<Code> {
  if (parallelSectionIn === undefined) return unsettled("section-unknown", "parallelSectionIn");
  if (depthIn === undefined) return unsettled("depth-unknown", "depthIn");
  // A typical section is that of a new shaft, while a stated one is as the shaft is now.
  const lost = parallelSectionIn.source === "typical" ? trimmedIn : undefined;
  const section: Reading = {
    ...parallelSectionIn,
    value: parallelSectionIn.value - (lost?.value ?? 0),
    plusMinus: Math.hypot(parallelSectionIn.plusMinus, lost?.plusMinus ?? 0),
  };
  if (section.value >= depthIn.value) return fits();
  const data = { sectionIn: section.value, depthIn: depthIn.value };
  if (differenceInterval(section, depthIn).high < 0) return doesNotFit("section-too-short", [], data);
  const vaguest = depthIn.plusMinus > section.plusMinus ? "depthIn" : "parallelSectionIn";
  return unsettled("section-near-depth", vaguest, data);
}
