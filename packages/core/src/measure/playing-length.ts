import { lengthNeeds, type Quantity } from "./quantity.ts";

/** Trade playing length: cut length, BBGM and grip cap along the shaft axis (Tutelman, "flex4", with the cap added). */
export const playingLengthQuantity: Quantity = {
  name: "playingLengthIn",
  needs: lengthNeeds,
  of: (club) => club.playingLengthIn,
};
