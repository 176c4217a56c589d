import type { Fault } from "../parts/fault.ts";
import type { Candidate } from "./candidate-clubs.ts";
import type { DealQuestion } from "./deal.ts";
import type { DealContext } from "./deal-context.ts";
import { listingField } from "./draft-field.ts";
import type { OfferedThing } from "./listing-things.ts";
import { titleOfItem } from "./titles.ts";
import { isUnsafe, unsafeFaults } from "./unsafe-faults.ts";

/** What decides the worth of asking: how far the most to pay lies apart with and without what nobody knows yet. */
export interface Swing {
  readonly swingMinor: number;
  /** Whether it can change the verdict. */
  readonly decides: boolean;
}

/**
 * What would settle the clubs that wait for a fact: facts of the listing are the seller's to tell, others the user's. The
 * clubs that the best answer would build carry the swing; about the others only the seller is asked.
 */
export function settlingQuestions(
  candidates: readonly Candidate[],
  hoped: ReadonlySet<Candidate>,
  swing: Swing,
  { offered, input }: DealContext,
): DealQuestion[] {
  const { items } = input.listing;
  return candidates.flatMap((candidate) => {
    const { club } = candidate;
    if (club.verdict !== "unsettled") return [];
    const isHoped = hoped.has(candidate);
    const worth = isHoped ? swing : { swingMinor: 0, decides: false };
    return club.questions.flatMap(({ part, field, text }): DealQuestion[] => {
      const place = field === triedField ? undefined : listingField(part, field, offered);
      const item = items.length > 1 ? items[offered.itemOf.get(part) ?? -1] : undefined;
      const asked = item ? `${titleOfItem({ ...item, quantity: 1 })}: ${text}` : text;
      if (place !== undefined) return [{ to: "seller", field: place, text: asked, ...worth }];
      return isHoped
        ? [{ to: "you", field: `${part}.${field}`, text: forUser(part, text, offered), ...worth }]
        : [];
    });
  });
}

/** Whether an adapter fits across generations is for whoever has both in the hand. */
const triedField = "tried";

const forUser = (part: string, text: string, { itemOf }: DealContext["offered"]) =>
  itemOf.has(part) ? text : `Of ${part} on your bench: ${text}`;

/** What a buyer looks at on a head and on a shaft before it is swung, where the words neither assert nor deny it. */
const looks = [
  {
    kinds: ["head", "club"],
    faults: ["crack", "rattle", "caved-face"],
    text: "Is there any crack or dent in the head, is the face flat and true, and does anything rattle inside?",
  },
  {
    kinds: ["shaft", "club"],
    faults: ["dent-shaft", "crease-shaft", "exposed-fibre", "bent-shaft"],
    text: "Is the shaft straight and free of dents, creases and cracks, also near the tip?",
  },
  {
    kinds: ["adapter"],
    faults: ["adapter-damaged"],
    text: "Are the adapter and its screw undamaged, and is it clean of old glue inside?",
  },
] as const;

/** Questions after faults that nobody mentioned: all that is paid hangs on them, whether or not they decide today. */
export function faultQuestions(
  things: readonly OfferedThing[],
  worthMinor: number,
  isCareful: boolean,
  { input }: DealContext,
): DealQuestion[] {
  const items = [...new Set(things.map(({ item }) => item))];
  return items.flatMap((place) => {
    const item = input.listing.items[place];
    if (!item) return [];
    // Where one of them is denied somebody has looked; where one that forbids a sale is asserted, the answer is known.
    const isAnswered = (fault: Fault) =>
      item.deniedFaults.includes(fault) || (item.faults.includes(fault) && isUnsafe(fault));
    return looks
      .filter(({ kinds }) => (kinds as readonly string[]).includes(item.kind))
      .filter(({ faults }) => !faults.some(isAnswered))
      .map(
        ({ text }): DealQuestion => ({
          to: "seller",
          field: `items.${place}.faults`,
          text,
          swingMinor: worthMinor,
          decides: isCareful,
        }),
      );
  });
}

/** What to ask the user where nobody knows a price: one question for each thing that could be sold. */
export function priceQuestions(
  things: readonly OfferedThing[],
  candidates: readonly Candidate[],
  decides: boolean,
): DealQuestion[] {
  const sellable = things.filter(({ parts }) => unsafeFaults(parts).length === 0);
  const prices = [...candidates.slice(0, 1), ...sellable.map(({ asItIs }) => asItIs)];
  const texts = new Set(prices.flatMap(({ resale }) => (resale.known ? [] : [resale.question])));
  return [...texts].map((text) => ({ to: "you", field: "resale", text, swingMinor: 0, decides }));
}

/**
 * Whether there is something that nobody knows a price of, so that the listing may be worth more than the sums say: a thing
 * that no club with a known price is made of, or the finished clubs, all of them.
 */
export function lacksPrices(things: readonly OfferedThing[], candidates: readonly Candidate[]): boolean {
  const priced = candidates.filter(({ sale }) => sale !== undefined);
  const inClubs = new Set(priced.flatMap(({ takes }) => takes));
  const unpriced = things.some(
    ({ asItIs, parts }) =>
      !asItIs.resale.known && unsafeFaults(parts).length === 0 && !parts.some(({ id }) => inClubs.has(id)),
  );
  return unpriced || (candidates.length > 0 && priced.length === 0);
}

/** Each question once, those that decide first, then those about most money. */
export function rankedQuestions(questions: readonly DealQuestion[]): DealQuestion[] {
  const once = new Map<string, DealQuestion>();
  for (const question of questions) {
    const key = `${question.to} ${question.text}`;
    const known = once.get(key);
    if (!known || isStronger(question, known)) once.set(key, question);
  }
  return [...once.values()].sort((one, other) =>
    isStronger(one, other) ? -1 : isStronger(other, one) ? 1 : 0,
  );
}

function isStronger(one: DealQuestion, other: DealQuestion): boolean {
  if (one.decides !== other.decides) return one.decides;
  return one.swingMinor > other.swingMinor;
}
