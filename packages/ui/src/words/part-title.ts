import type { Part } from "@ferrule/core";
import { clubTypeWords, kindWords } from "./part-words.ts";

/** What somebody at the bench would call a part: "Northmoor Tarn driver", else its kind. */
export function partTitle(part: Part): string {
  const name = [part.maker, part.model].filter(Boolean).join(" ");
  return name === "" ? kindText(part) : `${name} ${kindText(part).toLowerCase()}`;
}

/** "Driver head", "Shaft", "Adapter". */
export function kindText(part: Part): string {
  if (part.kind !== "head") return kindWords[part.kind];
  const type = part.clubType ? clubTypeWords[part.clubType] : "";
  return [type, part.clubNumber, type === "" ? "Head" : "head"].filter(Boolean).join(" ");
}

/** The title with the part's name on the bench, for lists in which titles repeat. */
export function titleById(parts: ReadonlyMap<string, Part>, id: string): string {
  const part = parts.get(id);
  return part ? partTitle(part) : id;
}
