import { clubMoi } from "./physics/club-moi.ts";
import { momentNeeds, type Quantity } from "./quantity.ts";

/** Moment of inertia about the grip end, the trade's axis (tutelman.com, "MOImatchAxis"). */
export const moiQuantity: Quantity = {
  name: "moiKgCm2",
  needs: [...momentNeeds, "headOwnMoiKgCm2"],
  of: (club) => clubMoi(club.components),
};
