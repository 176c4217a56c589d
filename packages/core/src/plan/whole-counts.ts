import type { Counts } from "./draft.ts";

/** Counts of a solver, which are whole but for its error, as whole numbers. */
export function rounded({ uses, bundles }: Counts): Counts {
  return { uses: uses.map(Math.round), bundles: bundles.map(Math.round) };
}

export function isWhole({ uses, bundles }: Counts): boolean {
  return [...uses, ...bundles].every((times) => Math.abs(times - Math.round(times)) < 1e-6);
}
