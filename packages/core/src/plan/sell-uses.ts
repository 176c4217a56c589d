import { roundMinor } from "../money.ts";
import type { Part } from "../parts/part.ts";
import type { DealContext } from "../worth/deal-context.ts";
import type { Sale } from "../worth/sale.ts";
import { thingOf } from "../worth/thing.ts";
import { type MeaningfulUse, type Roles, sharesOf } from "./meaningful-use.ts";
import { freedShares, isHeadOfClub, type Parting } from "./parting.ts";
import type { StockType } from "./stock.ts";

/**
 * Selling each thing as it is, and of a complete club that may be taken apart its head, and the shaft with what stays on it.
 * Taking it apart is paid by itself.
 */
export function sellUses(
  types: readonly StockType[],
  context: DealContext,
  roles: Roles,
  partings: readonly Parting[],
): MeaningfulUse[] {
  const whole = types.flatMap(({ parts }) => sellAs(parts, thingOf(parts, context), roles));
  const pieces = partings.filter(isHeadOfClub).flatMap((parting) =>
    piecesOf(parting).flatMap((piece) =>
      sellAs(piece, thingOf(piece, context), roles).map((use) => ({
        ...use,
        takes: [...use.takes, ...freedShares(new Set(use.parts), [parting])],
      })),
    ),
  );
  return [...whole, ...pieces];
}

function piecesOf({ type, one: head }: Parting): (readonly Part[])[] {
  return [[head], type.parts.filter((part) => part !== head)];
}

/** Selling these parts as one thing; nothing where nobody knows its price, or where it must not be sold to be swung. */
export function sellAs(
  parts: readonly Part[],
  { title, sale }: { readonly title: string; readonly sale: Sale | undefined },
  roles: Roles,
): MeaningfulUse[] {
  if (!sale) return [];
  const ids = parts.map(({ id }) => id);
  return [
    {
      id: `sell ${ids.join("+")}`,
      ...{ do: "sell", title, parts: ids },
      takes: sharesOf(ids, roles),
      netMinor: roundMinor(sale.gain.value),
      minutes: sale.minutes,
      outlayMinor: sale.listingFeeMinor,
    },
  ];
}
