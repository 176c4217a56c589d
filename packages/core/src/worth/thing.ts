import type { ItemKind } from "../listing/catalogue.ts";
import type { Part } from "../parts/part.ts";
import type { Cluster } from "./clusters.ts";
import type { DealContext } from "./deal-context.ts";
import type { Subject } from "./evidence.ts";
import type { Resale } from "./resale.ts";
import { type Sale, saleOf } from "./sale.ts";
import { subjectOfClub, subjectOfPart } from "./subject-of.ts";
import { titleOfClub, titleOfPart } from "./titles.ts";
import { unsafeFaults } from "./unsafe-faults.ts";

/** Something that is sold as one: a club, a shaft with what is on it, or a loose part. */
export interface Thing {
  readonly title: string;
  readonly parts: Cluster;
  readonly resale: Resale;
  /** Nothing where nobody knows a price, or where it must not be sold to be swung. */
  readonly sale: Sale | undefined;
}

const find = <K extends Part["kind"]>(parts: Cluster, kind: K) =>
  parts.find((part): part is Extract<Part, { kind: K }> => part.kind === kind);

/** What joined parts are as a thing to sell; extras that come with them, such as a cover, raise its price. */
export function thingOf(parts: Cluster, context: DealContext): Thing {
  const { kind, title, subject } = describe(parts, context);
  const resale = context.resale(subject);
  return { title, parts, resale, sale: saleOfThing(title, kind, parts, resale, context) };
}

/** A thing's sale; nothing where a fault forbids that it is sold to be swung. */
export function saleOfThing(
  title: string,
  kind: ItemKind,
  parts: Cluster,
  resale: Resale,
  { costs }: DealContext,
): Sale | undefined {
  return unsafeFaults(parts).length > 0 ? undefined : saleOf(title, kind, resale, costs);
}

function describe(
  parts: Cluster,
  { finder }: DealContext,
): { kind: ItemKind; title: string; subject: Subject } {
  const head = find(parts, "head");
  const shaft = find(parts, "shaft");
  const adapter = find(parts, "adapter");
  const extras = {
    ...(find(parts, "cover") ? { cover: true } : {}),
    ...(find(parts, "wrench") ? { wrench: true } : {}),
  };
  if (head && shaft) {
    const club = { head, shaft, grip: find(parts, "grip") };
    return { kind: "club", title: titleOfClub(head, shaft), subject: subjectOfClub(club, finder, extras) };
  }
  const main = shaft ?? head ?? adapter ?? parts[0];
  if (!main) throw new Error("a thing without parts has no worth");
  const subject = { ...subjectOfPart(main, finder, adapter), ...extras };
  const title = shaft && adapter ? `${titleOfPart(shaft)} with adapter` : titleOfPart(main);
  return { kind: main.kind, title, subject };
}
