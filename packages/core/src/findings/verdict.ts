/** The four verdicts, the best first. */
export const verdicts = ["fits", "fits-with-work", "unsettled", "does-not-fit"] as const;
export type Verdict = (typeof verdicts)[number];

/** The worse of two verdicts: a chain is no better than its weakest joint. */
export function worseVerdict(a: Verdict, b: Verdict): Verdict {
  return verdicts.indexOf(a) >= verdicts.indexOf(b) ? a : b;
}
