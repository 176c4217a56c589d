import { doesNotFit, fits, fitsWithWork, type Outcome } from "../findings/outcome.ts";
import type { Reading } from "../parts/reading.ts";
import { defineRule } from "./rule.ts";

type Code = "plays-larger" | "build-up" | "core-too-small" | "core-too-large";

interface Facts {
  readonly buttDiameterIn: Reading;
  readonly coreDiameterIn: Reading;
}

/** A difference below this is not felt, and not read by ordinary callipers on rubber: our own default, no source. */
export const sameSizeIn = 0.006;

/** How far a core stretches, and how far tape fills it: our own default, no source. */
export const stretchMaxIn = 0.04;
export const buildUpMaxIn = 0.06;

/** Sources give 0.010 to 0.0156 in on diameter for each wrap; this is the middle, good to 0.003 in. */
const wrapIn = 0.012;

/** A men's standard grip measures this 2 in below its cap when its core equals the butt. */
const standardIn = 0.9;

const ladder = [
  { outsideIn: 0.9, size: "standard" },
  { outsideIn: 0.915, size: "1/64 over" },
  { outsideIn: 0.93, size: "1/32 over" },
  { outsideIn: 0.945, size: "3/64 over" },
  { outsideIn: 0.96, size: "midsize" },
  { outsideIn: 1.025, size: "jumbo" },
] as const;

/** A grip's core stretches over a wider butt and plays larger; on a thinner butt it needs tape under it. */
export const gripCoreSuitsButt = defineRule<Code>({
  id: "grip-core-suits-butt",
  intent:
    "The grip's core has to be near the butt's size, because a stretched grip plays larger and a loose one turns in the hands.",
  strength: "must",
  grain: "interface",
  needs: { buttDiameterIn: "shaft.buttDiameterIn", coreDiameterIn: "grip.coreDiameterIn" },
  typical: ["buttDiameterIn", "coreDiameterIn"],
  source: {
    title:
      "esigolf.com grip sizing and waggleweight.com part twenty-four (a core 0.020 in under its butt plays about 1/64 larger); scratchgolfshop.com regripping (size ladder); the limits are our own defaults, no source",
  },
  check: (facts) => judge(facts as Facts),
  say: {
    "plays-larger": (d, t) =>
      `${t.part("grip")} stretches ${t.inches(Number(d.overIn))} over the butt of ${t.part("shaft")}, so a grip made to play standard would measure ${t.inches(Number(d.outsideIn))}, nearest to ${d.size}`,
    "build-up": (d, t) =>
      `the core of ${t.part("grip")} is ${t.inches(Number(d.underIn))} wider than the butt of ${t.part("shaft")}, which about ${d.wraps} ${d.wraps === 1 ? "wrap" : "wraps"} of build-up tape ${d.wraps === 1 ? "fills" : "fill"}`,
    "core-too-small": (d, t) =>
      `the butt of ${t.part("shaft")} is ${t.inches(Number(d.overIn))} wider than the core of ${t.part("grip")}, and a grip stretches over ${t.inches(stretchMaxIn)} at most`,
    "core-too-large": (d, t) =>
      `the core of ${t.part("grip")} is ${t.inches(Number(d.underIn))} wider than the butt of ${t.part("shaft")}, and tape fills ${t.inches(buildUpMaxIn)} at most`,
  },
  hint: {
    "core-too-small": () => "a grip with a larger core",
    "core-too-large": () => "a grip with a smaller core",
  },
  ask: {
    buttDiameterIn: "What is the outside diameter of the shaft 2 in from its butt, read with callipers?",
    coreDiameterIn:
      "What is the grip's core size? It is moulded inside the mouth, as in M60: 60 stands for 0.600 in.",
  },
});

function judge({ buttDiameterIn, coreDiameterIn }: Facts): Outcome<Code> {
  // Sizes are read to a thousandth, so their difference is rounded to one before it meets a bound.
  const overIn = Math.round((buttDiameterIn.value - coreDiameterIn.value) * 1000) / 1000;
  const because = ["buttDiameterIn", "coreDiameterIn"];
  if (overIn > stretchMaxIn) return doesNotFit("core-too-small", because, { overIn });
  if (overIn >= sameSizeIn) return fits("plays-larger", { overIn, ...sizeAt(standardIn + overIn) });
  if (overIn > -sameSizeIn) return fits();
  if (overIn < -buildUpMaxIn) return doesNotFit("core-too-large", because, { underIn: -overIn });
  const wraps = Math.max(1, Math.round(-overIn / wrapIn));
  return fitsWithWork("build-up", [{ step: "build-up-tape", data: { wraps } }], { underIn: -overIn, wraps });
}

function sizeAt(outsideIn: number): { readonly outsideIn: number; readonly size: string } {
  const [first, ...rest] = ladder;
  const nearest = rest.reduce<(typeof ladder)[number]>(
    (best, rung) =>
      Math.abs(rung.outsideIn - outsideIn) < Math.abs(best.outsideIn - outsideIn) ? rung : best,
    first,
  );
  return { outsideIn: Math.round(outsideIn * 1000) / 1000, size: nearest.size };
}
