import { errorTable, type Problem } from "../errors.ts";

const refusalsShown = 20;

/** A problem in words, each place of it on a line with what was found there and what was expected. */
export function problemText({ code, message, refusals = [] }: Problem): string {
  const lines = refusals
    .slice(0, refusalsShown)
    .map(({ field, got, expected }) => `  ${field}: got ${got}, expected ${expected}`);
  const more = refusals.length - refusalsShown;
  return [message ?? errorTable[code].message, ...lines, ...(more > 0 ? [`  and ${more} more`] : [])].join(
    "\n",
  );
}
