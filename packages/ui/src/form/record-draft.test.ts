import { describe, expect, it } from "vitest";
import { draftFromRecord, recordFromDraft } from "./record-draft.ts";
import type { RecordField } from "./record-field.ts";

const fields: readonly RecordField[] = [
  { path: "maker", label: "Maker", control: "text", needed: true },
  { path: "price", label: "Price", control: "money", currency: "EUR" },
  { path: "capMinor", label: "Cap", control: "minor", currency: "EUR", empty: null },
  { path: "parcel.lengthCm", label: "Length", control: "number", unit: "cm" },
  { path: "cover", label: "Cover", control: "yes-no" },
  { path: "aliases", label: "Other names", control: "names", empty: [] },
];

describe("a plain form", () => {
  it("comes back as the record it was filled from", () => {
    const record = {
      maker: "Northmoor",
      price: { amountMinor: 4550, currency: "EUR" },
      capMinor: 25_000,
      parcel: { lengthCm: 118.5 },
      cover: false,
      aliases: ["ombrel", "ombrel II"],
    };
    expect(recordFromDraft(fields, draftFromRecord(fields, record))).toEqual({ record, slips: {} });
  });

  it("leaves out what is left empty, or takes what empty means there", () => {
    expect(recordFromDraft(fields, { maker: " Orvane " }).record).toEqual({
      maker: "Orvane",
      capMinor: null,
      aliases: [],
    });
  });

  it("names what is needed and what could not be read, and keeps the rest", () => {
    const { record, slips } = recordFromDraft(fields, { price: "much", "parcel.lengthCm": "1,5" });
    expect(record).toMatchObject({ parcel: { lengthCm: 1.5 } });
    expect(slips).toEqual({
      maker: "This is needed.",
      price: 'Got "much", expected an amount, such as 45, 45,50 or 45.50.',
    });
  });
});
