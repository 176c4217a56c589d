import type { Refusal, Watch } from "@ferrule/core";
import type { RecordField } from "../form/record-field.ts";
import { clubTypeWords, handWords, suitsWords } from "../words/part-words.ts";

const { either: _either, ...oneHand } = handWords;
const any = { "": "Any" } as const;
const hand = { ...any, ...oneHand };

/** Needs are named by field paths with dots in them; a form's own paths have none there. */
const needPath = (field: string) => `need:${field.replaceAll(".", ":")}`;

type Asked = { readonly field: string; readonly label: string } & (
  | { readonly control: "text" }
  | { readonly control: "number"; readonly unit?: string }
  | { readonly control: "choice"; readonly choices: Readonly<Record<string, string>> }
);

const asked: Readonly<Record<Watch["kind"], readonly Asked[]>> = {
  head: [
    { field: "clubType", label: "Club type", control: "choice", choices: { ...any, ...clubTypeWords } },
    { field: "hand", label: "Hand", control: "choice", choices: hand },
    { field: "socket.family", label: "Takes adapters of family", control: "text" },
  ],
  shaft: [
    { field: "suits", label: "Made for", control: "choice", choices: { ...any, ...suitsWords } },
    { field: "adapter.family", label: "With an adapter of family", control: "text" },
    { field: "length.lengthIn", label: "At least so long", control: "number", unit: "in" },
    { field: "tip.diameterIn", label: "Tip", control: "number", unit: "in" },
  ],
  adapter: [
    { field: "family", label: "Family", control: "text" },
    { field: "hand", label: "Hand", control: "choice", choices: hand },
    { field: "bore.diameterIn", label: "Bore", control: "number", unit: "in" },
  ],
  grip: [{ field: "coreDiameterIn", label: "Core", control: "number", unit: "in" }],
};

/** What the form asks about something that is wanted. */
export function watchFields(kind: Watch["kind"], currency: string): readonly RecordField[] {
  return [
    { path: "text", label: "In your words", control: "text", needed: true, wide: true },
    ...asked[kind].map(({ field, ...rest }): RecordField => ({ path: needPath(field), ...rest })),
    { path: "capMinor", label: "Pay at most", control: "minor", currency },
    { path: "place", label: "Only at this place", control: "text" },
    { path: "note", label: "Note", control: "note", wide: true },
  ];
}

/** What the server is told of a filled-in form. A length is wanted at least so long; everything else just so. */
export function watchOf(kind: Watch["kind"], record: Readonly<Record<string, unknown>>): Omit<Watch, "id"> {
  const needs: Record<string, unknown> = {};
  const rest: Record<string, unknown> = {};
  for (const [path, value] of Object.entries(record)) {
    if (!path.startsWith("need:")) rest[path] = value;
    else {
      const field = path.slice("need:".length).replaceAll(":", ".");
      needs[field] = field === "length.lengthIn" ? { atLeast: value } : value;
    }
  }
  return { ...(rest as Pick<Watch, "text">), kind, needs, by: "hand" };
}

/** The server's refusals, at the form's own paths. */
export function refusalsAtNeeds(refusals: readonly Refusal[]): Refusal[] {
  return refusals.map((refusal) => {
    const [, field] = /^needs\.(.+)$/.exec(refusal.field) ?? [];
    return field === undefined ? refusal : { ...refusal, field: needPath(field) };
  });
}
