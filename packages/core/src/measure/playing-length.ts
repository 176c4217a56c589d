import { lengthNeeds, type Quantity } from "./quantity.ts";

/**
 * Trade playing length: cut length, BBGM and grip cap along the shaft axis (tutelman.com/golf/design/flex4.php, with the
 * cap added).
 */
export const playingLengthQuantity: Quantity = {
  name: "playingLengthIn",
  needs: lengthNeeds,
  of: (club) => club.playingLengthIn,
};
