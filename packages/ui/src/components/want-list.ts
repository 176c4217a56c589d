import type { Want } from "@ferrule/core";
import { css, html, type TemplateResult } from "lit";
import type { BenchContext } from "../bench-context.ts";
import { factValueText } from "../format/fact-value.ts";
import { countText } from "../format/number.ts";
import { hrefs } from "../route.ts";
import { fieldText } from "../words/field-words.ts";
import { titleById } from "../words/part-title.ts";
import { kindWords } from "../words/part-words.ts";
import { sentence } from "./sentence.ts";

export const wantListStyles = css`
  .want {
    padding: 0.75rem 0;
    border-top: 1px solid var(--line);
  }
  .want .needs {
    display: flex;
    flex-wrap: wrap;
    gap: 0.25rem 1.25rem;
  }
`;

/** What is missing, in terms of interfaces, with what it would complete. */
export function wantList(wants: readonly Want[], context: BenchContext): TemplateResult {
  return html`<ul class="plain">${wants.map((want) => html`<li class="want">${wantRow(want, context)}</li>`)}</ul>`;
}

function wantRow(want: Want, context: BenchContext): TemplateResult {
  return html`<strong>${sentence(want.text)}</strong>
    <p class="small soft">${kindWords[want.kind]} · would complete ${countText(want.count, "pair")}</p>
    <details class="small">
      <summary>Exactly what, and for which parts</summary>
      <dl class="needs">
        ${Object.entries(want.needs).map(([field, value]) => html`<div><dt>${fieldText(field)}</dt><dd>${factValueText(field, value, context.lengthUnit)}</dd></div>`)}
      </dl>
      <ul>${want.completes.slice(0, 12).map((pair) => html`<li>${pairText(pair, context)}</li>`)}</ul>
    </details>`;
}

function pairText(pair: Want["completes"][number], context: BenchContext): TemplateResult {
  const ids = [pair.head, pair.shaft].filter((id): id is string => id !== null);
  return html`${ids.map((id, at) => html`${at > 0 ? " with " : ""}<a href=${hrefs.part(id)}>${titleById(context.parts, id)}</a> <span class="mono">${id}</span>`)}`;
}
