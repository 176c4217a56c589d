import { type BuiltClub, trimmed } from "./built-club.ts";
import type { NumberKey } from "./club-numbers.ts";
import { carriedFrequency, type LoadedShaft } from "./physics/carried-frequency.ts";
import { momentNeeds, type Quantity } from "./quantity.ts";

/**
 * Butt held in the clamp when a club's frequency is read: 5 in is usual (tutelman.com/golf/measure/NF4_FreqFlex.php; Swing
 * Surgeon 2010).
 */
export const clubClampIn = 5;

/**
 * The shaft's known frequency carried to this club with `clubClampIn` of butt held and the head, its adapter and added mass
 * as the tip mass. The interval is that of the readings; that a real shaft is no uniform beam is not in it.
 */
export const frequencyQuantity: Quantity = {
  name: "frequencyCpm",
  needs: ["frequencyCpm", "frequencyTipMassG", "frequencyClampIn", "frequencyBeamIn", ...momentNeeds],
  of: clubFrequency,
  still: new Set<NumberKey>([
    "cgAlongAxisIn",
    "headOwnMoiKgCm2",
    "loftDeg",
    "lieDeg",
    "faceAngleDeg",
    "soleRadiusIn",
    "contactFromAxisIn",
    "epoxyMassG",
    "ferruleMassG",
    "holderDepthIn",
    "adapterCgAboveTipStopIn",
    "tiltDeg",
    "extensionMassG",
    "gripMassG",
    "gripLengthIn",
    "gripCgFromCapIn",
    "tapeMassG",
    "counterweightG",
  ]),
};

function clubFrequency(club: BuiltClub): number {
  const { numbers } = club;
  if (Number.isNaN(numbers.frequencyCpm)) return Number.NaN;
  const tipMassG = numbers.headMassG + numbers.adapterMassG + numbers.extraHeadMassG;
  const { beamLengthIn, beamMassG, tipMassG: readWithG } = readBeam(club);
  const reading = { beamLengthIn, beamMassG, tipMassG: readWithG, cpm: numbers.frequencyCpm };
  const target = beamOf(club, club.cutLengthIn - clubClampIn, numbers.tipTrimIn, tipMassG);
  if (!(reading.beamMassG > 0 && target.beamMassG > 0)) return Number.NaN;
  return carriedFrequency({ reading, target }).cpm;
}

/** The beam of the reading, on the shaft as it came to the bench. */
function readBeam(club: BuiltClub): LoadedShaft {
  const { numbers, shape, before } = club;
  const freeIn = shape.beamRead ? numbers.frequencyBeamIn : before.lengthIn - numbers.frequencyClampIn;
  return beamOf(club, freeIn, 0, numbers.frequencyTipMassG);
}

/** The last `freeIn` of the shaft towards the tip, NaN in mass where the clamp leaves nothing. */
function beamOf({ before }: BuiltClub, freeIn: number, tipTrimIn: number, tipMassG: number): LoadedShaft {
  const { massG } = trimmed(before, tipTrimIn, before.lengthIn - tipTrimIn - freeIn);
  return { beamLengthIn: freeIn, beamMassG: massG, tipMassG };
}
