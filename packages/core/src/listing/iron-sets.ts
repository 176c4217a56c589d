import type { Mention } from "./mention.ts";
import type { Words } from "./words.ts";

const iron = "(?: ?-?(?:iron|i))?";
const upTo = " ?(?:-|to|thru|through|until|bis|til|till|a|au|tot|al) ?";
const plus = "(?: ?(?:\\+|&|and|,|/|plus|und|et) ?)";
const wedge =
  "(?:p(?:itching)?[ -]?(?:w(?:edge)?)|s(?:and)?[ -]?(?:w(?:edge)?)|g(?:ap)?[ -]?(?:w(?:edge)?)|a(?:pproach)?[ -]?(?:w(?:edge)?)|l(?:ob)?[ -]?(?:w(?:edge)?)|u[ -]?w)";
const notBefore = "(?<![\\p{L}\\d.,/£€$°-])";

/**
 * The source of a pattern for a set of irons by its first and its last, the last a wedge: "4-PW", "5 iron to SW", "4-9+PW";
 * further wedges may follow.
 */
export const ironSetToWedge = `${notBefore}(?<first>[1-9])${iron}${upTo}(?:(?:9${iron})${plus})?(?<last>${wedge}|p)(?![\\p{L}\\d])(?:${plus}(?:${wedge}))*`;

const apart = "(?:,? ?(?:and|&|\\+|und|et) ?|, ?|/| )";
/** No list is longer than a bag, which holds fourteen clubs at most (Rules of Golf, 4.1b). */
const named = `[1-9]${iron}(?:${apart}[1-9]${iron}){2,13}(?:${apart}[psagl]w){1,13}`;

/** The source of a pattern for irons named one by one, the last of them wedges: "irons 5,6,7,8,9,PW"; in such a list a PW is an iron. */
export const ironsWithWedges = `(?<=irons?(?: ?[:(=-] ?|, ?| ))${named}|${named}(?= irons(?![\\p{L}]))`;

const setToWedge = new RegExp(ironSetToWedge, "gu");

/** Reads the numbers of a set of irons that ends in a wedge: "4-PW". */
export function readIronSets({ plain }: Words): Mention[] {
  return Array.from(
    plain.matchAll(setToWedge),
    ({ 0: words, index, groups }): Mention => ({
      field: "clubNumber",
      value: `${groups?.["first"]}-${(groups?.["last"] ?? "p").charAt(0).toUpperCase()}W`,
      start: index,
      end: index + words.length,
    }),
  );
}
