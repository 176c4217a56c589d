import { doesNotFit, fits, type Outcome, unsettled } from "../findings/outcome.ts";
import { smallestRefusal } from "../findings/smallest-refusal.ts";
import { formBySize, isTaperSize } from "../measure/form-by-size.ts";
import type { Form } from "../parts/part.ts";
import type { Reading } from "../parts/reading.ts";
import { defineRule } from "./rule.ts";

type Code =
  | "tip-form-unknown"
  | "bore-form-unknown"
  | "tip-mislabelled"
  | "bore-mislabelled"
  | "form-taken-from-size"
  | "taper-tip-in-sleeve"
  | "parallel-tip-after-reaming"
  | "tip-size-decides"
  | "bore-size-decides"
  | "taper-tip-in-parallel-bore"
  | "parallel-tip-in-taper-bore";

interface Facts {
  readonly tipForm?: Form;
  readonly boreForm?: Form;
  readonly tipDiameterIn?: Reading;
  readonly boreDiameterIn?: Reading;
}

/** The one size of taper iron tip, and the size that its taper reaches about 2 in up, which is the parallel iron tip's. */
const taperIn = 0.355;
const parallelIn = 0.37;

/** A taper tip touches a parallel bore in a ring only, and a parallel tip a taper bore at its bottom: the forms have to match. */
export const tipFormSuitsBore = defineRule<Code>({
  id: "tip-form-suits-bore",
  intent:
    "A taper tip goes into a taper bore and a parallel tip into a parallel one, because otherwise the two touch only in a ring.",
  strength: "must",
  grain: "interface",
  needs: {},
  uses: {
    tipForm: "shaft.tip.form",
    boreForm: "holder.bore.form",
    tipDiameterIn: "shaft.tip.diameterIn",
    boreDiameterIn: "holder.bore.diameterIn",
  },
  source: {
    title:
      "marathonsportsagency.blog: taper iron tips are 0.355 in and reach 0.370 in about 2 in up, parallel iron tips are 0.370 in",
    at: "2024-12-09",
  },
  check: (facts) => smallestRefusal(judge, pick(facts)),
  say: {
    "tip-form-unknown": (_, t) =>
      `nobody has said whether the tip of ${t.part("shaft")} is taper or parallel, and its size does not tell`,
    "bore-form-unknown": (_, t) =>
      `nobody has said whether the bore of ${t.part("holder")} is taper or parallel, and its size does not tell`,
    "tip-mislabelled": (d, t) =>
      `${t.part("shaft")} is described as ${t.inches(Number(d.diameterIn))} ${d.form}, which is the usual mix-up: 0.355 in is the taper size and 0.370 in the parallel one`,
    "bore-mislabelled": (d, t) =>
      `the bore of ${t.part("holder")} is described as ${t.inches(Number(d.diameterIn))} ${d.form}, which is the usual mix-up: 0.355 in is the taper size and 0.370 in the parallel one`,
    "form-taken-from-size": (d, t) =>
      `by their sizes the tip of ${t.part("shaft")} and the bore of ${t.part("holder")} are both ${d.form}; nobody has said so of both`,
    "taper-tip-in-sleeve": (_, t) =>
      `the taper tip of ${t.part("shaft")} goes into the parallel bore of ${t.part("holder")} only in a sleeve made for it, which is done, though one trade writer advises against it`,
    "parallel-tip-after-reaming": (_, t) =>
      `the parallel tip of ${t.part("shaft")} goes into the taper bore of ${t.part("holder")} only once that has been reamed parallel`,
    "tip-size-decides": (_, t) =>
      `the forms of the tip of ${t.part("shaft")} and the bore of ${t.part("holder")} differ, and the size of the tip decides whether anything can be done`,
    "bore-size-decides": (_, t) =>
      `the forms of the tip of ${t.part("shaft")} and the bore of ${t.part("holder")} differ, and the size of the bore decides whether anything can be done`,
    "taper-tip-in-parallel-bore": (_, t) =>
      `the tip of ${t.part("shaft")} is taper and the bore of ${t.part("holder")} is parallel, so they would touch only in a ring, and no sleeve is sold for these sizes`,
    "parallel-tip-in-taper-bore": (_, t) =>
      `the tip of ${t.part("shaft")} is parallel and the bore of ${t.part("holder")} is taper, so they would touch only in a ring, and reaming would not bring the bore to this tip`,
  },
  hint: {
    "taper-tip-in-parallel-bore": () => "a shaft with a parallel tip of the bore's size",
    "parallel-tip-in-taper-bore": () => "a shaft with a 0.355 in taper tip made for this club",
  },
  ask: {
    tipForm:
      "Is the shaft's tip taper or parallel? Read callipers at the end and again 2 in up: a taper iron tip reads 0.355 in and then 0.370 in, a parallel one the same twice.",
    boreForm:
      "Is the bore taper or parallel? A plug of 0.370 in goes to the bottom of a parallel iron bore and sticks at the mouth of a taper one.",
    tipDiameterIn: "What is the diameter of the shaft at its tip, read with callipers?",
    boreDiameterIn: "What is the inside diameter of the bore, read with callipers or a plug gauge?",
  },
});

