import type { PlainClub } from "../resolve/club.ts";
import type { Want } from "../resolve/result.ts";
import type { Sale } from "../worth/sale.ts";
import type { Share, Use } from "./plan-model.ts";
import type { StockType } from "./stock.ts";

/** A use of the plan's model, with what it means at the bench. */
export interface MeaningfulUse extends Use {
  readonly do: "build" | "sell" | "wait";
  readonly title: string;
  /** Parts of the types' representatives that it takes. */
  readonly parts: readonly string[];
  readonly club?: PlainClub;
  /** What a club that is built is sold for. */
  readonly sale?: Sale;
  readonly want?: Want;
  readonly takeAtOrUnderMinor?: number;
}

/** The resource behind each part of a representative: its type, and its place in it. */
export type Roles = ReadonlyMap<string, string>;

export function rolesOf(types: readonly StockType[]): Roles {
  return new Map(
    types.flatMap(({ id, parts }) => parts.map((part, at) => [part.id, `${id}.${at}`] as const)),
  );
}

/** One of each of these parts of representatives. */
export function sharesOf(parts: readonly string[], roles: Roles): Share[] {
  return parts.map((id) => {
    const resource = roles.get(id);
    if (resource === undefined) throw new Error(`${id} stands for nothing that is in the plan`);
    return { resource, count: 1 };
  });
}
