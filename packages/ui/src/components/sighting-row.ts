import type { Money, Sighting } from "@ferrule/core";
import { css, html, type TemplateResult } from "lit";
import { moneyText } from "../format/money.ts";
import { hrefs } from "../route.ts";
import { dealSentence } from "../words/deal-sentence.ts";
import { outcomeWords } from "../words/deal-words.ts";
import { listingTitle } from "../words/listing-title.ts";
import "./deal-mark.ts";

export const sightingRowStyles = css`
  .sighting {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.1rem 1rem;
    padding: 0.6rem 0;
    border-top: 1px solid var(--line);
  }
  .sighting a {
    font-weight: 600;
    display: inline-flex;
    align-items: center;
    min-height: 28px;
    overflow-wrap: anywhere;
  }
  .sighting p {
    margin: 0;
  }
`;

/** One listing of the log: what it offers, what was said of it, and what became of it. */
export function sightingRow(sighting: Sighting): TemplateResult {
  const { id, listing, text, verdict, mostToPay, outcome, outcomePrice, seenOn, place } = sighting;
  const asking = listing.asking;
  const facts = [
    asking ? `asked ${money(asking)}` : "no price asked",
    mostToPay && `most to pay ${money(mostToPay)}`,
    outcome !== "open" &&
      `${outcomeWords[outcome].toLowerCase()}${outcomePrice ? ` at ${money(outcomePrice)}` : ""}`,
    place,
    `seen ${seenOn}`,
  ];
  return html`<li class="sighting">
    <a href=${hrefs.listing(id)}>${listingTitle(listing, text)}</a>
    <div class="row">
      ${verdict ? html`<ferrule-deal-mark .verdict=${verdict} .words=${dealSentence({ verdict, asking, mostToPay: mostToPay ?? null })}></ferrule-deal-mark>` : html`<span class="soft">Not judged</span>`}
    </div>
    <p class="small soft">${facts.filter(Boolean).join(" · ")}</p>
  </li>`;
}

function money({ amountMinor, currency }: Money): string {
  return moneyText(amountMinor, currency);
}
