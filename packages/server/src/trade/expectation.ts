import {
  type CatalogueModel,
  type CostSettings,
  type Entry,
  type Evidence,
  estimateResale,
  type Part,
} from "@ferrule/core";
import { saleSubject } from "./sale-subject.ts";

/** What an expectation rests on. */
export interface Market {
  readonly catalogue: readonly CatalogueModel[];
  readonly evidence: readonly Evidence[];
  readonly costs: CostSettings;
  readonly today: string;
}

/** What parts that go for one price should bring, by the noted prices; nothing where these do not say. */
export function expectationOf(
  parts: readonly Part[],
  { catalogue, evidence, costs, today }: Market,
): Entry["expected"] {
  const subject = saleSubject(parts, catalogue);
  const resale = subject && estimateResale(subject, evidence, costs, today);
  if (!resale?.known) return undefined;
  const { valueMinor: priceMinor, lowMinor, highMinor, daysToSell } = resale;
  return {
    currency: costs.currency,
    priceMinor,
    lowMinor,
    highMinor,
    ...(daysToSell ? { daysToSell: daysToSell.value } : {}),
  };
}
