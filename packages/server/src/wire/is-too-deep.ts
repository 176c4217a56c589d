import { deepest } from "./deepest.ts";

const quote = 0x22;
const backslash = 0x5c;
const openers: ReadonlySet<number> = new Set([0x5b, 0x7b]);
const closers: ReadonlySet<number> = new Set([0x5d, 0x7d]);

/** Whether lists and objects stand too deep within one another in a JSON text; brackets within a text do not count. */
export function isTooDeep(text: string): boolean {
  let depth = 0;
  let isQuoted = false;
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (isQuoted && code === backslash) at += 1;
    else if (code === quote) isQuoted = !isQuoted;
    else if (isQuoted) continue;
    else if (openers.has(code)) depth += 1;
    else if (closers.has(code)) depth -= 1;
    if (depth > deepest) return true;
  }
  return false;
}
