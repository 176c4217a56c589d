import type { Candidate } from "./candidate-clubs.ts";
import type { DealItem } from "./deal.ts";
import type { DealContext } from "./deal-context.ts";
import type { OfferedThing } from "./listing-things.ts";
import { titleOfItem } from "./titles.ts";

/** Clubs shown for one item; the sums rest on the best of them. */
const clubsShown = 12;
const wantsShown = 4;

/** What each item of a listing is to the bench: what it would sell for, the clubs it makes, and what it lacks. */
export function dealItems(
  things: readonly OfferedThing[],
  candidates: readonly Candidate[],
  context: DealContext,
): DealItem[] {
  return context.input.listing.items.map((item, place) => {
    const mine = things.filter((thing) => thing.item === place);
    const parts = mine.flatMap((thing) => thing.parts.map(({ id }) => id));
    const own = new Set(parts);
    const first = mine[0];
    if (!first) throw new Error(`item ${place} of a listing came to no thing`);
    return {
      title: titleOfItem(item),
      parts,
      resale: first.asItIs.resale,
      clubs: candidates
        .filter(({ takes }) => takes.some((id) => own.has(id)))
        .slice(0, clubsShown)
        .flatMap(clubShown),
      wants: wantsOf(first, context),
    };
  });
}

function clubShown({ club, title, resale }: Candidate): DealItem["clubs"][number][] {
  const { id, verdict, work } = club;
  return verdict === "does-not-fit" ? [] : [{ id, verdict, title, resale, work }];
}

function wantsOf({ parts }: OfferedThing, context: DealContext): DealItem["wants"] {
  const lead = context.leads.tried.find((part) => part.kind !== "adapter" && parts.includes(part));
  if (!lead) return [];
  const { wants } = context.resolveWith(lead.id);
  return wants.slice(0, wantsShown).map(({ id, text }) => ({ id, text }));
}
