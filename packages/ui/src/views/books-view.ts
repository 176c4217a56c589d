import type { BooksSummary, CostSettings, Entry } from "@ferrule/core";
import { html, LitElement, type TemplateResult } from "lit";
import { booksSummaryStyles, linesTable, totalsList, trustTable } from "../components/books-summary.ts";
import "../components/import-box.ts";
import { settingsTableStyles } from "../components/settings-table.ts";
import "../components/shelf-list.ts";
import { whenReady } from "../components/state-notes.ts";
import "../drawings/money-drawing.ts";
import { moneyMonths } from "../drawings/money-months.ts";
import { Fetched } from "../fetched.ts";
import { moneyText } from "../format/money.ts";
import { countText } from "../format/number.ts";
import { entryShelf } from "../shelves/entry-shelf.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { tradeApi } from "../trade-api.ts";

const columns = ["on", "type", "amount.amountMinor", "amount.currency", "club", "note"] as const;

/** The books: what came in and went out, by club, month and year, and how far the estimates held. */
export class BooksView extends LitElement {
  static override styles = [baseStyles, settingsTableStyles, booksSummaryStyles];
  readonly #all = new Fetched(this, () =>
    Promise.all([tradeApi.summary(), tradeApi.books.all(), tradeApi.costs()]),
  );

  override render() {
    return html`<div class="stack" @ferrule-retry=${() => this.#all.again()}>
      <div class="row between"><h1 tabindex="-1">Books</h1><a class="button main" href="/sell">Sell something</a></div>
      ${whenReady(this.#all.state, "the books", ([summary, { entries }, costs]) => this.renderBooks(summary, entries, costs))}
    </div>`;
  }

  private renderBooks(summary: BooksSummary, entries: readonly Entry[], costs: CostSettings): TemplateResult {
    const { currency } = summary;
    return html`
      <section class="ticket" aria-labelledby="totals"><h2 id="totals">What it comes to</h2>${totalsList(summary)}${this.renderUnconverted(summary)}</section>
      ${entries.length > 0 ? this.renderOverTime(entries, costs) : ""}
      ${entries.length > 0 ? this.renderLines(summary) : ""}
      <section class="ticket" aria-labelledby="trust"><h2 id="trust">How far to trust the estimates</h2>${trustTable(summary.trust, currency)}</section>
      <section class="ticket" aria-labelledby="entries"><h2 id="entries">Every line</h2><ferrule-shelf-list .things=${entries} .kind=${entryShelf(costs)}></ferrule-shelf-list></section>
      <div class="row"><a class="button" href="/api/books/export.csv" download>The books as CSV</a></div>
      <ferrule-import-box .send=${tradeApi.books.importFile} .columns=${columns} .replaceLabel=${"Replace lines of the same name"}></ferrule-import-box>
    `;
  }

  private renderUnconverted({ unconverted }: BooksSummary): TemplateResult | string {
    if (unconverted.length === 0) return "";
    const codes = [...new Set(unconverted.map(({ currency }) => currency))].join(", ");
    return html`<p class="small"><strong>${countText(unconverted.length, "line")} left out:</strong> no rate is known for ${codes}. <a href="/costs">Type one in</a>.</p>`;
  }

  private renderOverTime(entries: readonly Entry[], costs: CostSettings): TemplateResult {
    const months = moneyMonths(entries, costs);
    const money = (amountMinor: number) => moneyText(amountMinor, costs.currency);
    const columns = ["In by then", "Out by then", "Left over", "Stock at cost"];
    return html`<section class="ticket" aria-labelledby="time"><h2 id="time">Money over time</h2>
      <ferrule-money-drawing .months=${months} .currency=${costs.currency}></ferrule-money-drawing>
      <p class="small soft">Added up from the first month on. Stock is what the things still here cost; a purchase is shared equally among its parts.</p>
      <details><summary>The same as a table</summary><table class="stacked lines" role="table">
        <caption class="small soft">At the end of each month, the oldest first</caption>
        <thead role="rowgroup"><tr role="row"><th scope="col" role="columnheader">Month</th>${columns.map((word) => html`<th scope="col" role="columnheader">${word}</th>`)}</tr></thead>
        <tbody role="rowgroup">${months.map(
          ({ month, inMinor, outMinor, netMinor, stockMinor }) =>
            html`<tr role="row"><th scope="row" role="rowheader">${month}</th>${[inMinor, outMinor, netMinor, stockMinor].map((amount, at) => html`<td role="cell" data-label=${columns[at] ?? ""}>${money(amount)}</td>`)}</tr>`,
        )}</tbody></table></details>
    </section>`;
  }

  private renderLines({ byClub, byMonth, byYear, currency }: BooksSummary): TemplateResult {
    return html`
      <section class="ticket" aria-labelledby="clubs"><h2 id="clubs">By club</h2>${linesTable(
        "Lines that are for no club stand last",
        byClub.map((line) => [line.club ?? "For no club", line] as const),
        currency,
      )}</section>
      <section class="ticket" aria-labelledby="months"><h2 id="months">By month and year</h2>
        ${linesTable(
          "By year",
          byYear.map((line) => [String(line.year), line] as const),
          currency,
        )}
        <details><summary>By month</summary>${linesTable(
          "By month, the oldest first",
          byMonth.map((line) => [line.month, line] as const),
          currency,
        )}</details>
      </section>`;
  }
}

customElements.define("ferrule-books-view", BooksView);
