import type { Parcel } from "./cost-settings.ts";

/** What carriers measure a parcel by. */
export interface ParcelMeasures {
  readonly longestCm: number;
  /** Round the longest side: 2 × (width + height) of a box, π × diameter of a tube. */
  readonly girthCm: number;
  readonly lengthPlusGirthCm: number;
  /** Null for a box. */
  readonly lengthPlusTwoDiametersCm: number | null;
  /** Of the box around it, for a tube too: that is the room it takes. */
  readonly volumeM3: number;
}

/** The measures of a parcel, whichever way its sides are written down. A tube's diameter is the greater of its width and height. */
export function measuresOf(parcel: Parcel): ParcelMeasures {
  const { lengthCm, widthCm, heightCm } = parcel;
  const volumeM3 = (lengthCm * widthCm * heightCm) / 1e6;
  if (parcel.shape === "box") {
    const longestCm = Math.max(lengthCm, widthCm, heightCm);
    const girthCm = 2 * (lengthCm + widthCm + heightCm - longestCm);
    const lengthPlusGirthCm = longestCm + girthCm;
    return { longestCm, girthCm, lengthPlusGirthCm, lengthPlusTwoDiametersCm: null, volumeM3 };
  }
  const diameterCm = Math.max(widthCm, heightCm);
  const girthCm = Math.PI * diameterCm;
  return {
    longestCm: Math.max(lengthCm, diameterCm),
    girthCm,
    lengthPlusGirthCm: lengthCm + girthCm,
    lengthPlusTwoDiametersCm: lengthCm + 2 * diameterCm,
    volumeM3,
  };
}

/** The mass that is charged for: what it weighs, or what its volume counts as where that is more. */
export function chargedMassG(parcel: Parcel, kgPerM3: number | null): number {
  return Math.max(parcel.massG, measuresOf(parcel).volumeM3 * (kgPerM3 ?? 0) * 1000);
}
