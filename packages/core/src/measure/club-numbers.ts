/**
 * The figures one club is computed from, each in the unit its name says. A figure that this club has no use for is 0, one
 * that nobody knows is NaN, so that everything which rests on it comes out as NaN, which is told as missing.
 */
export interface ClubNumbers {
  headMassG: number;
  cgAlongAxisIn: number;
  headOwnMoiKgCm2: number;
  loftDeg: number;
  lieDeg: number;
  faceAngleDeg: number;
  soleRadiusIn: number;
  contactFromAxisIn: number;
  epoxyMassG: number;
  ferruleMassG: number;
  bbgmIn: number;
  seatToGroundIn: number;
  tipStopFromSeatIn: number;
  holderDepthIn: number;
  adapterMassG: number;
  adapterCgAboveTipStopIn: number;
  tiltDeg: number;
  statedLengthIn: number;
  adapterEndIn: number;
  oldBbgmIn: number;
  oldCapIn: number;
  basisDoubtIn: number;
  rawLengthIn: number;
  tipTrimmedIn: number;
  shaftMassG: number;
  rawMassG: number;
  balanceFromTipIn: number;
  balanceFraction: number;
  extensionMassG: number;
  frequencyCpm: number;
  frequencyClampIn: number;
  frequencyTipMassG: number;
  frequencyBeamIn: number;
  gripMassG: number;
  gripLengthIn: number;
  gripCgFromCapIn: number;
  capThicknessIn: number;
  tapeMassG: number;
  tipTrimIn: number;
  buttTrimIn: number;
  chosenLengthIn: number;
  extraHeadMassG: number;
  counterweightG: number;
}

export type NumberKey = keyof ClubNumbers;

export function noNumbers(): ClubNumbers {
  return {
    headMassG: 0,
    cgAlongAxisIn: 0,
    headOwnMoiKgCm2: 0,
    loftDeg: 0,
    lieDeg: 0,
    faceAngleDeg: 0,
    soleRadiusIn: 0,
    contactFromAxisIn: 0,
    epoxyMassG: 0,
    ferruleMassG: 0,
    bbgmIn: 0,
    seatToGroundIn: 0,
    tipStopFromSeatIn: 0,
    holderDepthIn: 0,
    adapterMassG: 0,
    adapterCgAboveTipStopIn: 0,
    tiltDeg: 0,
    statedLengthIn: 0,
    adapterEndIn: 0,
    oldBbgmIn: 0,
    oldCapIn: 0,
    basisDoubtIn: 0,
    rawLengthIn: 0,
    tipTrimmedIn: 0,
    shaftMassG: 0,
    rawMassG: 0,
    balanceFromTipIn: 0,
    balanceFraction: 0,
    extensionMassG: 0,
    frequencyCpm: 0,
    frequencyClampIn: 0,
    frequencyTipMassG: 0,
    frequencyBeamIn: 0,
    gripMassG: 0,
    gripLengthIn: 0,
    gripCgFromCapIn: 0,
    capThicknessIn: 0,
    tapeMassG: 0,
    tipTrimIn: 0,
    buttTrimIn: 0,
    chosenLengthIn: 0,
    extraHeadMassG: 0,
    counterweightG: 0,
  };
}
