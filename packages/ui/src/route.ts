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
] as const;
type SimpleView = (typeof simple)[number];

/** The route behind an address's path. */
export function routeFrom(path: string): Route {
  const [first, second, third, fourth, ...rest] = path.split("/").filter(Boolean).map(decode);
  if (first === undefined) return { view: "bench" };
  if (first === "add") return { view: "part-form" };
  if (first === "parts" && second)
    return third === "edit" ? { view: "part-form", id: second } : { view: "part", id: second };
  if (first === "clubs" && second && third) return { view: "club", head: second, id: third };
  if (first === "refused" && second && third)
    return { view: "refusal", head: second, shaft: third, adapter: fourth ?? null };
  if (first === "listings" && second === "many" && third) return { view: "batch", id: third };
  if (first === "listings" && second) return { view: "listing", id: second };
  if (first === "sell")
    return { view: "sell", parts: [second, third, fourth, ...rest].filter((id) => id !== undefined) };
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
  /** The form that sells these parts together; none leaves the choice to the form. */
  sell: (parts: readonly string[]) => pathOf("sell", ...parts),
};
