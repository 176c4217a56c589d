import { lengthNeeds, type Quantity } from "./quantity.ts";

/** Length of the shaft from its new tip to its new butt, with an extension where there is one. */
export const cutLengthQuantity: Quantity = {
  name: "cutLengthIn",
  needs: lengthNeeds,
  of: (club) => club.cutLengthIn,
};

/** Mass of what is left of the shaft, without the plug of an extension. */
export const shaftMassQuantity: Quantity = {
  name: "shaftMassG",
  needs: ["shaftMassG", "rawMassG", ...lengthNeeds],
  of: (club) => club.shaft.massG,
};

/** Balance point of what is left of the shaft, from its new tip. */
export const shaftBalanceQuantity: Quantity = {
  name: "shaftBalanceFromTipIn",
  needs: ["shaftMassG", "rawMassG", "balanceFraction", "balanceFromTipIn", ...lengthNeeds],
  of: (club) => club.shaft.balanceFromTipIn,
};
