import { loneSurrogateAt } from "../wire/lone-surrogate.ts";
import { type Entry, type ReadText, type RowRefusal, thingsMost, tooManyThings } from "./entry.ts";
import { jsonLines } from "./json-lines.ts";

/** What one kind of JSON file holds. */
export interface JsonShape {
  /** Fields that are lists of things; the first is what a bare list is taken for. */
  readonly lists: readonly [string, ...string[]];
  /** Fields that are one thing. */
  readonly single: readonly string[];
  readonly expected: string;
}

export const benchShape: JsonShape = {
  lists: ["parts", "joints", "claims"],
  single: ["goal"],
  expected: "an object with parts, joints, claims and goal, as the export writes it, or a list of parts",
};

/** Reads things as JSON, each list under its name. */
export function readJson(text: string, shape: JsonShape): ReadText {
  const read = readWhole(text, shape);
  return read.entries.length + read.refused.length > thingsMost ? refusedWhole(tooManyThings()) : read;
}

function readWhole(text: string, shape: JsonShape): ReadText {
  const { lines, brokenAt } = jsonLines(text.replace(/^\ufeff/, ""));
  if (brokenAt)
    return refusedWhole({
      line: brokenAt.line,
      column: `character ${brokenAt.character}`,
      got: brokenAt.got,
      expected: brokenAt.expected,
    });
  const whole: unknown = JSON.parse(text.replace(/^\ufeff/, ""));
  const broken = loneSurrogateAt(text, whole);
  if (broken !== undefined)
    return refusedWhole({
      line: lineAt(lines, broken),
      column: broken,
      got: "half a character (a lone surrogate)",
      expected: "whole characters",
    });
  const lineOf = (path: string) => lineAt(lines, path);
  if (Array.isArray(whole)) return { entries: entriesOf(shape.lists[0], whole, "", lineOf), refused: [] };
  if (typeof whole !== "object" || whole === null) {
    return refusedWhole({
      line: 1,
      column: "(the whole text)",
      got: shortJson(whole),
      expected: shape.expected,
    });
  }
  return readLists(whole as Record<string, unknown>, shape, lineOf);
}

function refusedWhole(refusal: RowRefusal): ReadText {
  return { entries: [], refused: [refusal] };
}

function readLists(
  whole: Record<string, unknown>,
  { lists, single, expected }: JsonShape,
  lineOf: (path: string) => number,
): ReadText {
  const entries: Entry[] = [];
  const refused: RowRefusal[] = [];
  for (const [name, value] of Object.entries(whole)) {
    const list = lists.find((known) => known === name);
    if (single.includes(name))
      entries.push({
        list: name,
        value,
        lineOf: (field) => lineOf(`${name}.${field}`),
      });
    else if (list === undefined)
      refused.push({
        line: lineOf(name),
        column: name,
        got: "a field we do not know",
        expected,
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
