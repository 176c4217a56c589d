import { readFileSync } from "node:fs";
import type { Listing } from "../listing/listing.ts";
import type { Reference } from "../parts/reference.ts";
import { rules } from "../rules/index.ts";
import { plainCosts } from "./deal.test-kit.ts";
import type { DealInput } from "./deal-input.ts";
import type { Evidence } from "./evidence.ts";

const table = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../../../data/${name}.json`, import.meta.url), "utf8"));

const reference = {
  typical: table("reference/typical"),
  work: table("reference/work"),
  cautions: table("reference/cautions"),
} as Reference;

/** A judgement at plain costs; the bench is empty unless it is given. */
export function dealInput(listing: Listing, other: Partial<DealInput> = {}): DealInput {
  return {
    listing,
    bench: { parts: [] },
    rules,
    reference,
    catalogue: [],
    evidence: [],
    sightings: [],
    costs: plainCosts,
    today: "2026-11-25",
    ...other,
  };
}

/** A price that somebody paid, in euro cents. */
export function paid(amountMinor: number, subject: Partial<Evidence>): Evidence {
  return {
    id: `${amountMinor} ${JSON.stringify(subject)}`,
    on: "2026-11-01",
    what: "sold",
    price: { amountMinor, currency: "EUR" },
    kind: "head",
    ...subject,
  };
}
