const vulgar: ReadonlyMap<string, number> = new Map([
  ["¼", 1 / 4],
  ["½", 1 / 2],
  ["¾", 3 / 4],
  ["⅛", 1 / 8],
  ["⅜", 3 / 8],
  ["⅝", 5 / 8],
  ["⅞", 7 / 8],
  ["⅓", 1 / 3],
  ["⅔", 2 / 3],
]);

const units = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];
const teens = [
  "ten",
  "eleven",
  "twelve",
  "thirteen",
  "fourteen",
  "fifteen",
  "sixteen",
  "seventeen",
  "eighteen",
  "nineteen",
];
const tens: readonly (readonly [string, number])[] = [
  ["twenty", 20],
  ["thirty", 30],
  ["fourty", 40],
  ["forty", 40],
  ["fifty", 50],
  ["sixty", 60],
];
const saidFractions: readonly (readonly [string, number])[] = [
  ["a half", 0.5],
  ["half", 0.5],
  ["three quarters", 0.75],
  ["three-quarters", 0.75],
  ["a quarter", 0.25],
];

const small: readonly (readonly [string, number])[] = [
  ...units.map((word, place) => [word, place + 1] as const),
  ...teens.map((word, place) => [word, place + 10] as const),
];
const wordValues: ReadonlyMap<string, number> = new Map([...small, ...tens]);

const signs = [...vulgar.keys()].join("");
const andFraction = `(?:\\s*(?:&|and|\\+)\\s*(?:${saidFractions.map(([words]) => words.replaceAll(" ", "\\s+")).join("|")}))`;
const inFigures = `\\d{1,4}(?:[.,]\\d{1,3}(?!\\d)|\\s?[${signs}]|(?:\\s*(?:&|and)\\s*|[\\s-])[1-9]\\d?[/⁄](?:2|3|4|8|16)(?!\\d)|${andFraction})?`;
const inWords = `(?:(?:${tens.map(([word]) => word).join("|")})(?:[\\s-]*(?:${units.join("|")}))?|${small
  .map(([word]) => word)
  .sort((one, other) => other.length - one.length)
  .join("|")})${andFraction}?`;

/** The source of a pattern for a number in figures: "44.5", "44,5", "44½", "44 1/2", "44 and a half". Not part of a longer number. */
export const figures = `(?<![\\d./${signs}]|\\d,)${inFigures}(?![\\d${signs}]|[.,/⁄]\\d)`;

/** The source of a pattern for a number in figures or in English words: "forty-four and a half". */
export const figuresOrWords = `(?:${figures}|\\b${inWords})`;

function fractionOf(text: string): number {
  const sign = vulgar.get(text.slice(-1));
  if (sign !== undefined) return sign;
  const written = /([1-9]\d?)[/⁄](\d{1,2})$/.exec(text);
  if (written) return Number(written[1]) / Number(written[2]);
  const words = text.replace(/\s+/g, " ");
  return saidFractions.find(([said]) => words.endsWith(said))?.[1] ?? 0;
}

function wordsValue(text: string): number {
  const said = text.match(/[a-z]+/g) ?? [];
  const whole = said.slice(0, 2).map((word) => wordValues.get(word) ?? 0);
  // "forty five" is a ten and a unit; of "ten and a half" the second word is not a number.
  return (whole[0] ?? 0) + ((whole[0] ?? 0) >= 20 ? (whole[1] ?? 0) : 0);
}

/** The value of words that `figures` or `figuresOrWords` matched; a fraction is added, a decimal comma is a point. */
export function numberOf(text: string): number {
  const decimal = /^\d{1,4}[.,]\d{1,3}$/.test(text);
  if (decimal) return Number(text.replace(",", "."));
  const whole = /^\d{1,4}/.exec(text);
  return (whole ? Number(whole[0]) : wordsValue(text)) + fractionOf(text);
}
