import { css, html, type TemplateResult } from "lit";
import type { BatchRow } from "../batch-api.ts";
import { moneyText } from "../format/money.ts";
import { countText } from "../format/number.ts";
import { hrefs } from "../route.ts";
import { dealSentence } from "../words/deal-sentence.ts";
import { listingTitle } from "../words/listing-title.ts";
import "./deal-mark.ts";

export const batchRowStyles = css`
  .judged {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.1rem 1.25rem;
    padding: 0.6rem 0;
    border-top: 1px solid var(--line);
  }
  @media (min-width: 44rem) {
    .judged {
      grid-template-columns: minmax(0, 1fr) 8rem;
    }
    .judged > .net {
      text-align: right;
    }
  }
  .judged a {
    font-weight: 600;
    display: inline-flex;
    align-items: center;
    min-height: 28px;
    overflow-wrap: anywhere;
  }
  .judged p {
    margin: 0;
  }
  .net strong {
    font-family: var(--mono);
    font-size: 1.05rem;
  }
  .hit-count {
    font-family: var(--mono);
    font-size: 0.875rem;
    border: 1.5px solid var(--line-strong);
    border-radius: 3px;
    padding: 0 0.4rem;
  }
`;

/** The listings of a batch as they were sorted, each with its verdict and what it brings. */
export function batchRows(rows: readonly BatchRow[], currency: string): TemplateResult {
  return html`<ol class="plain">${rows.map((row) => html`<li class="judged">${judgedRow(row, currency)}</li>`)}</ol>`;
}

function judgedRow(row: BatchRow, currency: string): TemplateResult {
  const { text, listing, sighting, verdict, netMinor, asking, hits, problem } = row;
  const title = listing ? listingTitle(listing, text) : text.slice(0, 80);
  return html`<div>
      ${sighting === null ? html`<strong>${title}</strong>` : html`<a href=${hrefs.listing(sighting)}>${title}</a>`}
      ${problem === null ? "" : html`<p class="refusal">✕ ${problem}</p>`}
      <div class="row">${verdict ? renderVerdict(row, currency) : ""}${hits.length > 0 ? html`<a class="hit-count" href="/watch" aria-label="${countText(hits.length, "hit")} on the watchlist: ${title}">${countText(hits.length, "hit")}</a>` : ""}</div>
      <p class="small soft">${asking ? `asked ${moneyText(asking.amountMinor, asking.currency)}` : "no price asked"} · listing ${row.row + 1} of the text</p>
    </div>
    <p class="net">${netMinor === null ? html`<span class="soft">${verdict ? "No gain known" : "Not judged yet"}</span>` : html`<span class="small soft">brings</span> <strong>${moneyText(netMinor, currency)}</strong>`}</p>`;
}

function renderVerdict(
  { verdict, asking, mostToPayMinor }: BatchRow,
  currency: string,
): TemplateResult | string {
  if (!verdict) return "";
  const mostToPay = mostToPayMinor === null ? null : { amountMinor: mostToPayMinor, currency };
  return html`<ferrule-deal-mark .verdict=${verdict} .words=${dealSentence({ verdict, asking, mostToPay })}></ferrule-deal-mark>`;
}
