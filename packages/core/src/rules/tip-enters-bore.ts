import { doesNotFit, fits, fitsWithWork, type Outcome, unsettled } from "../findings/outcome.ts";
import { differenceInterval } from "../measure/reading-interval.ts";
import { coverageFactor95 } from "../measure/uncertainty.ts";
import type { Reading } from "../parts/reading.ts";
import { defineRule } from "./rule.ts";

type Code =
  | "sand-to-enter"
  | "graphite-must-not-be-sanded"
  | "material-decides"
  | "not-measured-closely"
  | "ream-to-enter"
  | "wall-unknown"
  | "wall-near-limit"
  | "wall-too-thin"
  | "tip-too-wide"
  | "adapter-is-not-reamed"
  | "thick-bond-line"
  | "shim"
  | "shim-advised-against"
  | "rolled-sleeve"
  | "loose-not-measured-closely"
  | "bore-too-wide";

interface Facts {
  readonly boreDiameterIn: Reading;
  readonly tipDiameterIn: Reading;
  readonly material?: "graphite" | "steel" | "multi";
  readonly outsideDiameterIn?: Reading;
  readonly holderKind?: "head" | "adapter";
}

/** Bounds on the diametral clearance, bore less tip, and on the wall left by reaming: our own default, no source. */
export const sandingMaxIn = 0.003;
export const normalMaxIn = 0.006;
export const beadsMaxIn = 0.01;
export const looseMaxIn = 0.02;
export const wallMinIn = 0.05;

/** Sizes are read to a ten-thousandth, so a difference of sizes is rounded to one before it meets a bound. */
const readToIn = 0.0001;

/** How far a part measures from its nominal size: bores run over it (0.339 for 0.335, 0.354 for 0.350 were measured). */
const tipOffMaxIn = 0.002;
const boreUnderMaxIn = 0.002;
const boreOverMaxIn = 0.0045;

/** Brass sleeves that are sold, tip to bore; `isDoubtful` where builders advise against it. A gap between them takes one rolled. */
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
      "clearance bounds and wall limit are our own defaults, no source; a sleeve rolled from shim stock is common practice, no source; bores over nominal: greenlanterngolf.com; sanding plated steel: myostrichgolf.com, tip preparation",
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
      `by the sizes given, the tip of ${t.part("shaft")} is ${t.inches(Number(d.overIn))} wider than the bore of ${t.part("holder")}, and sizes read so loosely cannot say whether it is too wide`,
    "ream-to-enter": (d, t) =>
      `the bore of ${t.part("holder")} can be reamed to ${t.inches(reamToIn)} for the tip of ${t.part("shaft")}, which leaves a wall of ${t.inches(Number(d.wallIn))} and cannot be undone`,
    "wall-unknown": (_, t) =>
      `the bore of ${t.part("holder")} would have to be reamed to ${t.inches(reamToIn)}, and nobody has said how thick the hosel is`,
    "wall-near-limit": (d, t) =>
      `reaming the bore of ${t.part("holder")} to ${t.inches(reamToIn)} would leave a wall of about ${t.inches(Number(d.wallIn))}, too close to ${t.inches(wallMinIn)}, the least, to say`,
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
    "rolled-sleeve": (d, t) =>
      `the bore of ${t.part("holder")} is ${t.inches(Number(d.clearanceIn))} wider than the tip of ${t.part("shaft")}, too much for epoxy alone, and we know of no sleeve sold between the two sizes, so one has to be made with a wall of ${t.inches(Number(d.wallIn))}`,
    "loose-not-measured-closely": (d, t) =>
      `by the sizes given, the bore of ${t.part("holder")} is ${t.inches(Number(d.clearanceIn))} wider than the tip of ${t.part("shaft")}, and sizes read so loosely cannot say whether a sleeve could fill that`,
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
  const leastOverIn = toRead(differenceInterval(facts.tipDiameterIn, facts.boreDiameterIn).low);
  if (overIn > sandingMaxIn) {
    const isAdapter = facts.holderKind === "adapter";
    if (hasReamedSizes(facts) && !isAdapter) return judgeReaming(facts);
    if (leastOverIn > sandingMaxIn)
      return hasReamedSizes(facts)
        ? doesNotFit("adapter-is-not-reamed", [...sizes, "holderKind"], { overIn })
        : doesNotFit("tip-too-wide", sizes, { overIn });
  }
  if (facts.material === "graphite" && leastOverIn > 0)
    return doesNotFit("graphite-must-not-be-sanded", [...sizes, "material"], { overIn });
  if (overIn > sandingMaxIn || facts.material === "graphite")
    return unsettled("not-measured-closely", vaguerSize(facts), { overIn });
  if (facts.material !== "steel") return unsettled("material-decides", "material", { overIn });
  return fitsWithWork("sand-to-enter", [{ step: "sand-steel-tip", data: { overIn } }], { overIn });
}

/** The size worth measuring first; a stated size before one that was measured. */
function vaguerSize({ boreDiameterIn, tipDiameterIn }: Facts): "boreDiameterIn" | "tipDiameterIn" {
  return boreDiameterIn.plusMinus > tipDiameterIn.plusMinus ? "boreDiameterIn" : "tipDiameterIn";
}

function hasReamedSizes({ boreDiameterIn, tipDiameterIn }: Facts): boolean {
  return isBoreOf(boreDiameterIn.value, reamFromIn) && isTipOf(tipDiameterIn.value, reamToIn);
}

function judgeReaming({ outsideDiameterIn }: Facts): Outcome<Code> {
  if (outsideDiameterIn === undefined) return unsettled("wall-unknown", "outsideDiameterIn");
  const wallIn = toRead((outsideDiameterIn.value - reamToIn) / 2);
  const mostWallIn = wallIn + (coverageFactor95 * outsideDiameterIn.plusMinus) / 2;
  if (mostWallIn < wallMinIn) {
    return doesNotFit("wall-too-thin", ["boreDiameterIn", "tipDiameterIn", "outsideDiameterIn"], { wallIn });
  }
  if (wallIn < wallMinIn) return unsettled("wall-near-limit", "outsideDiameterIn", { wallIn });
  return fitsWithWork("ream-to-enter", [{ step: "ream-bore", data: { toIn: reamToIn, wallIn } }], { wallIn });
}

function judgeLoose(facts: Facts, clearanceIn: number): Outcome<Code> {
  const { boreDiameterIn, tipDiameterIn } = facts;
  const shim = shims.find(
    ({ tipIn, boreIn }) => isTipOf(tipDiameterIn.value, tipIn) && isBoreOf(boreDiameterIn.value, boreIn),
  );
  const wallIn = toRead(clearanceIn / 2);
  if (shim) {
    const code = shim.isDoubtful ? "shim-advised-against" : "shim";
    return fitsWithWork(code, [{ step: "shim", data: { wallIn } }], { clearanceIn, wallIn });
  }
  if (clearanceIn <= looseMaxIn)
    return fitsWithWork("rolled-sleeve", [{ step: "rolled-sleeve", data: { wallIn } }], {
      clearanceIn,
      wallIn,
    });
  if (toRead(differenceInterval(boreDiameterIn, tipDiameterIn).low) <= looseMaxIn)
    return unsettled("loose-not-measured-closely", vaguerSize(facts), { clearanceIn });
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
