import { css, html, type TemplateResult } from "lit";
import { moneyText } from "../format/money.ts";
import { hrefs } from "../route.ts";
import type { SeenHit } from "../watch-api.ts";
import { overText } from "../words/watch-words.ts";
import "./deal-mark.ts";
import { sentence } from "./sentence.ts";

export const hitListStyles = css`
  .hit {
    padding: 0.6rem 0;
    border-top: 1px solid var(--line);
  }
  .hit p {
    margin: 0.1rem 0;
  }
  .hit .words {
    white-space: pre-wrap;
    display: -webkit-box;
    -webkit-line-clamp: 2;
    -webkit-box-orient: vertical;
    overflow: hidden;
  }
`;

/** What has turned up of what is wanted: which want, which club, and how its price stands to the cap. */
export function hitList(
  hits: readonly SeenHit[],
  currency: string,
  deal: (hit: SeenHit) => void,
): TemplateResult {
  return html`<ul class="plain">${hits.map((hit) => html`<li class="hit">${hitRow(hit, currency, deal)}</li>`)}</ul>`;
}

function hitRow(hit: SeenHit, currency: string, deal: (hit: SeenHit) => void): TemplateResult {
  const { wanted, sighting, text, asking, verdict, overMinor, clubs, isDealtWith } = hit;
  return html`<div class="row between">
      <strong>${overText(overMinor, currency)}</strong>
      ${verdict ? html`<ferrule-deal-mark .verdict=${verdict}></ferrule-deal-mark>` : ""}
    </div>
    <p>${sentence(wanted)}</p>
    <p class="small soft">${asking ? `Asked ${moneyText(asking.amountMinor, asking.currency)}` : "No price asked"} · seen ${hit.on}</p>
    <p class="small words">${text}</p>
    ${clubs.length > 0 ? html`<p class="small">Would complete ${clubs.slice(0, 3).join("; ")}${clubs.length > 3 ? ` and ${clubs.length - 3} more` : ""}.</p>` : ""}
    <div class="row">
      <a class="button" href=${hrefs.listing(sighting)} aria-label="Open the listing ${sighting}">Open the listing</a>
      <button aria-label="${isDealtWith ? "Not dealt with after all" : "Dealt with"}: listing ${sighting}" @click=${() => deal(hit)}>${isDealtWith ? "Not dealt with after all" : "Dealt with"}</button>
    </div>`;
}
