import type { Fault } from "@ferrule/core";
import { listingFieldWords } from "./item-words.ts";
import { faultWords } from "./part-words.ts";

/** What a field of a listing is called: "Asking price", "Loft of item 2", "Fault of item 1: rust". */
export function listingFactText(field: string): string {
  const [, at, name = ""] = /^items\.(\d+)\.(.+)$/.exec(field) ?? [];
  if (at === undefined) return listingFieldWords[field] ?? field;
  const item = `item ${Number(at) + 1}`;
  const fault = /^(?:faults|deniedFaults)\.(.+)$/.exec(name)?.[1];
  if (fault) return `Fault of ${item}: ${(faultWords[fault as Fault] ?? fault).toLowerCase()}`;
  return `${listingFieldWords[name.split(".")[0] ?? name] ?? name} of ${item}`;
}
