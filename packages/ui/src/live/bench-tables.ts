/** Tables of the history that clubs and what goes with what rest on. */
export const benchTables = ["parts", "joints", "claims", "goal", "example"] as const;
