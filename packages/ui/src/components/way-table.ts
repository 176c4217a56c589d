import type { Alternative, Deal, DealReason } from "@ferrule/core";
import { css, html, type TemplateResult } from "lit";
import { minutesText, shareText } from "../format/duration.ts";
import { moneyIntervalText, moneyText } from "../format/money.ts";
import { countText } from "../format/number.ts";
import { daysText } from "../format/time-span.ts";
import { wayWords } from "../words/deal-words.ts";
import { sentence } from "./sentence.ts";

export const wayTableStyles = css`
  caption {
    text-align: left;
    padding-bottom: 0.25rem;
  }
  .ways th[scope="row"] {
    min-width: 9rem;
    font-size: 1rem;
  }
  .ways td.why {
    font-family: var(--sans);
    white-space: normal;
    min-width: 18rem;
  }
  .ways .best {
    display: inline-block;
    font-family: var(--mono);
    font-size: 0.75rem;
    text-transform: uppercase;
    letter-spacing: 0.05em;
    padding: 0 0.4rem;
    border: 1.5px solid currentColor;
    border-radius: 3px;
    color: var(--fits);
  }
  .ways ul {
    margin: 0;
    padding-left: 1.1rem;
  }
  .sum td,
  .sum th {
    border-top: 1px dotted var(--line);
    padding: 0.2rem 0.6rem 0.2rem 0;
    font-weight: 400;
    white-space: normal;
    overflow-wrap: anywhere;
  }
  .sum td {
    text-align: right;
    white-space: nowrap;
    padding-right: 0;
  }
  .sum .total > * {
    border-top: 2px solid var(--line-strong);
    font-weight: 700;
  }
  @media (max-width: 44rem) {
    .ways > tbody > tr {
      padding: 0.75rem 0;
    }
    .ways > tbody > tr > td.why::before {
      content: none;
    }
    .ways td.why {
      min-width: 0;
    }
    .ways .sum tr {
      display: table-row;
    }
    .ways .sum td,
    .ways .sum th {
      display: table-cell;
      border-top: 1px dotted var(--line);
    }
    .ways .sum td::before {
      content: none;
    }
  }
`;

const columns = [
  "Money out first",
  "What it should leave",
  "Profit an hour",
  "Time to money",
  "Chance of a loss",
  "Why, and the sum",
];

/** What can be done with a listing, side by side: a table where there is room, cards where there is not. */
export function wayTable({ alternatives, best }: Deal, currency: string): TemplateResult {
  return html`<table class="stacked ways" role="table">
    <caption class="small soft">In brackets: where it lies 95 times in 100. Your own hours are paid out of what it leaves; profit an hour is before they are.</caption>
    <thead role="rowgroup"><tr role="row">
      <th scope="col" role="columnheader">What to do</th>
      ${columns.map((word) => html`<th scope="col" role="columnheader">${word}</th>`)}
    </tr></thead>
    <tbody role="rowgroup">${alternatives.map((way) => wayRow(way, way.way === best, currency))}</tbody>
  </table>`;
}

function wayRow(way: Alternative, isBest: boolean, currency: string): TemplateResult {
  if (!way.possible)
    return html`<tr role="row">
      <th scope="row" role="rowheader">${wayWords[way.way]}</th>
      <td role="cell" class="why" colspan="6"><strong>Not possible.</strong>${reasonList(way.reasons)}</td>
    </tr>`;
  const { outlayMinor, net, profitPerHourMinor, minutes, daysToMoney, lossChance } = way;
  const money = (amountMinor: number | null) =>
    amountMinor === null ? "—" : moneyText(amountMinor, currency);
  const hours =
    minutes === null || minutes === 0 ? "" : html` <span class="soft">in ${minutesText(minutes)}</span>`;
  return html`<tr role="row">
    <th scope="row" role="rowheader">${wayWords[way.way]} ${isBest ? html`<span class="best">Best</span>` : ""}</th>
    <td role="cell" data-label=${columns[0] ?? ""}>${money(outlayMinor)}</td>
    <td role="cell" data-label=${columns[1] ?? ""}>${net ? moneyIntervalText(net, currency) : "—"}</td>
    <td role="cell" data-label=${columns[2] ?? ""}>${money(profitPerHourMinor)}${hours}</td>
    <td role="cell" data-label=${columns[3] ?? ""}>${daysToMoney ? daysText(daysToMoney) : "—"}</td>
    <td role="cell" data-label=${columns[4] ?? ""}>${lossChance === null ? "—" : shareText(lossChance)}</td>
    <td role="cell" class="why">${whyCell(way, currency)}</td>
  </tr>`;
}

function whyCell(way: Alternative, currency: string): TemplateResult {
  const { reasons, risks, lines, clubs, usesParts, mostToPayMinor } = way;
  return html`
    ${reasonList(reasons)}
    ${risks.length > 0 ? html`<strong class="small">What can go wrong</strong>${reasonList(risks)}` : ""}
    ${usesParts.length > 0 ? html`<p class="small soft">Uses ${countText(usesParts.length, "part")} of the bench: <span class="mono">${usesParts.join(", ")}</span>${clubs.length > 0 ? html`, for ${countText(clubs.length, "club")}` : ""}.</p>` : ""}
    ${mostToPayMinor !== null ? html`<p class="small">Worth paying up to <strong>${moneyText(mostToPayMinor, currency)}</strong> this way.</p>` : ""}
    ${lines.length > 0 ? html`<details class="small"><summary>The sum, line by line</summary>${sumTable(way, currency)}</details>` : ""}`;
}

export function reasonList(reasons: readonly DealReason[]): TemplateResult | string {
  if (reasons.length === 0) return "";
  return html`<ul>${reasons.map(({ text }) => html`<li>${sentence(text)}</li>`)}</ul>`;
}

function sumTable({ lines, net }: Alternative, currency: string): TemplateResult {
  return html`<table class="sum" role="table">
    <caption class="small soft">Money in is positive</caption>
    <tbody role="rowgroup">
      ${lines.map(({ text, amountMinor }) => html`<tr role="row"><th scope="row" role="rowheader">${text}</th><td role="cell">${moneyText(amountMinor, currency)}</td></tr>`)}
      ${net ? html`<tr role="row" class="total"><th scope="row" role="rowheader">Left</th><td role="cell">${moneyText(net.valueMinor, currency)}</td></tr>` : ""}
    </tbody>
  </table>`;
}
