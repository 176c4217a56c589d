import { deepest } from "../wire/deepest.ts";

/** Finds the line each value of a JSON text begins in, by its path (`parts.3.tip`), or where reading has to stop. */
export interface JsonLines {
  readonly lines: ReadonlyMap<string, number>;
  /** Where reading stopped, when the text is not JSON or goes too deep. */
  readonly brokenAt?: {
    readonly line: number;
    readonly character: number;
    readonly got: string;
    readonly expected: string;
  };
}

class Broken extends Error {
  readonly expected: string;
  constructor(expected = "JSON") {
    super();
    this.expected = expected;
  }
}

/** The value tokens of RFC 8259 that have no others inside; control characters within a text are caught apart. */
const scalar =
  /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null|"(?:[^"\\]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;
const blank = /[ \t\r\n]*/y;

/** Lines of longer paths are not kept, and no more values read: a text of a few MB could fill the memory with them. */
const pathMost = 300;
const valuesMost = 1_000_000;

export function jsonLines(text: string): JsonLines {
  const reader = new JsonReader(text);
  try {
    reader.value("");
    reader.end();
    return { lines: reader.lines };
  } catch (error) {
    if (!(error instanceof Broken)) throw error;
    return { lines: reader.lines, brokenAt: { ...reader.here(), expected: error.expected } };
  }
}

class JsonReader {
  readonly lines = new Map<string, number>();
  readonly #text: string;
  #at = 0;
  #line = 1;
  #counted = 0;
  #depth = 0;
  #values = 0;

  constructor(text: string) {
    this.#text = text;
  }

  value(path: string): void {
    this.#skip(blank);
    // What goes without a line is told with that of what it stands in.
    if (path.length <= pathMost) this.lines.set(path, this.#lineHere());
    this.#values += 1;
    if (this.#values > valuesMost) throw new Broken(`at most ${valuesMost} values`);
    if (this.#take("{")) this.#members("}", path, () => this.#name());
    else if (this.#take("[")) this.#members("]", path, (count) => String(count));
    else this.#scalar();
  }

  end(): void {
    this.#skip(blank);
    if (this.#at < this.#text.length) throw new Broken();
  }

  here(): { line: number; character: number; got: string } {
    const lineStart = this.#text.lastIndexOf("\n", this.#at - 1) + 1;
    const got =
      this.#at >= this.#text.length
        ? "the end of the text"
        : JSON.stringify(this.#text.slice(this.#at, this.#at + 20));
    return { line: this.#lineHere(), character: this.#at - lineStart + 1, got };
  }

  #members(close: string, path: string, key: (count: number) => string): void {
    this.#depth += 1;
    if (this.#depth > deepest) throw new Broken(`JSON at most ${deepest} lists and objects deep`);
    this.#list(close, path, key);
    this.#depth -= 1;
  }

  #list(close: string, path: string, key: (count: number) => string): void {
    this.#skip(blank);
    if (this.#take(close)) return;
    const names = close === "}" ? new Set<string>() : undefined;
    for (let count = 0; ; count += 1) {
      const name = key(count);
      if (names?.has(name)) throw new Broken("each name once in an object");
      names?.add(name);
      this.value(path.length > pathMost ? path : path === "" ? name : `${path}.${name}`);
      this.#skip(blank);
      if (this.#take(close)) return;
      if (!this.#take(",")) throw new Broken();
    }
  }

  #name(): string {
    this.#skip(blank);
    const start = this.#at;
    if (this.#text[start] !== '"') throw new Broken();
    this.#scalar();
    const name = JSON.parse(this.#text.slice(start, this.#at)) as string;
    this.#skip(blank);
    if (!this.#take(":")) throw new Broken();
    return name;
  }

  #scalar(): void {
    const start = this.#at;
    if (!this.#skip(scalar)) throw new Broken();
    for (let at = start; at < this.#at; at += 1) {
      if (this.#text.charCodeAt(at) >= 0x20) continue;
      this.#at = at;
      throw new Broken();
    }
  }

  #take(character: string): boolean {
    if (this.#text[this.#at] !== character) return false;
    this.#at += 1;
    return true;
  }

  #skip(pattern: RegExp): boolean {
    pattern.lastIndex = this.#at;
    if (!pattern.test(this.#text)) return false;
    this.#at = pattern.lastIndex;
    return true;
  }

  #lineHere(): number {
    for (; this.#counted < this.#at; this.#counted += 1)
      if (this.#text[this.#counted] === "\n") this.#line += 1;
    return this.#line;
  }
}
