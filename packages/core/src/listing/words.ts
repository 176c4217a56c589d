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
    // Letters that no accent makes, so that folding leaves them.
    ["o", "øœ"],
    ["a", "æ"],
    ["l", "ł"],
    ["d", "đð"],
    ["s", "ß"],
  ].flatMap(([plain, forms]) => [...(forms ?? "")].map((form) => [form, plain ?? ""] as const)),
);

/** One character in its plain form, always as many UTF-16 units as it had. */
function plainCharacter(character: string): string {
  if (character >= "!" && character <= "~") return character.toLowerCase();
  if (character === "\n") return "\n";
  if (/\s/u.test(character)) return " ".repeat(character.length);
  const known = singleCharacters.get(character.toLowerCase());
  if (known !== undefined) return known;
  // Compatibility forms (fullwidth letters, superscripts) and accents fold to their base letter; ½ and the like stay one sign.
  const folded = /[¼-¾⅐-⅞£€¥¢°]/u.test(character)
    ? character
    : character.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
  if (folded.length === character.length && !/[\p{Extended_Pictographic}\p{C}]/u.test(folded)) return folded;
  return " ".repeat(character.length);
}

const tokensOf = (plain: string): Token[] =>
  Array.from(plain.matchAll(/\S+/gu), ({ 0: found, index }) => ({
    plain: found,
    start: index,
    end: index + found.length,
  }));

/** Words whose tokens are found when first asked for: few readers ask. */
function wordsOf(text: string, plain: string): Words {
  let tokens: Token[] | null = null;
  return {
    text,
    plain,
    get tokens() {
      tokens ??= tokensOf(plain);
      return tokens;
    },
  };
}

const plainOf = (text: string): string => Array.from(text, plainCharacter).join("");

/** Prepares a text for the small readers. */
export function prepareWords(text: string): Words {
  return wordsOf(text, plainOf(text));
}

/** Words of which no two blanks follow one another, with the way back: `places[i]` is where character `i` stands in the whole text. */
export interface SqueezedWords extends Words {
  readonly places: readonly number[];
}

/** Prepares a text and leaves out every blank that follows a blank or a line break, so that spacing cannot change a reading. */
export function squeezeWords(whole: string): SqueezedWords {
  const plain = plainOf(whole);
  const places: number[] = [];
  const characters: string[] = [];
  let last = "\n";
  for (let place = 0; place < plain.length; place += 1) {
    const character = plain[place] as string;
    if (character === " " && (last === " " || last === "\n")) continue;
    places.push(place);
    characters.push(character);
    last = character;
    if (character !== "," && character !== ";") continue;
    // "driver,12deg,RH": a comma that is not inside a number has a blank behind it.
    const inNumber = /\d/u.test(plain[place - 1] ?? "") && /\d/u.test(plain[place + 1] ?? "");
    if (inNumber || /[\s-]/u.test(plain[place + 1] ?? " ")) continue;
    places.push(place);
    characters.push(" ");
    last = " ";
  }
  const text = places.map((place, at) => (characters[at] === " " ? " " : whole[place])).join("");
  return Object.assign(wordsOf(text, characters.join("")), { places });
}

/**
 * The same words with some of them covered, so that no reader takes them for something else: by blanks, or by a letter, so
 * that a word is still seen to stand there.
 */
export function maskWords(words: Words, spans: readonly { start: number; end: number }[], by = " "): Words {
  if (spans.length === 0) return words;
  const characters = words.plain.split("");
  for (const { start, end } of spans)
    for (let place = start; place < end; place += 1) if (characters[place] !== "\n") characters[place] = by;
  return wordsOf(words.text, characters.join(""));
}
