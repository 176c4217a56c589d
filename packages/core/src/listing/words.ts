/** One run of characters without a blank, in the prepared text. */
export interface Token {
  readonly plain: string;
  readonly start: number;
  readonly end: number;
}

/**
 * A listing's text prepared for the small readers. `plain` has exactly the length of `text`, so an offset in one is the same
 * place in the other: letters are lower case, every kind of quote, dash, prime, fullwidth form and blank is its plain
 * ASCII form, what has none (emoji, a combining mark) is blanks. A line break stays a line break.
 */
export interface Words {
  readonly text: string;
  readonly plain: string;
  readonly tokens: readonly Token[];
}

const singleCharacters: ReadonlyMap<string, string> = new Map(
  [
    ["'", "‘’‛ʼ´`′ʹ"],
    ['"', "“”„‟″ʺ«»"],
    ["-", "‐‑‒–—―−"],
    ["x", "×✕✖"],
    ["°", "º˚"],
  ].flatMap(([plain, forms]) => [...(forms ?? "")].map((form) => [form, plain ?? ""] as const)),
);

/** One character in its plain form, always as many UTF-16 units as it had. */
function plainCharacter(character: string): string {
  if (character === "\n") return "\n";
  if (/\s/u.test(character)) return " ".repeat(character.length);
  const known = singleCharacters.get(character);
  if (known !== undefined) return known;
  // Compatibility forms (fullwidth letters, superscripts) and accents fold to their base letter; ½ and the like stay one sign.
  const folded = /[¼-¾⅐-⅞£€¥¢°]/u.test(character)
    ? character
    : character.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
  if (folded.length === character.length && !/[\p{Extended_Pictographic}\p{C}]/u.test(folded)) return folded;
  if (character === "ß") return "s";
  return " ".repeat(character.length);
}

/** Prepares a text for the small readers. */
export function prepareWords(text: string): Words {
  const plain = Array.from(text, plainCharacter).join("");
  const tokens = Array.from(plain.matchAll(/\S+/gu), ({ 0: found, index }) => ({
    plain: found,
    start: index,
    end: index + found.length,
  }));
  return { text, plain, tokens };
}
