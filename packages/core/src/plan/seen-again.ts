import type { Sighting } from "../worth/sighting.ts";

/** A quarter: long enough to see what comes how often, short enough to hold still. From memory. */
export const weeksCountedOn = 13;

const dayMs = 86_400_000;

/**
 * The listings of the last weeks as if they were on offer, each by a name that tells it from the one that was seen. What was
 * seen today is left out: it is on offer itself.
 */
export function seenAgain(sightings: readonly Sighting[], today: string): Sighting[] {
  const now = Date.parse(today);
  const from = now - weeksCountedOn * 7 * dayMs;
  const isCounted = ({ seenOn }: Sighting) => Date.parse(seenOn) >= from && Date.parse(seenOn) < now;
  return sightings
    .filter(isCounted)
    .map((sighting) => ({ ...sighting, id: againId(sighting.id), outcome: "open" as const }));
}

const againId = (id: string) => `again ${id}`;

export const isAgain = (id: string) => id.startsWith("again ");
