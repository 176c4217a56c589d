import type { FactReader } from "./mention.ts";
import { readAdapter } from "./read-adapter.ts";
import { readClubType } from "./read-club-type.ts";
import { readExtras } from "./read-extras.ts";
import { readFaults } from "./read-faults.ts";
import { readFlex } from "./read-flex.ts";
import { readHand } from "./read-hand.ts";
import { readLength } from "./read-length.ts";
import { readLoft } from "./read-loft.ts";
import { readShaftMass } from "./read-shaft-mass.ts";
import { readShaftMaterial } from "./read-shaft-material.ts";
import { readTip } from "./read-tip.ts";
import { readYear } from "./read-year.ts";

/** The small readers, each of one kind of fact. */
export const factReaders: readonly FactReader[] = [
  readAdapter,
  readClubType,
  readExtras,
  readFaults,
  readFlex,
  readHand,
  readLength,
  readLoft,
  readShaftMass,
  readShaftMaterial,
  readTip,
  readYear,
];
