import { doesNotFit, fits, fitsWithWork, type Outcome, unsettled } from "../findings/outcome.ts";
import type { Reading } from "../parts/reading.ts";
import { defineRule } from "./rule.ts";

type Code =
  | "sand-to-enter"
  | "graphite-must-not-be-sanded"
  | "material-decides"
  | "not-measured-closely"
  | "ream-to-enter"
  | "wall-unknown"
  | "wall-too-thin"
  | "tip-too-wide"
  | "adapter-is-not-reamed"
  | "thick-bond-line"
  | "shim"
  | "shim-advised-against"
  | "no-known-shim"
  | "bore-too-wide";

interface Facts {
  readonly boreDiameterIn: Reading;
  readonly tipDiameterIn: Reading;
  readonly material?: "graphite" | "steel" | "multi";
  readonly outsideDiameterIn?: Reading;
  readonly holderKind?: "head" | "adapter";
}

/** Bounds on the diametral clearance, bore less tip, and on the wall left by reaming. All from memory. */
const sandingMaxIn = 0.003;
const normalMaxIn = 0.006;
const beadsMaxIn = 0.01;
const looseMaxIn = 0.02;
const wallMinIn = 0.05;

/** Sizes are read to a ten-thousandth, so a difference of sizes is rounded to one before it meets a bound. */
const readToIn = 0.0001;

/** How far a part measures from its nominal size: bores run over it (0.339 for 0.335, 0.354 for 0.350 were measured). */
const tipOffMaxIn = 0.002;
const boreUnderMaxIn = 0.002;
const boreOverMaxIn = 0.0045;

/** Brass sleeves that are sold, tip to bore; `isDoubtful` where builders advise against it. */
const shims = [
  { tipIn: 0.335, boreIn: 0.35, isDoubtful: false },
  { tipIn: 0.335, boreIn: 0.37, isDoubtful: true },
  { tipIn: 0.35, boreIn: 0.37, isDoubtful: false },
  { tipIn: 0.355, boreIn: 0.37, isDoubtful: true },
] as const;

const reamFromIn = 0.355;
const reamToIn = 0.37;

/** A shaft tip has to enter the bore with room for epoxy and no more. Diameters decide this; form and depth are other rules. */
export const tipEntersBore = defineRule<Code>({
  id: "tip-enters-bore",
  intent:
    "The shaft tip has to enter the bore with room for a sound bond line, because a forced tip splits and a loose one comes out.",
  strength: "must",
  grain: "interface",
  needs: { boreDiameterIn: "holder.bore.diameterIn", tipDiameterIn: "shaft.tip.diameterIn" },
  uses: {
    material: "shaft.material",
    outsideDiameterIn: "holder.bore.outsideDiameterIn",
    holderKind: "holder.kind",
  },
  source: {
    title:
      "clearance bounds and wall limit from memory; bores over nominal: greenlanterngolf.com; sanding plated steel: myostrichgolf.com, tip preparation",
    at: "2006-10-13",
  },
  check: (facts) => judge(facts as Facts),
  say: {
    "sand-to-enter": (d, t) =>
      `the tip of ${t.part("shaft")} is ${t.inches(Number(d.overIn))} wider than the bore of ${t.part("holder")}, and a steel tip may be sanded down by that`,
    "graphite-must-not-be-sanded": (d, t) =>
      `the tip of ${t.part("shaft")} is ${t.inches(Number(d.overIn))} wider than the bore of ${t.part("holder")}, and a graphite tip must not be sanded smaller, because that cuts the fibres that carry it`,
    "material-decides": (d, t) =>
      `the tip of ${t.part("shaft")} is ${t.inches(Number(d.overIn))} wider than the bore of ${t.part("holder")}: steel could be sanded, graphite could not`,
    "not-measured-closely": (d, t) =>
      `by what was stated, the graphite tip of ${t.part("shaft")} is ${t.inches(Number(d.overIn))} wider than the bore of ${t.part("holder")}, which is less than stated sizes can be trusted for`,
    "ream-to-enter": (d, t) =>
      `the bore of ${t.part("holder")} can be reamed to ${t.inches(reamToIn)} for the tip of ${t.part("shaft")}, which leaves a wall of ${t.inches(Number(d.wallIn))} and cannot be undone`,
    "wall-unknown": (_, t) =>
      `the bore of ${t.part("holder")} would have to be reamed to ${t.inches(reamToIn)}, and nobody has said how thick the hosel is`,
    "wall-too-thin": (d, t) =>
      `reaming the bore of ${t.part("holder")} to ${t.inches(reamToIn)} would leave a wall of ${t.inches(Number(d.wallIn))}, and ${t.inches(wallMinIn)} is the least`,
    "tip-too-wide": (d, t) =>
      `the tip of ${t.part("shaft")} is ${t.inches(Number(d.overIn))} wider than the bore of ${t.part("holder")}`,
    "adapter-is-not-reamed": (d, t) =>
      `the tip of ${t.part("shaft")} is ${t.inches(Number(d.overIn))} wider than the bore of ${t.part("holder")}, and an adapter is too thin to be reamed`,
    "thick-bond-line": (d, t) =>
      `the bore of ${t.part("holder")} is ${t.inches(Number(d.clearanceIn))} wider than the tip of ${t.part("shaft")}: a thick bond line that glass beads have to centre`,
    shim: (d, t) => shimText(d.clearanceIn, d.wallIn, t.inches, t.part("holder"), t.part("shaft")),
    "shim-advised-against": (d, t) =>
      `${shimText(d.clearanceIn, d.wallIn, t.inches, t.part("holder"), t.part("shaft"))}, though experienced builders advise against this one`,
    "no-known-shim": (d, t) =>
      `the bore of ${t.part("holder")} is ${t.inches(Number(d.clearanceIn))} wider than the tip of ${t.part("shaft")}, too much for epoxy alone, and we know of no sleeve sold between the two sizes`,
    "bore-too-wide": (d, t) =>
      `the bore of ${t.part("holder")} is ${t.inches(Number(d.clearanceIn))} wider than the tip of ${t.part("shaft")}, and no sleeve sold fills that`,
  },
  hint: {
    "graphite-must-not-be-sanded": (_, t) =>
      `a shaft with a smaller tip; clean old glue off the tip of ${t.part("shaft")} and measure again first`,
    "tip-too-wide": () => "a shaft with a smaller tip, or something to hold it with a wider bore",
    "adapter-is-not-reamed": () => "the same adapter with a wider bore, or a shaft with a smaller tip",
    "wall-too-thin": () => `a shaft with a ${reamFromIn} in taper tip`,
    "bore-too-wide": () => "a shaft with a wider tip, or something to hold it with a smaller bore",
  },
  ask: {
    boreDiameterIn:
      "What is the inside diameter of the bore? Measure its mouth, free of glue, with callipers or a plug gauge.",
    tipDiameterIn:
      "What is the diameter of the shaft at its tip? Measure it with callipers, free of glue and paint.",
    material: "Is the tip of the shaft steel or graphite? A magnet tells.",
    outsideDiameterIn: "What is the outside diameter of the hosel at its top, read with callipers?",
    shim: "Can you get a sleeve that fills the gap between this tip and this bore, and will it slide on without force?",
  },
});

