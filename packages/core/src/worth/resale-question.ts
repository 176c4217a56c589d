import type { Subject } from "./evidence.ts";

const kindWords: Readonly<Record<Subject["kind"], string>> = {
  club: "complete club",
  head: "head",
  adapter: "adapter",
  shaft: "shaft",
  grip: "grip",
  cover: "head cover",
  wrench: "wrench",
};

/** A thing in words, with its article: "a right-handed Northmoor Quillon driver head". */
function inWords(subject: Subject): string {
  const { hand, maker, model, flex, clubType, clubNumber, kind, adapter } = subject;
  const words = [
    hand ? `${hand}-handed` : null,
    maker,
    model,
    kind === "shaft" ? flex : null,
    clubType === "fairway" ? "fairway wood" : clubType,
    kind === "club" && clubType ? null : kindWords[kind],
    clubNumber ? `(${clubNumber})` : null,
    kind === "shaft" && adapter ? (adapter === "fitted" ? "with its adapter" : "without an adapter") : null,
  ].filter((word) => word !== null && word !== undefined && word !== "");
  const phrase = words.join(" ");
  return `${/^[aeiou]/iu.test(phrase) ? "an" : "a"} ${phrase}`;
}

/** Asks for one price, since there is nothing to go by; names the currencies whose prices had to be left out. */
export function resaleQuestion(subject: Subject, withoutRate: readonly string[]): string {
  const question = `What would ${inWords(subject)} sell for? Note one price you have seen, asked or paid.`;
  if (withoutRate.length === 0) return question;
  return `${question} Prices in ${withoutRate.join(" and ")} were left out, since no rate for them is typed in.`;
}
