import type { Estimate, Estimates } from "../measure/estimate.ts";
import { swingWeightLabel } from "../measure/physics/swing-weight.ts";
import type { MeasuredQuantity, Measurement } from "./measurement.ts";
import type { SaleLine } from "./sale-line.ts";
import { lengthWords, plainNumber } from "./sale-words.ts";

interface Spec {
  readonly quantity: MeasuredQuantity;
  readonly word: string;
  readonly say: (value: number) => string;
  readonly estimate: (estimates: Estimates) => Pick<Estimate, "value" | "low" | "high"> | null;
}

const specs: readonly Spec[] = [
  {
    quantity: "playingLengthIn",
    word: "Playing length",
    say: lengthWords,
    estimate: ({ playingLengthIn }) => playingLengthIn,
  },
  {
    quantity: "swingWeightPoints",
    word: "Swing weight",
    say: swingWeightLabel,
    estimate: ({ swingWeight }) => swingWeight && { ...swingWeight, value: swingWeight.points },
  },
  {
    quantity: "massG",
    word: "Mass",
    say: (value) => `${plainNumber(value, 0)} g`,
    estimate: ({ massG }) => massG,
  },
  {
    quantity: "frequencyCpm",
    word: "Frequency",
    say: (value) => `${plainNumber(value, 0)} cpm`,
    estimate: ({ frequencyCpm }) => frequencyCpm,
  },
];

/** The club's own figures: measured where it was measured, else worked out and said to be so with the interval. */
export function specLines(
  measurement: Measurement | undefined,
  estimates: Estimates | undefined,
): { readonly lines: readonly SaleLine[]; readonly notMeasured: readonly string[] } {
  const lines = specs.flatMap(
    (spec) => measuredLine(spec, measurement) ?? estimateLine(spec, estimates) ?? [],
  );
  const notMeasured = specs.filter(({ quantity }) => measurement?.measured[quantity] === undefined);
  return { lines, notMeasured: notMeasured.map(({ word }) => word.toLowerCase()) };
}

function measuredLine(
  { quantity, word, say }: Spec,
  measurement: Measurement | undefined,
): SaleLine | undefined {
  const read = measurement?.measured[quantity];
  if (!measurement || !read) return undefined;
  return {
    text: `${word}: ${say(read.value)}, measured on ${measurement.on}`,
    from: [{ of: "measurement", measurement: measurement.id, quantity }],
  };
}

function estimateLine(
  { quantity, word, say, estimate }: Spec,
  estimates: Estimates | undefined,
): SaleLine | undefined {
  const found = estimates && estimate(estimates);
  if (!found) return undefined;
  return {
    text: `${word}: about ${say(found.value)}, worked out from the parts and not measured (95 times in 100 from ${say(found.low)} to ${say(found.high)})`,
    from: [{ of: "estimate", quantity }],
  };
}
