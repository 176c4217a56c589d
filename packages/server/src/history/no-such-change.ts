import type { Problem } from "../errors.ts";

/** There is no change of this number, or none any more. */
export function noSuchChange(number: number): Problem {
  return {
    code: "not-found",
    message: `There is no change ${number} in the history; the oldest are forgotten in time`,
  };
}
