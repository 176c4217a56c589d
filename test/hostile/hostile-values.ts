import { RawJson } from "./json-text.ts";

/** Numbers as JSON can write them and programs stumble over them (RFC 8259, 6, and what is outside of it). */
export const hostileNumbers: readonly RawJson[] = [
  ...["1e308", "-1e308", "1e309", "1e400", "-1e999", "5e-324", "-0", "-0.0", "0.1e-400", "9007199254740993"],
  ...["18446744073709551616", "123456789012345678901234567890", "1.7976931348623157e308", "-1", "1.5", "1E5"],
  ...["NaN", "Infinity", "-Infinity", "0x10", "1_000", "01", "+1", ".5", "1.", "undefined"],
].map((text) => new RawJson(text));

/** Texts that are written to become something else: markup, commands, formulas, names of properties, other orders of words. */
export const hostileTexts: readonly string[] = [
  ...["", " ", "\t\r\n", "\u0000", "a\u0000b", "\u0007\u001b[31m\u007f", "\u0085\u2028\u2029", "\ufeff"],
  ...[
    "\u202egnp.exe",
    "\u2066a\u2069\u2067b",
    "e\u0301".repeat(200),
    "\ud800",
    "\udc00x",
    "a\ud83d",
    "\uffff",
  ],
  ...["__proto__", "constructor", "prototype", "toString", "hasOwnProperty", "length", "then", "toJSON"],
  ...["<img src=x onerror=alert(1)>", "</script><script>alert(1)</script>", "{{7*7}}", "`id`"],
  ...["=1+1", "@SUM(A1)", "+1", "-2+3", "'=1", "\t=1", "=cmd|' /C calc'!A0", "\uff1d1"],
  ...[
    "' OR '1'='1",
    "'; DROP TABLE parts; --",
    '"',
    "\\",
    "\\u0000",
    "%00",
    "%s%n",
    "../../etc/passwd",
    "/",
    ".",
  ],
  ...[
    "null",
    "undefined",
    "NaN",
    "true",
    "0",
    "1e400",
    "[object Object]",
    "2026-02-30",
    "9999-12-31",
    "0000-00-00",
  ],
  ...[
    "h1+a1+s1",
    "h1+h1+h1",
    "+",
    "h1 ".repeat(40),
    "\u{1f3cc}".repeat(40),
    "x".repeat(81),
    "x".repeat(5000),
  ],
];

/** Long enough to find what grows with the square of a text. */
export const longTexts: readonly string[] = [
  "x".repeat(200_000),
  "(".repeat(50_000),
  " ".repeat(100_000),
  "\n".repeat(100_000),
  "9".repeat(100_000),
  "a ".repeat(50_000),
  "\u202e".repeat(50_000),
  "10.5 degrees, 35 EUR, ".repeat(4000),
];

/** Names that lead a careless program to what all objects have. */
export const hostileNames: readonly string[] = [
  ...["__proto__", "constructor", "prototype", "toString", "valueOf", "hasOwnProperty", "toJSON", "then", ""],
  ...["id", "kind", "\u0000", "a.b", "0", "-1", "\ud800", "$ref", "x".repeat(500)],
];

/** Lists and objects deeper than anything of ours, as text. */
export const deepJson: readonly RawJson[] = [
  new RawJson("[".repeat(99) + "]".repeat(99)),
  new RawJson("[".repeat(20_000) + "]".repeat(20_000)),
  new RawJson(`${'{"a":'.repeat(20_000)}1${"}".repeat(20_000)}`),
];

/** Values of a kind that nobody asked for. */
export const wrongKinds: readonly unknown[] = [
  ...[null, true, false, 0, -1, 1.5, "text", [], {}, [[]], [null], [{}], { value: {} }],
  ...[
    { value: "1", plusMinus: -1 },
    { value: 1, plusMinus: new RawJson("1e400") },
    { $ref: "#" },
    { length: 5 },
  ],
];

/** The text with a sign in the place of every half character, which no address can hold. */
export function wellFormed(text: string): string {
  return text.replace(/\p{Surrogate}/gu, "\ufffd");
}
