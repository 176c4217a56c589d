import { writtenReading } from "../measure/part-reading.ts";
import type { Part } from "../parts/part.ts";
import { titleOfPart } from "../worth/titles.ts";
import { ofPart, type SaleFact, type SaleLine } from "./sale-line.ts";
import { plainNumber, saleSourceWords } from "./sale-words.ts";

interface Detail {
  readonly words: string;
  readonly field: string;
}

/** What each part is, in its own line: its name and what is written of it, each figure with where it is from. */
export function partLines(parts: readonly Part[]): readonly SaleLine[] {
  return parts.filter(isMade).map((part) => {
    const details = detailsOf(part);
    const name = titleOfPart(part);
    const words = [`${capital(part.kind)}: ${name}`, ...details.map((detail) => detail.words)];
    const from = details.map(({ field }): SaleFact => ofPart(part.id, field));
    return { text: words.join(", "), from: [ofPart(part.id, "kind"), ...namedBy(part), ...from] };
  });
}

/** Covers and wrenches come with a thing and are told apart. */
const isMade = ({ kind }: Part) => kind !== "cover" && kind !== "wrench";

const capital = (word: string) => word.charAt(0).toUpperCase() + word.slice(1);

function namedBy(part: Part): SaleFact[] {
  return (["maker", "model", "clubType", "clubNumber"] as const)
    .filter((field) => (part as Record<string, unknown>)[field] !== undefined)
    .map((field) => ofPart(part.id, field));
}

function detailsOf(part: Part): readonly Detail[] {
  const said = (field: string, words: string | undefined): Detail[] =>
    words === undefined ? [] : [{ field, words }];
  const year = said("year", part.year === undefined ? undefined : String(part.year));
  switch (part.kind) {
    case "head":
      return [
        ...said("hand", part.hand && `${part.hand}-handed`),
        ...figure(part, "loftDeg", "loft", "°"),
        ...figure(part, "lieDeg", "lie", "°"),
        ...figure(part, "massG", "mass", " g"),
        ...year,
      ];
    case "shaft":
      return [
        ...said("flex", part.flex && `flex ${part.flex}`),
        ...said("material", part.material && materialWords[part.material]),
        ...figure(part, "massG", "mass", " g"),
        ...figure(part, "tip.diameterIn", "tip", " in"),
        ...year,
      ];
    case "adapter":
      return [
        ...said("family", part.family && `family ${part.family}`),
        ...said("hand", part.hand && handWords[part.hand]),
        ...said(
          "settings",
          part.settings && `settings ${part.settings.map(({ label }) => label).join(", ")}`,
        ),
      ];
    case "grip":
      return [
        ...figure(part, "massG", "mass", " g"),
        ...figure(part, "coreDiameterIn", "core", " in"),
        ...year,
      ];
    default:
      return [];
  }
}

const materialWords = { graphite: "graphite", steel: "steel", multi: "graphite and steel" } as const;
const handWords = { right: "right-handed", left: "left-handed", either: "for either hand" } as const;

function figure(
  part: Exclude<Part, { kind: "cover" | "wrench" }>,
  field: string,
  word: string,
  unit: string,
): Detail[] {
  const reading = writtenReading(part, field);
  if (reading === undefined) return [];
  const words = `${word} ${plainNumber(reading.value, 4)}${unit} (${saleSourceWords[reading.source]})`;
  return [{ field, words }];
}
