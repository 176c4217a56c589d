import type { Parcel, PostageService } from "./cost-settings.ts";
import { chargedMassG, measuresOf } from "./parcel-measures.ts";

/** Why a service does not take a parcel. */
export interface PostageRefusal {
  /** The id of the service. */
  readonly service: string;
  readonly code: "too-heavy" | "too-long" | "girth-too-great" | "tube-too-great" | "too-bulky";
  readonly text: string;
}

/** The cheapest way to send a parcel; null where no service takes it. */
export interface PostageQuote {
  readonly service: PostageService | null;
  readonly priceMinor: number | null;
  readonly refused: readonly PostageRefusal[];
}

/** The least that a parcel can be sent for; null where no service takes it. */
export function leastPostageMinor(parcel: Parcel, services: readonly PostageService[]): number | null {
  const taken = services.filter((service) => exceeded(parcel, service).length === 0);
  return taken.length === 0 ? null : Math.min(...taken.map(({ priceMinor }) => priceMinor));
}

/** Asks every service; of those that take the parcel at the same price the one named first. */
export function postageFor(parcel: Parcel, services: readonly PostageService[]): PostageQuote {
  const asked = services.map((service) => ({ service, refused: refusalsOf(parcel, service) }));
  const service = asked
    .filter(({ refused }) => refused.length === 0)
    .map((taken) => taken.service)
    .reduce<PostageService | null>(
      (best, next) => (best === null || next.priceMinor < best.priceMinor ? next : best),
      null,
    );
  return {
    service,
    priceMinor: service?.priceMinor ?? null,
    refused: asked.flatMap(({ refused }) => refused),
  };
}

/** A limit is kept when the parcel is on it. */
const slack = 1e-9;

/** A limit of a service that a parcel is over. */
interface Exceeded {
  readonly code: PostageRefusal["code"];
  readonly what: string;
  readonly unit: string;
  readonly actual: number;
  readonly limit: number;
}

function refusalsOf(parcel: Parcel, service: PostageService): PostageRefusal[] {
  return exceeded(parcel, service).map(({ code, what, unit, actual, limit }) => ({
    service: service.id,
    code,
    text: `${service.name}: ${what} ${shown(actual)} ${unit}, the limit is ${shown(limit)} ${unit}`,
  }));
}

function exceeded(parcel: Parcel, service: PostageService): Exceeded[] {
  const measures = measuresOf(parcel);
  const over = (
    code: PostageRefusal["code"],
    what: string,
    unit: string,
    actual: number | null,
    limit: number | null,
  ): Exceeded[] =>
    actual === null || limit === null || actual <= limit * (1 + slack)
      ? []
      : [{ code, what, unit, actual, limit }];
  const { lengthPlusTwoDiametersCm, lengthPlusGirthCm } = measures;
  const chargedG = chargedMassG(parcel, service.kgPerM3);
  const mass = chargedG > parcel.massG ? "it counts, for its volume, as" : "it weighs";
  return [
    ...over("too-heavy", mass, "g", chargedG, service.maxMassG),
    ...over("too-long", "the longest side is", "cm", measures.longestCm, service.maxLengthCm),
    ...over("girth-too-great", "length and girth are", "cm", lengthPlusGirthCm, service.maxLengthPlusGirthCm),
    ...over(
      "tube-too-great",
      "length and two diameters are",
      "cm",
      lengthPlusTwoDiametersCm,
      service.maxLengthPlusTwoDiametersCm,
    ),
    ...over("too-bulky", "the volume is", "m³", measures.volumeM3, service.maxVolumeM3),
  ];
}

/** Three decimals under one, as volumes need; one above. */
function shown(amount: number): string {
  return String(Number(amount.toFixed(amount < 1 ? 3 : 1)));
}
