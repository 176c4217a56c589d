import { wrapped } from "./wrapped.ts";

/** Sentences one below the other under a title; nothing where there are none. */
export function bullets(title: string, texts: Iterable<string>, width: number): string[] {
  const lines = [...texts].flatMap((text) => wrapped(text, { width, first: "  - ", rest: "    " }));
  return lines.length === 0 ? [] : ["", title, ...lines];
}
