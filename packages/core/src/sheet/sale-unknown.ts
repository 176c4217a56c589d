import type { Fault } from "../parts/fault.ts";
import type { Part, PartKind } from "../parts/part.ts";
import { titleOfPart } from "../worth/titles.ts";
import { ofPart, type SaleFact, type SaleLine } from "./sale-line.ts";
import { listWords, saleFaultWords } from "./sale-words.ts";

/** What buyers ask about each kind of part, by the field that would say it. */
const asked: Readonly<Record<PartKind, readonly (readonly [field: string, word: string])[]>> = {
  head: [
    ["loftDeg", "loft"],
    ["hand", "hand"],
    ["lieDeg", "lie"],
  ],
  shaft: [
    ["flex", "flex"],
    ["material", "material"],
    ["massG", "mass"],
  ],
  adapter: [["family", "family"]],
  grip: [["maker", "maker"]],
  cover: [],
  wrench: [],
};

/** Damage that a buyer would want to have been looked for. */
const looked: Readonly<Record<PartKind, readonly Fault[]>> = {
  head: ["crack", "caved-face", "rattle"],
  shaft: ["dent-shaft", "crease-shaft", "crack"],
  adapter: ["adapter-damaged", "crack"],
  grip: ["grip-worn"],
  cover: [],
  wrench: [],
};

/** What nobody has said, looked for or measured. */
export function unknownLines(parts: readonly Part[], notMeasured: readonly string[]): readonly SaleLine[] {
  const club = parts.map(({ id }): SaleFact => ofPart(id, "id"));
  const [first, ...rest] = club;
  return [
    ...parts.flatMap(fieldsUnknown),
    ...parts.flatMap(faultsUnknown),
    ...(notMeasured.length > 0 && first
      ? [{ text: `Not measured: ${listWords(notMeasured)}`, from: [first, ...rest] } as const]
      : []),
  ];
}

function fieldsUnknown(part: Part): SaleLine[] {
  const missing = asked[part.kind].filter(
    ([field]) => (part as Record<string, unknown>)[field] === undefined,
  );
  const [first, ...rest] = missing.map(([field]) => ofPart(part.id, field));
  if (!first) return [];
  const words = listWords(missing.map(([, word]) => word));
  return [{ text: `Not known of the ${titleOfPart(part)}: ${words}`, from: [first, ...rest] }];
}

function faultsUnknown(part: Part): SaleLine[] {
  const said = [...(part.faults ?? []), ...(part.deniedFaults ?? [])];
  const open = looked[part.kind].filter((fault) => !said.includes(fault));
  if (open.length === 0) return [];
  const words = listWords(open.map((fault) => saleFaultWords[fault].replace(/^an? /, "")));
  return [
    {
      text: `Nobody has said whether there is on the ${titleOfPart(part)}: ${words}`,
      from: [ofPart(part.id, "faults"), ofPart(part.id, "deniedFaults")],
    },
  ];
}
