import type { AdjustmentName } from "./adjusted-price.ts";
import type { Loading } from "./mixed-model.ts";

/** The name of a factor of the settings among the effects on a price. */
export const factorEffect = (name: AdjustmentName, month = 0) =>
  name === "season" ? `season ${month}` : name;

export const factorNames = ["asNew", "askedOverSold", "fair", "noCover", "noWrench", "poor"] as const;

const months = 12;
const bits: ReadonlyMap<string, number> = new Map([
  ...factorNames.map((name, at) => [factorEffect(name), 1 << at] as const),
  ...Array.from(
    { length: months },
    (_, month) => [factorEffect("season", month), 1 << (factorNames.length + month)] as const,
  ),
]);

/** Which factors of the settings are in a price, a bit for each. */
export function factorBits(loadings: readonly Loading[]): number {
  return loadings.reduce((sum, { effect }) => sum | (bits.get(effect.name) ?? 0), 0);
}

/** The factors whose bits are set; all months are one. */
export function factorsIn(found: number): AdjustmentName[] {
  const named = factorNames.filter((_, at) => (found & (1 << at)) !== 0);
  return found >> factorNames.length === 0 ? named : [...named, "season"];
}
