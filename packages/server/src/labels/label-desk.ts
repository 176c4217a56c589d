import { type FoundCode, findByCode, type Joint, type Part, type PartKind, shortCode } from "@ferrule/core";
import { done, type Outcome, problem } from "../errors.ts";
import type { Placed } from "../store/document-table.ts";
import type { LabelSetup } from "../store/labels.ts";
import type { Tables } from "../store/tables.ts";

/** The label of a thing on the bench: of a part, or of parts that are joined, which go by the code of the first of them. */
interface Label {
  readonly code: string;
  readonly part: string;
  /** What else is joined to it. */
  readonly joined: readonly string[];
  readonly printed: boolean;
}

/**
 * Codes of parts, and their labels. A part's code is made of its place in the order of the bench, which it keeps for good: it is
 * never given to another, and a part whose delete is undone is put back there.
 */
export interface LabelDesk {
  /** Of everything that is not sold, in the order of the bench. */
  labels(): Label[];
  setup(): LabelSetup;
  changeSetup(setup: LabelSetup): LabelSetup;
  /** Notes which labels have been printed, or that they have not been. */
  markPrinted(codes: readonly string[], printed: boolean): Outcome<Label[]>;
  codes(): ReadonlyMap<string, string>;
  find(text: string): FoundCode;
}

export function openLabelDesk(tables: Tables): LabelDesk {
  const labels = () => labelsOf(tables);
  return {
    labels,
    setup: () => tables.labels.setup(),
    changeSetup: (setup) => {
      tables.together(() => tables.labels.writeSetup(setup), { what: "labels-changed" });
      return setup;
    },
    markPrinted: (codes, printed) =>
      tables.together(
        () => {
          const places = new Map(tables.parts.all().map(({ place }) => [shortCode(place), place]));
          const lost = codes.find((code) => !places.has(code));
          if (lost !== undefined) return problem("not-found", `Nothing on the bench has the code "${lost}"`);
          const marked = new Set(tables.labels.printed());
          for (const code of codes) marked[printed ? "add" : "delete"](places.get(code) as number);
          tables.labels.writePrinted(marked);
          return done(labels());
        },
        { what: "labels-printed" },
      ),
    codes: () => codesOf(tables),
    find: (text) => findByCode(text, codesOf(tables)),
  };
}

/** The ids of parts by their codes. */
function codesOf(tables: Tables): ReadonlyMap<string, string> {
  return new Map(tables.parts.all().map(({ place, value }) => [shortCode(place), value.id]));
}

const leads: readonly PartKind[] = ["head", "shaft", "adapter", "grip", "cover", "wrench"];

function labelsOf(tables: Tables): Label[] {
  const printed = tables.labels.printed();
  const unsold = tables.parts.all().filter(({ value }) => value.soldOn === undefined);
  const joints = tables.joints.all().map(({ value }) => value);
  return thingsOf(unsold, joints).map(([lead, ...rest]) => ({
    code: shortCode(lead.place),
    part: lead.value.id,
    joined: rest.map(({ value }) => value.id),
    printed: printed.has(lead.place),
  }));
}

type Thing = readonly [Placed<Part>, ...Placed<Part>[]];

/** Parts together with what they are joined to, a head before all else. */
function thingsOf(parts: readonly Placed<Part>[], joints: readonly Joint[]): Thing[] {
  const byId = new Map(parts.map((part) => [part.value.id, part]));
  const seen = new Set<string>();
  return parts.flatMap(({ value: { id } }) => {
    if (seen.has(id)) return [];
    const ids = reached(id, joints, seen);
    const things = ids.flatMap((each) => byId.get(each) ?? []);
    const rank = ({ value }: Placed<Part>) => leads.indexOf(value.kind);
    const [lead, ...rest] = things.sort((one, other) => rank(one) - rank(other));
    return lead ? [[lead, ...rest] as const] : [];
  });
}

function reached(from: string, joints: readonly Joint[], seen: Set<string>): string[] {
  const ids = [from];
  seen.add(from);
  for (const id of ids) {
    for (const { parts } of joints) {
      if (!parts.includes(id)) continue;
      for (const other of parts) if (!seen.has(other)) ids.push(other);
      for (const other of parts) seen.add(other);
    }
  }
  return ids;
}
