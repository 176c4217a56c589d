import type { FactReader } from "./mention.ts";
import { readAdapter } from "./read-adapter.ts";
import { readClubType } from "./read-club-type.ts";
import { readExtras } from "./read-extras.ts";
import { readHand } from "./read-hand.ts";
import { readShaftMass } from "./read-shaft-mass.ts";
import { readShaftMaterial } from "./read-shaft-material.ts";
import { readYear } from "./read-year.ts";

/** The small readers, each of one kind of fact. */
export const factReaders: readonly FactReader[] = [
  readAdapter,
  readClubType,
  readExtras,
  readHand,
  readShaftMass,
  readShaftMaterial,
  readYear,
];
