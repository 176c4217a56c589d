import { plainFormats } from "./plain-teller.ts";

const fieldWords: Readonly<Record<string, (value: string) => string>> = {
  family: (value) => `of family ${value}`,
  hand: (value) => `${value} hand`,
  "bore.diameterIn": (value) => `bore ${value}`,
  "bore.form": (value) => `${value} bore`,
  suits: (value) => `for ${value}`,
  "tip.diameterIn": (value) => `tip ${value}`,
  "tip.form": (value) => `${value} tip`,
  "adapter.family": (value) => `with an adapter of family ${value} on it`,
  "adapter.hand": (value) => `${value} hand`,
  "length.lengthIn": (value) => `${value} long`,
  clubType: (value) => `${value}`,
  "socket.family": (value) => `that takes family ${value}`,
  coreDiameterIn: (value) => `core ${value}`,
};

/** A want in plain English: "an adapter of family X, right hand, bore 0.335 in". */
export function sayWant(kind: string, needs: Readonly<Record<string, unknown>>): string {
  const article = /^[aeiou]/.test(kind) ? "an" : "a";
  const said = Object.entries(needs).map(([field, value]) => {
    const words = fieldWords[field];
    if (!words) throw new Error(`no words for the field "${field}" of a want`);
    return words(valueText(field, value));
  });
  return [`${article} ${kind}`, ...said].join(", ");
}

function valueText(field: string, value: unknown): string {
  if (Array.isArray(value)) return value.map(String).join(" or ");
  if (typeof value === "object" && value !== null) {
    if ("atLeast" in value) return `${numberText(field, value.atLeast)} or more`;
    if ("value" in value) return numberText(field, value.value);
  }
  return numberText(field, value);
}

function numberText(field: string, value: unknown): string {
  return typeof value === "number" && field.endsWith("In") ? plainFormats.inches(value) : String(value);
}
