import type { Entry, ReadText, RowRefusal } from "./entry.ts";
import { jsonLines } from "./json-lines.ts";

const lists = ["parts", "joints", "claims"] as const;
const wholeExpected =
  "an object with parts, joints, claims and goal, as the export writes it, or a list of parts";

/** Reads a bench as the JSON export writes it; a bare list is taken for its parts. */
export function readJson(text: string): ReadText {
  const { lines, brokenAt } = jsonLines(text.replace(/^\ufeff/, ""));
  if (brokenAt)
    return refusedWhole({
      line: brokenAt.line,
      column: `character ${brokenAt.character}`,
      got: brokenAt.got,
      expected: brokenAt.expected,
    });
  const whole: unknown = JSON.parse(text.replace(/^\ufeff/, ""));
  const lineOf = (path: string) => lineAt(lines, path);
  if (Array.isArray(whole)) return { entries: entriesOf("parts", whole, "", lineOf), refused: [] };
  if (typeof whole !== "object" || whole === null) {
    return refusedWhole({
      line: 1,
      column: "(the whole text)",
      got: shortJson(whole),
      expected: wholeExpected,
    });
  }
  return readBench(whole as Record<string, unknown>, lineOf);
}

function refusedWhole(refusal: RowRefusal): ReadText {
  return { entries: [], refused: [refusal] };
}

function readBench(whole: Record<string, unknown>, lineOf: (path: string) => number): ReadText {
  const entries: Entry[] = [];
  const refused: RowRefusal[] = [];
  for (const [name, value] of Object.entries(whole)) {
    const list = lists.find((known) => known === name);
    if (name === "goal")
      entries.push({
        list: "goal",
        value,
        lineOf: (field) => lineOf(`goal.${field}`),
      });
    else if (list === undefined)
      refused.push({
        line: lineOf(name),
        column: name,
        got: "a field we do not know",
        expected: wholeExpected,
      });
    else if (Array.isArray(value)) entries.push(...entriesOf(list, value, `${list}.`, lineOf));
    else
      refused.push({
        line: lineOf(name),
        column: name,
        got: shortJson(value),
        expected: "a list",
      });
  }
  return { entries, refused };
}

function entriesOf(
  list: Entry["list"],
  values: readonly unknown[],
  prefix: string,
  lineOf: (path: string) => number,
): Entry[] {
  return values.map((value, at) => ({
    list,
    value,
    lineOf: (field) => lineOf(`${prefix}${at}.${field}`),
  }));
}

/** The line of a path, or of the nearest thing around it when there is nothing there. */
function lineAt(lines: ReadonlyMap<string, number>, path: string): number {
  for (let at = path; at !== ""; at = at.slice(0, Math.max(0, at.lastIndexOf(".")))) {
    const line = lines.get(at);
    if (line !== undefined) return line;
  }
  return lines.get("") ?? 1;
}

function shortJson(value: unknown): string {
  const text = JSON.stringify(value);
  return text.length > 80 ? `${text.slice(0, 77)}…` : text;
}
