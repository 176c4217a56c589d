import { describe, expect, it } from "vitest";
import { findPhrases, pattern } from "./phrases.ts";

const phrases = [
  { pattern: pattern`\bcold\s+iron\b`, value: null },
  { pattern: pattern`\b(\d)\s*iron\b`, value: (match: RegExpExecArray) => `${match[1]}` },
  { pattern: pattern`\biron\b`, value: "iron" },
  { pattern: pattern`\bnumber\s+(?<at>\d)\b`, value: "number" },
];

describe("findPhrases", () => {
  it("lets the first phrase claim its words, yields nothing for a trap, and answers from left to right", () => {
    expect(findPhrases("iron, cold iron, 7 iron", phrases)).toEqual([
      { value: "iron", start: 0, end: 4 },
      { value: "7", start: 17, end: 23 },
    ]);
  });

  it("answers with the place of the group named at", () => {
    expect(findPhrases("number 5", phrases)).toEqual([{ value: "number", start: 7, end: 8 }]);
  });
});
