/** The four verdicts, the best first. */
export const verdicts = ["fits", "fits-with-work", "unsettled", "does-not-fit"] as const;
/** What becomes of parts that are put together; `unsettled` is neither yes nor no, since a fact is missing. */
export type Verdict = (typeof verdicts)[number];