function shimText(
  clearanceIn: unknown,
  wallIn: unknown,
  inches: (valueIn: number) => string,
  holder: string,
  shaft: string,
): string {
  return `the bore of ${holder} is ${inches(Number(clearanceIn))} wider than the tip of ${shaft}, which a sleeve with a wall of ${inches(Number(wallIn))} fills`;
}

function judge(facts: Facts): Outcome<Code> {
  const clearanceIn = toRead(facts.boreDiameterIn.value - facts.tipDiameterIn.value);
  if (clearanceIn < 0) return judgeTight(facts, toRead(-clearanceIn));
  if (clearanceIn <= normalMaxIn) return fits();
  if (clearanceIn <= beadsMaxIn)
    return fitsWithWork("thick-bond-line", [{ step: "glass-beads" }], { clearanceIn });
  return judgeLoose(facts, clearanceIn);
}

function judgeTight(facts: Facts, overIn: number): Outcome<Code> {
  const sizes = ["boreDiameterIn", "tipDiameterIn"];
  if (overIn > sandingMaxIn) {
    if (!hasReamedSizes(facts)) return doesNotFit("tip-too-wide", sizes, { overIn });
    if (facts.holderKind === "adapter")
      return doesNotFit("adapter-is-not-reamed", [...sizes, "holderKind"], { overIn });
    return judgeReaming(facts);
  }
  if (facts.material === "steel")
    return fitsWithWork("sand-to-enter", [{ step: "sand-steel-tip", data: { overIn } }], { overIn });
  if (facts.material !== "graphite") return unsettled("material-decides", "material", { overIn });
  if (facts.tipDiameterIn.source !== "measured")
    return unsettled("not-measured-closely", "tipDiameterIn", { overIn });
  if (facts.boreDiameterIn.source !== "measured")
    return unsettled("not-measured-closely", "boreDiameterIn", { overIn });
  return doesNotFit("graphite-must-not-be-sanded", [...sizes, "material"], { overIn });
}

function hasReamedSizes({ boreDiameterIn, tipDiameterIn }: Facts): boolean {
  return isBoreOf(boreDiameterIn.value, reamFromIn) && isTipOf(tipDiameterIn.value, reamToIn);
}

function judgeReaming({ outsideDiameterIn }: Facts): Outcome<Code> {
  if (outsideDiameterIn === undefined) return unsettled("wall-unknown", "outsideDiameterIn");
  const wallIn = toRead((outsideDiameterIn.value - reamToIn) / 2);
  if (wallIn < wallMinIn) {
    return doesNotFit("wall-too-thin", ["boreDiameterIn", "tipDiameterIn", "outsideDiameterIn"], { wallIn });
  }
  return fitsWithWork("ream-to-enter", [{ step: "ream-bore", data: { toIn: reamToIn, wallIn } }], { wallIn });
}

function judgeLoose({ boreDiameterIn, tipDiameterIn }: Facts, clearanceIn: number): Outcome<Code> {
  const shim = shims.find(
    ({ tipIn, boreIn }) => isTipOf(tipDiameterIn.value, tipIn) && isBoreOf(boreDiameterIn.value, boreIn),
  );
  const wallIn = toRead(clearanceIn / 2);
  if (shim) {
    const code = shim.isDoubtful ? "shim-advised-against" : "shim";
    return fitsWithWork(code, [{ step: "shim", data: { wallIn } }], { clearanceIn, wallIn });
  }
  if (clearanceIn <= looseMaxIn) return unsettled("no-known-shim", "shim", { clearanceIn });
  return doesNotFit("bore-too-wide", ["boreDiameterIn", "tipDiameterIn"], { clearanceIn });
}

function isTipOf(valueIn: number, nominalIn: number): boolean {
  return Math.abs(toRead(valueIn - nominalIn)) <= tipOffMaxIn;
}

function isBoreOf(valueIn: number, nominalIn: number): boolean {
  const overIn = toRead(valueIn - nominalIn);
  return overIn >= -boreUnderMaxIn && overIn <= boreOverMaxIn;
}

function toRead(valueIn: number): number {
  return Math.round(valueIn / readToIn) / Math.round(1 / readToIn);
}
