import type { Part } from "@ferrule/core";
import { html, type TemplateResult } from "lit";
import type { Role, RolePart } from "../plan/club-roles.ts";
import { hrefs } from "../route.ts";
import { titleById } from "../words/part-title.ts";

const columns: readonly (readonly [Role, string])[] = [
  ["head", "Head"],
  ["adapter", "Adapter"],
  ["shaft", "Shaft"],
  ["grip", "Grip"],
];

export interface ClubRow {
  readonly title: string;
  readonly parts: readonly RolePart[];
}

/** Which parts go into which clubs, in words. */
export function clubTable(rows: readonly ClubRow[], bench: ReadonlyMap<string, Part>): TemplateResult {
  return html`<table class="stacked" role="table">
    <caption class="small soft">Which parts go into which clubs.</caption>
    <thead role="rowgroup"><tr role="row"><th scope="col" role="columnheader">Club</th>${columns.map(([, word]) => html`<th scope="col" role="columnheader">${word}</th>`)}</tr></thead>
    <tbody role="rowgroup">${rows.map(
      ({ title, parts }) => html`<tr role="row">
        <th scope="row" role="rowheader">${title}</th>
        ${columns.map(
          ([role, word]) =>
            html`<td role="cell" class="words" data-label=${word}>${cell(
              parts.find((part) => part.role === role),
              bench,
            )}</td>`,
        )}
      </tr>`,
    )}</tbody>
  </table>`;
}

function cell(part: RolePart | undefined, bench: ReadonlyMap<string, Part>): TemplateResult | string {
  if (!part) return "none";
  if (part.id === null) return "still to be found";
  if (part.sighting !== undefined)
    return html`<a href=${hrefs.listing(part.sighting)}>bought with ${part.sighting}</a>`;
  return html`<a href=${hrefs.part(part.id)}>${titleById(bench, part.id)}</a> <span class="mono">${part.id}</span>`;
}
