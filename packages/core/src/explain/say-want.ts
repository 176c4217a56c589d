import { plainFormats } from "./plain-teller.ts";

const clubNames: Readonly<Record<string, string>> = {
  driver: "a driver",
  fairway: "a fairway wood",
  hybrid: "a hybrid",
  iron: "an iron",
  wedge: "a wedge",
  putter: "a putter",
};

/** What each wanted field comes to in words, to stand behind the kind of the part. */
const fieldWords: Readonly<Record<string, (value: string) => string>> = {
  family: (value) => `of family ${value}`,
  "bore.diameterIn": (value) => `with a bore of ${value}`,
  "bore.form": (value) => `with a ${value} bore`,
  suits: (value) => `made for ${value}`,
  "tip.diameterIn": (value) => `with a tip of ${value}`,
  "tip.form": (value) => `with a ${value} tip`,
  "adapter.family": (value) => `with an adapter of family ${value} on it`,
  "adapter.hand": (value) => `that adapter ${value}-handed`,
  "length.lengthIn": (value) => `${value} long`,
  clubType: (value) => `for ${value}`,
  "socket.family": (value) => `that takes adapters of family ${value}`,
  coreDiameterIn: (value) => `with a core of ${value}`,
};

/** A want in plain English: "a right-handed adapter of family X, with a bore of 0.335 in". */
export function sayWant(kind: string, needs: Readonly<Record<string, unknown>>): string {
  const { hand, ...others } = needs;
  const name = hand === undefined ? kind : `${hand}-handed ${kind}`;
  const said = Object.entries(others).map(([field, value]) => {
    const words = fieldWords[field];
    if (!words) throw new Error(`no words for the field "${field}" of a want`);
    return words(valueText(field, value));
  });
  const article = /^[aeiou]/.test(name) ? "an" : "a";
  return [`${article} ${name}`, said.join(", ")].filter((each) => each !== "").join(" ");
}

function valueText(field: string, value: unknown): string {
  if (Array.isArray(value)) return listed(value.map((each) => oneText(field, each)));
  if (typeof value === "object" && value !== null) {
    if ("atLeast" in value) return `at least ${oneText(field, value.atLeast)}`;
    if ("value" in value) return oneText(field, value.value);
  }
  return oneText(field, value);
}

/** "a", "a or b", "a, b or c". */
function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} or ${last}`;
}

function oneText(field: string, value: unknown): string {
  if (typeof value === "number" && field.endsWith("In")) return plainFormats.inches(value);
  if (field === "suits") return `${value}s`;
  return (field === "clubType" && clubNames[String(value)]) || String(value);
}
