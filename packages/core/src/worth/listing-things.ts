import type { Part } from "../parts/part.ts";
import type { DealContext } from "./deal-context.ts";
import { type Thing, thingOf } from "./thing.ts";

/** One thing that the listing offers, and the item of the listing that it is one of. */
export interface OfferedThing {
  readonly item: number;
  readonly parts: readonly Part[];
  readonly asItIs: Thing;
}

/** Everything the listing offers, thing by thing: a set is its clubs, three heads are three things. */
export function listingThings(context: DealContext): OfferedThing[] {
  return context.offered.things.flatMap((copies, item) =>
    copies.map((ids) => {
      const parts = ids.map((id) => context.parts.get(id) as Part);
      return { item, parts, asItIs: thingOf(parts, context) };
    }),
  );
}
