import type { Adapter } from "../parts/part.ts";
import type { ClubFacts, ClubInput } from "./club-facts.ts";
import type { ClubNumbers } from "./club-numbers.ts";
import type { Estimate, SettingEstimate } from "./estimate.ts";
import { jointEstimates } from "./joint-estimates.ts";
import { adapterAngles } from "./physics/adapter-angles.ts";
import type { Quantity } from "./quantity.ts";

/** The head's own angles, as if the shaft stood in it without tilt; what an adapter's tilt makes of them is in its settings. */
export const headAngleQuantities: readonly Quantity[] = [
  { name: "loftDeg", needs: ["loftDeg"], of: ({ numbers }) => numbers.loftDeg },
  { name: "lieDeg", needs: ["lieDeg"], of: ({ numbers }) => numbers.lieDeg },
  { name: "faceAngleDeg", needs: ["faceAngleDeg"], of: ({ numbers }) => numbers.faceAngleDeg },
];

/** The figures that the angles at a setting rest on. */
export const angleNeeds = ["loftDeg", "lieDeg", "faceAngleDeg", "tiltDeg"] as const;

const resultsASetting = 5;

/** Angles at every setting of the adapter; none where an angle or the tilt is unknown or it has no settings. */
export function settingEstimates(
  adapter: Adapter | undefined,
  { numbers, inputs }: ClubFacts,
): readonly SettingEstimate[] {
  const settings = adapter?.settings ?? [];
  if (settings.length === 0 || angleNeeds.some((key) => Number.isNaN(numbers[key]))) return [];
  const angleInputs = inputs.filter(isAngleInput);
  const model = (at: ClubNumbers, out: Float64Array): void => {
    for (const [i, { rotationDeg }] of settings.entries())
      writeAngles(at, rotationDeg, out, i * resultsASetting);
  };
  const results = jointEstimates(model, numbers, angleInputs, settings.length * resultsASetting);
  return settings.flatMap(({ label, rotationDeg }, i) => {
    const angles = results.slice(i * resultsASetting, (i + 1) * resultsASetting);
    return isWhole(angles) ? [settingFrom(label, rotationDeg, angles)] : [];
  });
}

function isAngleInput({ key }: ClubInput): boolean {
  return (angleNeeds as readonly string[]).includes(key);
}

function isWhole(angles: readonly (Estimate | null)[]): angles is readonly Estimate[] {
  return angles.every((angle) => angle !== null);
}

function writeAngles(at: ClubNumbers, rotationDeg: number, out: Float64Array, from: number): void {
  const { loftDeg, lieDeg, faceAngleDeg, tiltDeg } = at;
  const { soled, squared } = adapterAngles({ loftDeg, lieDeg, faceAngleDeg, tiltDeg, rotationDeg });
  out[from] = soled.loftDeg;
  out[from + 1] = soled.lieDeg;
  out[from + 2] = soled.faceAngleDeg;
  out[from + 3] = squared.loftDeg;
  out[from + 4] = squared.lieDeg;
}

function settingFrom(label: string, rotationDeg: number, angles: readonly Estimate[]): SettingEstimate {
  const [soledLoft, soledLie, soledFace, squaredLoft, squaredLie] = angles as [
    Estimate,
    Estimate,
    Estimate,
    Estimate,
    Estimate,
  ];
  return {
    label,
    rotationDeg,
    soled: { loftDeg: soledLoft, lieDeg: soledLie, faceAngleDeg: soledFace },
    squared: { loftDeg: squaredLoft, lieDeg: squaredLie },
  };
}
