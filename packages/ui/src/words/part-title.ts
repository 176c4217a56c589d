import type { Part } from "@ferrule/core";
import { clubTypeWords, kindWords } from "./part-words.ts";
import { withoutTurns } from "./without-turns.ts";

/** What somebody at the bench would call a part: "Northmoor Tarn driver", else its kind. */
export function partTitle(part: Part): string {
  const name = withoutTurns([part.maker, part.model].filter(Boolean).join(" "));
  if (name === "") return kindText(part);
  const kind = kindText(part)
    .toLowerCase()
    .replace(/\b(pw|gw|aw|sw|lw)\b/g, (number) => number.toUpperCase());
  return name.toLowerCase().endsWith(` ${kind}`) ? name : `${name} ${kind}`;
}

/** A finished club by its head: "Northmoor Tarn driver". */
export function clubTitle(parts: ReadonlyMap<string, Part>, head: string): string {
  return titleById(parts, head).replace(/ head$/, "");
}

/** "Driver head", "Shaft", "Adapter". */
export function kindText(part: Part): string {
  if (part.kind !== "head") return kindWords[part.kind];
  const type = part.clubType ? clubTypeWords[part.clubType] : "";
  const number = part.clubType === "driver" || part.clubType === "putter" ? undefined : part.clubNumber;
  return [type, number, type === "" ? "Head" : "head"].filter(Boolean).join(" ");
}

/** The title with the part's name on the bench, for lists in which titles repeat. */
export function titleById(parts: ReadonlyMap<string, Part>, id: string): string {
  const part = parts.get(id);
  return part ? partTitle(part) : withoutTurns(id);
}
