import type { Evidence } from "./evidence.ts";
import type { ModelFinder } from "./model-finder.ts";

/** Noted prices with the type of club that their model is of, where only the model was noted. */
export function typedEvidence(evidence: readonly Evidence[], finder: ModelFinder): Evidence[] {
  return evidence.map((row) => {
    if (row.clubType !== undefined || row.modelId === undefined) return row;
    const clubType = finder.byId(row.modelId)?.clubType;
    return clubType === undefined || clubType === null ? row : { ...row, clubType };
  });
}
