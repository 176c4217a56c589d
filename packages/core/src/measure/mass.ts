import { clubMass } from "./physics/club-mass.ts";
import { massNeeds, type Quantity } from "./quantity.ts";

/** Mass of the whole club with its epoxy, ferrule and grip tape. */
export const massQuantity: Quantity = {
  name: "massG",
  needs: [...massNeeds, "statedLengthIn", "bbgmIn"],
  of: (club) => clubMass(club.components),
};
