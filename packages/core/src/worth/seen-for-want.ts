import type { Want } from "../resolve/result.ts";
import { answersWant } from "./answers-want.ts";
import { convertedMinor } from "./converted.ts";
import type { CostSettings } from "./cost-settings.ts";
import type { ModelFinder } from "./model-finder.ts";
import type { Sighting } from "./sighting.ts";

/** How often, for how long and at what prices a wanted part has been seen for sale. */
export interface SeenForWant {
  readonly count: number;
  readonly weeks: number;
  readonly pricesMinor: readonly number[];
}

const msPerWeek = 7 * 24 * 60 * 60 * 1000;

/** Days between are whole days of the calendar, whatever the clock's zone. */
const weeksBetween = (from: string, to: string) =>
  Math.max(0, (Date.parse(to) - Date.parse(from)) / msPerWeek);

/** What the log says of one want after another: what does not hang on the want is found out once. See `seenForWant`. */
export function wantsSeen(
  sightings: readonly Sighting[],
  finder: ModelFinder,
  costs: Pick<CostSettings, "currency" | "rates">,
  today: string,
): (want: Want) => SeenForWant {
  const past = sightings.filter(({ seenOn }) => seenOn <= today);
  const first = past.map(({ seenOn }) => seenOn).sort()[0] ?? today;
  const offers = firstOfSameWords(past)
    .filter(({ listing }) => listing.intent !== "wanted")
    .flatMap(({ listing }) =>
      listing.items.map((item) => ({ item, listing, model: finder.byId(item.modelId) })),
    );
  return (want) => {
    const hits = offers.filter(({ item, model }) => answersWant(item, model, want));
    const pricesMinor = hits.flatMap(({ item, listing }) => {
      const alone = listing.items.length === 1 && item.quantity === 1 ? listing.asking : null;
      const price = item.price ?? alone;
      return price ? (convertedMinor(price, costs) ?? []) : [];
    });
    // In one order whatever order they come in, so that not even the last bit of a sum depends on it.
    const sorted = pricesMinor.sort((one, other) => one - other);
    return { count: hits.length, weeks: weeksBetween(first, today), pricesMinor: sorted };
  };
}

/**
 * What the log of sightings says of a want. The watch began with the first sighting of anything; one price is the asking
 * price of a listing for that thing alone, or the price that the words give it. The same words count once, when they were
 * first seen, however often they are in the log.
 */
export function seenForWant(
  want: Want,
  sightings: readonly Sighting[],
  finder: ModelFinder,
  costs: Pick<CostSettings, "currency" | "rates">,
  today: string,
): SeenForWant {
  return wantsSeen(sightings, finder, costs, today)(want);
}

function firstOfSameWords(sightings: readonly Sighting[]): Sighting[] {
  const first = new Map<string, Sighting>();
  for (const sighting of sightings) {
    const known = first.get(sighting.text);
    if (!known || placeOf(sighting) < placeOf(known)) first.set(sighting.text, sighting);
  }
  return sightings.filter((sighting) => sighting.text.trim() === "" || first.get(sighting.text) === sighting);
}

const placeOf = ({ seenOn, id }: Sighting) => `${seenOn} ${id}`;
