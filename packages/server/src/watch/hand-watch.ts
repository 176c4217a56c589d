import { parseWith, partSchema, type Refusal, type Watch, wantedThing } from "@ferrule/core";

/** What can be wanted of each kind of part: what listings say and wants of the bench ask for. */
const wantable: Readonly<Record<Watch["kind"], readonly string[]>> = {
  head: ["clubType", "hand", "socket.family", "socket.diameterIn", "socket.form"],
  shaft: ["suits", "length.lengthIn", "tip.diameterIn", "tip.form", "adapter.family", "adapter.hand"],
  adapter: ["family", "hand", "bore.diameterIn", "bore.form"],
  grip: ["coreDiameterIn"],
};

/** Why something cannot be watched for: its needs have to be those of a part that there could be. */
export function watchRefusals({ id, kind, needs, text }: Watch): Refusal[] {
  const unknown = Object.keys(needs).filter((field) => !wantable[kind].includes(field));
  if (unknown.length > 0)
    return unknown.map((field) => ({
      field: `needs.${field}`,
      got: "a field that is not looked for",
      expected: `of ${kind === "adapter" ? "an" : "a"} ${kind}: ${wantable[kind].join(", ")}`,
    }));
  return Object.entries(needs).flatMap(([field, wanted]) =>
    choicesOf(wanted).flatMap((one) => {
      const { parts } = wantedThing({ id, kind, needs: { [field]: one }, text, completes: [], count: 0 }, 0);
      const refused = parts.some((part) => !parseWith(partSchema, part).ok);
      const expected = "a value that such a part can have, a choice of them, or { atLeast } of a number";
      return refused ? [{ field: `needs.${field}`, got: JSON.stringify(wanted), expected }] : [];
    }),
  );
}

function choicesOf(wanted: unknown): readonly unknown[] {
  if (Array.isArray(wanted)) return wanted.length === 0 ? [null] : wanted;
  return [wanted];
}
