export interface WrapOptions {
  readonly width: number;
  /** Before the first line, and before each of the others. */
  readonly first?: string;
  readonly rest?: string;
}

/** Breaks running text into lines of at most a width where that can be done between words. */
export function wrapped(text: string, { width, first = "", rest = first }: WrapOptions): string[] {
  return text
    .split("\n")
    .flatMap((paragraph, at) => wrapOne(paragraph, width, at === 0 ? first : rest, rest));
}

function wrapOne(text: string, width: number, first: string, rest: string): string[] {
  const lines: string[] = [];
  let line = first;
  let isEmpty = true;
  for (const word of text.split(" ").filter((one) => one !== "")) {
    if (!isEmpty && line.length + 1 + word.length > width) {
      lines.push(line);
      line = rest;
      isEmpty = true;
    }
    line += isEmpty ? word : ` ${word}`;
    isEmpty = false;
  }
  return [...lines, line.trimEnd() === "" ? "" : line];
}
