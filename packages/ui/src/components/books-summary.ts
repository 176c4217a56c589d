import type { BooksLine, BooksSummary, OutcomeTrust } from "@ferrule/core";
import { css, html, type TemplateResult } from "lit";
import { minutesText, shareText } from "../format/duration.ts";
import { moneyIntervalText, moneyText } from "../format/money.ts";
import { countText, numberText } from "../format/number.ts";

export const booksSummaryStyles = css`
  caption {
    text-align: left;
    padding-bottom: 0.25rem;
  }
  .figures {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(7.5rem, 100%), 1fr));
    gap: 0.5rem 1.25rem;
  }
  .figures dd {
    font-family: var(--mono);
    font-weight: 600;
    font-size: 1.1rem;
  }
  .lines td {
    text-align: right;
  }
  .lines thead th:not(:first-child) {
    text-align: right;
  }
  @media (max-width: 44rem) {
    .lines td {
      text-align: left;
    }
    .lines tbody tr {
      display: grid;
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
    }
    .lines tbody th {
      grid-column: 1 / -1;
    }
  }
`;

/** What it all comes to. */
export function totalsList({ totals, currency }: BooksSummary): TemplateResult {
  const money = (amountMinor: number) => moneyText(amountMinor, currency);
  const { profitPerHourMinor, minutes, km } = totals;
  const figures: readonly (readonly [string, string])[] = [
    ["Left over", money(totals.netMinor)],
    ["Money in", money(totals.inMinor)],
    ["Money out", money(totals.outMinor)],
    ["Of it fees", money(totals.feesMinor)],
    ["Postage", money(totals.postageMinor)],
    ["Drives", money(totals.tripsMinor)],
    ["Driven", `${numberText(km, 0)} km`],
    ["Materials", money(totals.materialsMinor)],
    ["Sales", String(totals.sales)],
    ["Hours noted", minutesText(minutes)],
    ["Left per hour", profitPerHourMinor === null ? "—" : money(profitPerHourMinor)],
  ];
  return html`<dl class="figures">${figures.map(([word, text]) => html`<div><dt>${word}</dt><dd>${text}</dd></div>`)}</dl>`;
}

const columns = ["Left over", "In", "Out", "Fees", "Postage", "Drives", "Per hour", "Sales"];

/** The same sums for each club, month or year. */
export function linesTable(
  caption: string,
  rows: readonly (readonly [string, BooksLine])[],
  currency: string,
): TemplateResult {
  return html`<table class="stacked lines" role="table">
    <caption class="small soft">${caption}</caption>
    <thead role="rowgroup"><tr role="row"><th scope="col" role="columnheader">Which</th>${columns.map((word) => html`<th scope="col" role="columnheader">${word}</th>`)}</tr></thead>
    <tbody role="rowgroup">${rows.map(([name, line]) => html`<tr role="row"><th scope="row" role="rowheader">${name}</th>${cells(line, currency).map((text, at) => html`<td role="cell" data-label=${columns[at] ?? ""}>${text}</td>`)}</tr>`)}</tbody>
  </table>`;
}

function cells(line: BooksLine, currency: string): string[] {
  const money = (amountMinor: number | null) =>
    amountMinor === null ? "—" : moneyText(amountMinor, currency);
  const { netMinor, inMinor, outMinor, feesMinor, postageMinor, tripsMinor, profitPerHourMinor, sales } =
    line;
  return [
    ...[netMinor, inMinor, outMinor, feesMinor, postageMinor, tripsMinor, profitPerHourMinor].map(money),
    String(sales),
  ];
}

/** Estimates against what came of them. */
export function trustTable(trust: OutcomeTrust, currency: string): TemplateResult {
  if (trust.count === 0)
    return html`<p class="soft">No sale yet of something that an estimate was made for. Buy from a judged listing, sell it here, and the estimate is set against the price.</p>`;
  return html`${trustWords(trust)}
    <table class="stacked" role="table">
      <caption class="small soft">Each sale with what was expected of it when it was bought</caption>
      <thead role="rowgroup"><tr role="row">${["Sale", "Expected", "Came", "Inside", "Days expected", "Days"].map((word) => html`<th scope="col" role="columnheader">${word}</th>`)}</tr></thead>
      <tbody role="rowgroup">${trust.rows.map((row) => trustRow(row, currency))}</tbody>
    </table>`;
}

function trustWords({ count, pricesInside, priceBias, daysBias }: OutcomeTrust): TemplateResult {
  const sentences = [
    pricesInside !== null &&
      `${shareText(pricesInside)} of ${countText(count, "sale")} came out inside the range that was given; 95 % should.`,
    priceBias !== null && biasText("Prices", priceBias, "more", "less"),
    daysBias !== null && biasText("Selling", daysBias, "longer", "shorter"),
    count < 10 && "That is too few to trust or distrust much.",
  ];
  return html`<p>${sentences.filter(Boolean).join(" ")}</p>`;
}

/** "Prices came out 4 % less than expected." */
function biasText(what: string, bias: number, over: string, under: string): string {
  const percent = Math.round(Math.abs(bias - 1) * 100);
  if (percent === 0) return `${what} came out as expected.`;
  const verb = what === "Selling" ? "took" : "came to";
  return `${what} ${verb} ${percent} % ${bias > 1 ? over : under} than expected.`;
}

function trustRow(row: OutcomeTrust["rows"][number], currency: string): TemplateResult {
  const expected = { valueMinor: row.expectedMinor, lowMinor: row.lowMinor, highMinor: row.highMinor };
  return html`<tr role="row">
    <th scope="row" role="rowheader">${row.club ?? row.entry} <span class="soft">${row.on}</span></th>
    <td role="cell" data-label="Expected">${moneyIntervalText(expected, currency)}</td>
    <td role="cell" data-label="Came">${moneyText(row.outcomeMinor, currency)}</td>
    <td role="cell" data-label="Inside">${row.inside ? "Yes" : "No"}</td>
    <td role="cell" data-label="Days expected">${row.expectedDays === null ? "—" : numberText(row.expectedDays, 0)}</td>
    <td role="cell" data-label="Days">${row.days === null ? "—" : numberText(row.days, 0)}</td>
  </tr>`;
}
