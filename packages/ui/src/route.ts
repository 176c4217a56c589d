import type { Build } from "@ferrule/core";

/** A place in the page. */
export type Route =
  | { readonly view: "bench" }
  | { readonly view: "part-form"; readonly id?: string }
  | { readonly view: "part"; readonly id: string }
  | { readonly view: "club"; readonly id: string; readonly head: string }
  | {
      readonly view: "refusal";
      readonly head: string;
      readonly shaft: string;
      readonly adapter: string | null;
    }
  | { readonly view: "listing"; readonly id: string }
  | { readonly view: "batch"; readonly id: string }
  | { readonly view: "sell"; readonly parts: readonly string[] }
  | { readonly view: "sheet"; readonly head: string; readonly id: string; readonly build: Build }
  | { readonly view: "inspection"; readonly id: string }
  | { readonly view: "advert"; readonly parts: readonly string[] }
  | { readonly view: "labels"; readonly parts: readonly string[] }
  | { readonly view: "code"; readonly code?: string }
  | { readonly view: "history"; readonly of?: { readonly table: string; readonly id: string } }
  | { readonly view: SimpleView }
  | { readonly view: "nowhere" };

const simple = [
  "plan",
  "watch",
  "wants",
  "questions",
  "exchange",
  "claims",
  "settings",
  "listings",
  "books",
  "prices",
  "costs",
  "models",
  "together",
  "devices",
  "waiting",
] as const;
type SimpleView = (typeof simple)[number];

/** The route behind an address's path. */
export function routeFrom(path: string): Route {
  const [first, ...after] = path.split("/").filter(Boolean).map(decode);
  const [second, third, fourth] = after;
  if (first === undefined) return { view: "bench" };
  if (first === "add") return { view: "part-form" };
  if (first === "parts" && second)
    return third === "edit" ? { view: "part-form", id: second } : { view: "part", id: second };
  if (first === "clubs" && second && third) return { view: "club", head: second, id: third };
  if (first === "refused" && second && third)
    return { view: "refusal", head: second, shaft: third, adapter: fourth ?? null };
  if (first === "listings" && second === "many" && third) return { view: "batch", id: third };
  if (first === "listings" && second) return { view: "listing", id: second };
  if (first === "sell") return { view: "sell", parts: after };
  if (first === "sheet" && second && third)
    return { view: "sheet", head: second, id: third, build: buildFrom(fourth ?? "") };
  if (first === "inspect" && second) return { view: "inspection", id: second };
  if (first === "advert" && second) return { view: "advert", parts: after };
  if (first === "labels") return { view: "labels", parts: after };
  if (first === "history")
    return second && third ? { view: "history", of: { table: second, id: third } } : { view: "history" };
  if (first === "code") return second ? { view: "code", code: second } : { view: "code" };
  const view = simple.find((name) => name === first);
  return view ? { view } : { view: "nowhere" };
}

/** A badly escaped address is nowhere, not an exception. */
function decode(piece: string): string {
  try {
    return decodeURIComponent(piece);
  } catch {
    return piece;
  }
}

/** The choices for a club as they stand in an address: "playingLengthIn=44.5&extraHeadMassG=4". */
function buildFrom(text: string): Build {
  const named = [...new URLSearchParams(text)].map(([name, value]) => [name, Number(value)] as const);
  return Object.fromEntries(named.filter(([, value]) => Number.isFinite(value)));
}

function choicesText(build: Build): string {
  return new URLSearchParams(Object.entries(build).map(([name, value]) => [name, String(value)])).toString();
}

const pathOf = (...pieces: readonly string[]) => `/${pieces.map(encodeURIComponent).join("/")}`;

export const hrefs = {
  part: (id: string) => pathOf("parts", id),
  editPart: (id: string) => pathOf("parts", id, "edit"),
  club: (club: { head: string; id: string }) => pathOf("clubs", club.head, club.id),
  refusal: (miss: { head: string; shaft: string; adapter: string | null }) =>
    pathOf("refused", miss.head, miss.shaft, ...(miss.adapter === null ? [] : [miss.adapter])),
  listing: (id: string) => pathOf("listings", id),
  /** Many listings that came together. */
  batch: (id: string) => pathOf("listings", "many", id),
  /** The sheet to build a club by, with choices made for it. */
  sheet: (club: { head: string; id: string }, build: Build = {}) =>
    pathOf("sheet", club.head, club.id, ...(Object.keys(build).length > 0 ? [choicesText(build)] : [])),
  /** Looking over one part. */
  inspect: (id: string) => pathOf("inspect", id),
  /** What to write about these parts to sell them. */
  advert: (parts: readonly string[]) => pathOf("advert", ...parts),
  /** The labels of these parts; none leaves the choice to the page. */
  labels: (parts: readonly string[]) => pathOf("labels", ...parts),
  /** What was changed of one thing. */
  history: (table: string, id: string) => pathOf("history", table, id),
  /** The form that sells these parts together; none leaves the choice to the form. */
  sell: (parts: readonly string[]) => pathOf("sell", ...parts),
};
