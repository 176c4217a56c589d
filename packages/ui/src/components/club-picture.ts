import type { ClubType } from "@ferrule/core";
import { css, html, svg, type TemplateResult } from "lit";
import type { Role, RolePart } from "../plan/club-roles.ts";
import { kindWords } from "../words/part-words.ts";

export const clubPictureStyles = css`
  .clubs {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(19rem, 100%), 1fr));
    gap: 0.75rem 1.5rem;
  }
  figure {
    margin: 0;
    min-width: 0;
  }
  figcaption {
    font-size: 0.875rem;
    overflow-wrap: anywhere;
  }
  figure svg {
    display: block;
    width: 100%;
    max-width: 24rem;
    height: auto;
    color: var(--ink);
  }
  figure .body {
    fill: var(--ticket-2);
    stroke: currentColor;
    stroke-width: 1.8;
  }
  figure .bought {
    stroke-dasharray: 5 3;
  }
  figure .wanted {
    fill: none;
    stroke-dasharray: 1.5 3.5;
    stroke-linecap: round;
  }
  figure text {
    font: 12px var(--mono);
    fill: var(--ink);
  }
`;

const longestLabel = 14;

/** One club laid out from its grip to its head, each part with its name on the bench. Bought ones are dashed, wanted ones dotted, and both say so. */
export function clubPicture(parts: readonly RolePart[], words: TemplateResult): TemplateResult {
  const of = (role: Role) => parts.filter((part) => part.role === role);
  return html`<figure>
    <svg viewBox="0 0 320 84" role="img" aria-label=${spoken(parts)}>
      ${of("grip").map((part) => drawn(part, svg`<rect x="4" y="37" width="76" height="13" rx="5" class=${classOf(part)} />`, 4, 76, "start"))}
      ${of("shaft").map((part) => drawn(part, svg`<path d="M80 41h146v5H80z" class=${classOf(part)} />`, 150, 20, "middle"))}
      ${of("adapter").map((part) => drawn(part, svg`<path d="M226 37h10l4 2h20v9h-20l-4 2h-10z" class=${classOf(part)} />`, 244, 76, "middle"))}
      ${of("head").map((part) => drawn(part, headShape(part), 316, 12, "end"))}
    </svg>
    <figcaption>${words}</figcaption>
  </figure>`;
}

function drawn(part: RolePart, shape: TemplateResult, x: number, y: number, anchor: string): TemplateResult {
  return svg`${shape}<text x=${x} y=${y} text-anchor=${anchor}>${label(part)}</text>`;
}

function headShape(part: RolePart): TemplateResult {
  const type = part.part?.kind === "head" ? part.part.clubType : undefined;
  return svg`<path d=${headOutlines[type ?? "driver"]} class=${classOf(part)} />`;
}

const wood = "M260 38h8c3-12 20-18 34-14 12 4 14 30 6 44-8 9-32 10-40-4-3-6-4-11-8-16z";
const smallWood = "M260 38h8c4-8 18-12 30-8 12 4 12 22 6 32-6 7-28 7-34-2-3-5-5-8-10-12z";
const blade = "M260 38h14l34-14c6 8 8 34 2 46-16 4-32 2-40-6l-2-16h-8z";
const headOutlines: Readonly<Record<ClubType, string>> = {
  driver: wood,
  fairway: smallWood,
  hybrid: smallWood,
  iron: blade,
  wedge: blade,
  putter: "M260 38h20V24h22v46h-22V48h-20z",
};

function classOf({ id, sighting }: RolePart): string {
  if (id === null) return "body wanted";
  return sighting === undefined ? "body" : "body bought";
}

function label({ id, sighting, role }: RolePart): string {
  if (id === null) return `${role} wanted`;
  if (sighting !== undefined) return shortened(`buy ${sighting}`);
  return shortened(id);
}

const shortened = (text: string) =>
  text.length > longestLabel ? `${text.slice(0, longestLabel - 1)}…` : text;

/** "Head H01, adapter A01, shaft bought with listing L3, grip wanted". */
function spoken(parts: readonly RolePart[]): string {
  const words = parts.map(({ role, id, sighting }) => {
    const name = kindWords[role].toLowerCase();
    if (id === null) return `${name} wanted`;
    return sighting === undefined ? `${name} ${id}` : `${name} bought with listing ${sighting}`;
  });
  const text = words.join(", ");
  return text.charAt(0).toUpperCase() + text.slice(1);
}
