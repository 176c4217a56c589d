import type { Evidence, Resale } from "@ferrule/core";
import { html, type TemplateResult } from "lit";
import "../drawings/price-drawing.ts";
import { shareText } from "../format/duration.ts";
import { moneyIntervalText, moneyText } from "../format/money.ts";
import { countText, numberText } from "../format/number.ts";
import { daysText } from "../format/time-span.ts";
import { dayText } from "../format/today.ts";
import { closenessWords, conditionWords, pricedWords } from "../words/deal-words.ts";
import { sentence } from "./sentence.ts";

const mostRows = 12;

/** What a thing should sell for, in a line. */
export function resaleLine(resale: Resale): TemplateResult {
  if (!resale.known) return html`<strong>No evidence.</strong> ${sentence(resale.question)}`;
  const { daysToSell, effectiveCount, currency } = resale;
  return html`Should sell for <strong>${moneyIntervalText(resale, currency)}</strong>${daysToSell ? html` in ${daysText(daysToSell)}` : ""}
    <span class="soft">· worth ${countText(Number(numberText(effectiveCount, 1)), "good price")} of evidence</span>`;
}

/** The prices that an estimate rests on as points, with the estimate; one alone says no more than its row. */
export function evidencePicture(
  resale: Resale,
  evidence: ReadonlyMap<string, Evidence>,
): TemplateResult | string {
  if (!resale.known || resale.basis.length < 2) return "";
  return html`<ferrule-price-drawing .resale=${resale} .evidence=${evidence} .today=${dayText(new Date())}></ferrule-price-drawing>`;
}

/** The prices that an estimate rests on, the weightiest first. */
export function evidenceRows(
  resale: Resale,
  evidence: ReadonlyMap<string, Evidence>,
): TemplateResult | string {
  if (!resale.known || resale.basis.length === 0) return "";
  const { basis, adjustments, currency } = resale;
  return html`<details class="small">
    <summary>The ${countText(basis.length, "price")} behind it</summary>
    <table class="stacked" role="table">
      <caption class="small soft">Counted as: brought to this condition, this month and a price paid</caption>
      <thead role="rowgroup"><tr role="row">
        ${["When", "Price", "Counted as", "How close", "Weight"].map((word) => html`<th scope="col" role="columnheader">${word}</th>`)}
      </tr></thead>
      <tbody role="rowgroup">${[...basis]
        .sort((one, other) => other.share - one.share)
        .slice(0, mostRows)
        .map((row) => evidenceRow(row, evidence.get(row.evidence), currency))}</tbody>
    </table>
    ${basis.length > mostRows ? html`<p class="soft">The weightiest ${mostRows} of ${basis.length}.</p>` : ""}
    ${adjustments.length > 0 ? html`<p class="soft">Adjusted: ${adjustments.map(({ name, factor, fittedFrom }) => `${name} × ${numberText(factor, 2)}${fittedFrom > 0 ? ` (from ${countText(fittedFrom, "price")})` : ""}`).join(", ")}.</p>` : ""}
  </details>`;
}

function evidenceRow(
  { evidence: id, closeness, share, adjustedMinor }: Extract<Resale, { known: true }>["basis"][number],
  row: Evidence | undefined,
  currency: string,
): TemplateResult {
  const what = row
    ? [row.maker, row.model, row.condition && conditionWords[row.condition].toLowerCase()]
        .filter(Boolean)
        .join(" ")
    : id;
  return html`<tr role="row">
    <th scope="row" role="rowheader">${row?.on ?? "Own sale"} <span class="soft">${what}</span></th>
    <td role="cell" data-label="Price">${row ? html`${pricedWords[row.what]} ${moneyText(row.price.amountMinor, row.price.currency)}` : "—"}</td>
    <td role="cell" data-label="Counted as">${moneyText(adjustedMinor, currency)}</td>
    <td role="cell" data-label="How close">${closenessWords[closeness]}</td>
    <td role="cell" data-label="Weight">${shareText(share)}</td>
  </tr>`;
}
