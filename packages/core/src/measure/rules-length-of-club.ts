import { rulesLength } from "./physics/rules-length.ts";
import { lengthNeeds, type Quantity } from "./quantity.ts";

/** Length by the 60° method (R&A and USGA, Club Length, Rev 1.1, s. 5.0.1), from the playing length, the lie and the sole. */
export const rulesLengthQuantity: Quantity = {
  name: "rulesLengthIn",
  needs: [...lengthNeeds, "lieDeg", "soleRadiusIn", "contactFromAxisIn"],
  of: ({ playingLengthIn, numbers }) =>
    rulesLength({
      playingLengthIn,
      lieDeg: numbers.lieDeg,
      soleRadiusIn: numbers.soleRadiusIn,
      contactFromAxisIn: numbers.contactFromAxisIn,
    }),
};