function pick({ tipForm, boreForm, tipDiameterIn, boreDiameterIn }: Facts): Facts {
  // Forms first, so that a form which the size shows anyway is left out of a proof.
  return { tipForm, boreForm, tipDiameterIn, boreDiameterIn };
}

function judge({ tipForm, boreForm, tipDiameterIn, boreDiameterIn }: Facts): Outcome<Code> {
  if (tipDiameterIn && isMislabelled(tipDiameterIn, tipForm)) {
    return unsettled("tip-mislabelled", "tipForm", {
      diameterIn: tipDiameterIn.value,
      form: String(tipForm),
    });
  }
  if (boreDiameterIn && isMislabelled(boreDiameterIn, boreForm)) {
    return unsettled("bore-mislabelled", "boreForm", {
      diameterIn: boreDiameterIn.value,
      form: String(boreForm),
    });
  }
  const tip = tipForm ?? formBySize(tipDiameterIn);
  const bore = boreForm ?? formBySize(boreDiameterIn);
  if (tip === undefined) return unsettled("tip-form-unknown", "tipForm");
  if (bore === undefined) return unsettled("bore-form-unknown", "boreForm");
  if (tip !== bore) return judgeUnlike(tip, tipDiameterIn, boreDiameterIn);
  return tipForm && boreForm ? fits() : fits("form-taken-from-size", { form: tip });
}

/** Only the iron sizes bridge the two forms: a sleeve for a 0.355 taper in 0.370, a reamer from 0.355 taper to 0.370. */
function judgeUnlike(tip: Form, tipDiameterIn?: Reading, boreDiameterIn?: Reading): Outcome<Code> {
  const [tipIn, boreIn] = tip === "taper" ? [taperIn, parallelIn] : [parallelIn, taperIn];
  const refused = tip === "taper" ? "taper-tip-in-parallel-bore" : "parallel-tip-in-taper-bore";
  if (tipDiameterIn && !isAbout(tipDiameterIn, tipIn)) return doesNotFit(refused, []);
  if (boreDiameterIn && !isAbout(boreDiameterIn, boreIn)) return doesNotFit(refused, []);
  if (tipDiameterIn === undefined) return unsettled("tip-size-decides", "tipDiameterIn");
  if (boreDiameterIn === undefined) return unsettled("bore-size-decides", "boreDiameterIn");
  return fits(tip === "taper" ? "taper-tip-in-sleeve" : "parallel-tip-after-reaming");
}

function isMislabelled(reading: Reading, form?: Form): boolean {
  return (form === "parallel" && isTaperSize(reading)) || (form === "taper" && isAbout(reading, parallelIn));
}

function isAbout({ value }: Reading, nominalIn: number): boolean {
  return value > nominalIn - 0.0025 && value < nominalIn + 0.005;
}
