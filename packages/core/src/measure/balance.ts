import { clubBalance } from "./physics/club-balance.ts";
import { momentNeeds, type Quantity } from "./quantity.ts";

/** Balance point from the edge of the grip cap. */
export const balanceQuantity: Quantity = {
  name: "balanceFromButtIn",
  needs: momentNeeds,
  of: (club) => clubBalance(club.components),
};
