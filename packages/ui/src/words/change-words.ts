import type { Thing, WaitingChange } from "../offline/waiting-change.ts";

const nouns: Readonly<Record<string, string>> = {
  "/api/bench/parts": "part",
  "/api/bench/joints": "joint",
  "/api/bench/claims": "fit claim",
  "/api/catalogue": "model",
  "/api/evidence": "price",
  "/api/sightings": "listing",
};

/** What a change that waits does, such as "Add the part head-3 (Northmoor Ombrel)". */
export function changeTitle({ method, path, list, id, body, before }: WaitingChange): string {
  const noun = nouns[list] ?? "thing";
  const called = nameOf((body as Thing | undefined) ?? before ?? {});
  const what = `the ${noun} ${id}${called ? ` (${called})` : ""}`;
  if (path.endsWith("/buy")) return `Buy what is in ${what}`;
  if (method === "POST") return list === "/api/sightings" ? `Keep ${what} in the log` : `Add ${what}`;
  return `${method === "DELETE" ? "Delete" : "Change"} ${what}`;
}

function nameOf(thing: Thing): string {
  const named = [thing["maker"], thing["model"], thing["name"]].filter((word) => typeof word === "string");
  if (named.length > 0) return named.join(" ");
  const { text } = thing as { text?: unknown };
  return typeof text === "string" ? `“${text.trim().slice(0, 40)}…”` : "";
}
