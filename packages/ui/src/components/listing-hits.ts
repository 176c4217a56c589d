import { html, type TemplateResult } from "lit";
import type { SeenHit } from "../watch-api.ts";
import { overText } from "../words/watch-words.ts";
import { sentence } from "./sentence.ts";

/** What a listing offers of the watchlist: which want, how its price stands to the cap, and which club it would complete. */
export function listingHits(hits: readonly SeenHit[], currency: string): TemplateResult | string {
  if (hits.length === 0) return "";
  return html`<section class="ticket" aria-labelledby="watched"><h2 id="watched">On your watchlist</h2>
    <ul class="plain">${hits.map(
      ({ wanted, overMinor, clubs }) => html`<li><strong>${overText(overMinor, currency)}</strong>
        <p class="small">${sentence(wanted)}${clubs.length > 0 ? ` It would complete ${clubs.slice(0, 3).join("; ")}.` : ""}</p></li>`,
    )}</ul>
    <a class="button" href="/watch">To the watchlist</a></section>`;
}
