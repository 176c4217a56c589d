import type { Estimates } from "../measure/estimate.ts";
import type { Joint } from "../parts/joint.ts";
import type { Part } from "../parts/part.ts";
import type { Evidence } from "../worth/evidence.ts";
import type { Resale } from "../worth/resale.ts";
import { titleOfClub, titleOfPart } from "../worth/titles.ts";
import type { Clearance } from "./clearance.ts";
import type { Inspection } from "./inspection.ts";
import type { Measurement } from "./measurement.ts";
import { photoChecklist } from "./photo-checklist.ts";
import { type PriceSuggestion, priceSuggestion } from "./price-suggestion.ts";
import { type SafetyStop, safetyStops } from "./safety-stops.ts";
import { conditionLines } from "./sale-condition.ts";
import { ofPart, type SaleFact, type SaleLine } from "./sale-line.ts";
import { partLines } from "./sale-parts.ts";
import { specLines } from "./sale-specs.ts";
import { fillSaleTemplate, type SalePlaceholder, type SaleTemplate } from "./sale-template.ts";
import { unknownLines } from "./sale-unknown.ts";
import { priceWords } from "./sale-words.ts";

/** All that a description may draw on: what is not in here is not said. */
export interface SaleInput {
  /** Everything that goes for one price, covers and wrenches included. */
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  /** The last time that exactly this club was measured. */
  readonly measurement?: Measurement;
  readonly estimates?: Estimates;
  readonly inspections: readonly Inspection[];
  readonly clearances: readonly Clearance[];
  readonly resale: Resale;
  readonly evidence: readonly Evidence[];
  readonly template: SaleTemplate;
}

/** A draft of what to write, as lines that each rest on facts of the bench, and as one text in the user's template. */
export interface SaleDescription {
  readonly title: SaleLine;
  readonly parts: readonly SaleLine[];
  readonly measures: readonly SaleLine[];
  readonly condition: readonly SaleLine[];
  readonly extras: readonly SaleLine[];
  readonly unknown: readonly SaleLine[];
  readonly price: PriceSuggestion;
  readonly photos: readonly string[];
  readonly text: string;
}

/** A draft, or the faults of safety that keep one from being written. */
export type SaleAnswer =
  | { readonly ok: true; readonly description: SaleDescription }
  | { readonly ok: false; readonly stops: readonly SafetyStop[] };

/**
 * An honest draft for the parts that go together. Nothing is said that no fact of the bench says; what nobody knows is said to
 * be not known. A standing fault of safety stops it.
 */
export function saleDescription(input: SaleInput): SaleAnswer {
  const stops = safetyStops(input.parts);
  if (stops.length > 0) return { ok: false, stops };
  const { parts, measurement, estimates, resale, evidence } = input;
  const isClub = find(parts, "head") !== undefined && find(parts, "shaft") !== undefined;
  const specs = isClub ? specLines(measurement, estimates) : { lines: [], notMeasured: [] };
  const sections = {
    title: titleLine(parts),
    parts: [...builtLines(measurement), ...partLines(parts), ...joinedLines(input)],
    measures: specs.lines,
    condition: conditionLines(parts, input),
    extras: extraLines(parts),
    unknown: unknownLines(parts, specs.notMeasured),
    price: priceSuggestion(resale, evidence),
    photos: photoChecklist(parts),
  };
  return {
    ok: true,
    description: { ...sections, text: fillSaleTemplate(input.template, valuesOf(sections)) },
  };
}

function find<K extends Part["kind"]>(parts: readonly Part[], kind: K) {
  return parts.find((part): part is Extract<Part, { kind: K }> => part.kind === kind);
}

function titleLine(parts: readonly Part[]): SaleLine {
  const [head, shaft] = [find(parts, "head"), find(parts, "shaft")];
  const chief = head ?? shaft ?? parts[0];
  if (!chief) throw new Error("a sale without parts has no title");
  const name = head && shaft ? titleOfClub(head, shaft) : titleOfPart(chief);
  const hand = head?.hand ? `, ${head.hand}-handed` : "";
  return { text: capital(`${name}${hand}`), from: [ofPart(chief.id, "kind"), ...rest(chief, shaft)] };
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** What the names in a title were read from: only what is written of the parts. */
function rest(chief: Part, shaft: Part | undefined): SaleFact[] {
  const written = (part: Part) =>
    ["maker", "model", "clubType", "clubNumber", "hand", "flex"].filter(
      (field) => (part as Record<string, unknown>)[field] !== undefined,
    );
  const named = (part: Part) => written(part).map((field) => ofPart(part.id, field));
  return [...named(chief), ...(shaft && shaft !== chief ? named(shaft) : [])];
}

function builtLines(measurement: Measurement | undefined): SaleLine[] {
  if (!measurement?.built) return [];
  const from: SaleFact = { of: "measurement", measurement: measurement.id, quantity: "built" };
  return [{ text: `Put together from these parts on our bench by ${measurement.on}`, from: [from] }];
}

const jointWords = { screwed: "screwed together", bonded: "glued together", gripped: "gripped" } as const;

/** What stands joined among the parts that go. */
function joinedLines({ parts, joints }: SaleInput): SaleLine[] {
  const known = new Map(parts.map((part) => [part.id, part]));
  return joints.flatMap(({ type, parts: [one, other] }): SaleLine[] => {
    const [a, b] = [known.get(one), known.get(other)];
    if (!a || !b) return [];
    const text = `${capital(a.kind)} and ${b.kind} are ${jointWords[type]}`;
    return [{ text, from: [{ of: "joint", parts: [one, other] }] }];
  });
}

/** All that goes is known, so a cover or a wrench that is not there does not come with it. */
function extraLines(parts: readonly Part[]): SaleLine[] {
  const head = find(parts, "head");
  const from: SaleFact = { of: "offer", parts: parts.map(({ id }) => id) };
  const line = (text: string): SaleLine => ({ text, from: [from] });
  const wantsCover = head?.clubType !== undefined && !["iron", "wedge"].includes(head.clubType);
  const wantsWrench = head?.socket?.type === "receiver";
  return [
    ...(find(parts, "cover") ? [line("head cover")] : wantsCover ? [line("no head cover")] : []),
    ...(find(parts, "wrench") ? [line("wrench")] : wantsWrench ? [line("no wrench")] : []),
  ];
}

type Sections = Omit<SaleDescription, "text">;

function valuesOf(sections: Sections): Record<SalePlaceholder, string> {
  const list = (lines: readonly SaleLine[], none: string) =>
    lines.length === 0 ? none : lines.map(({ text }) => `- ${text}`).join("\n");
  const { price } = sections;
  return {
    title: sections.title.text,
    parts: list(sections.parts, "- nothing is said of it"),
    measures: list(sections.measures, "- none taken"),
    condition: list(sections.condition, "- nothing has been said of it"),
    extras: sections.extras.map(({ text }) => text).join(", ") || "nothing",
    unknown: list(sections.unknown, "- nothing that is usually asked"),
    price: price.known ? priceWords(price.suggested) : "ask",
  };
}
