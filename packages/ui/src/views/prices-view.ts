import { html, LitElement } from "lit";
import "../components/import-box.ts";
import "../components/price-picture.ts";
import "../components/shelf-list.ts";
import { whenReady } from "../components/state-notes.ts";
import { Fetched } from "../fetched.ts";
import { priceShelf } from "../shelves/price-shelf.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { tradeApi } from "../trade-api.ts";

const columns = ["on", "what", "price.amountMinor", "price.currency", "kind", "maker", "model"] as const;

/** Prices that were asked or paid: what every estimate of a resale rests on. */
export class PricesView extends LitElement {
  static override styles = [baseStyles];
  readonly #all = new Fetched(this, () =>
    Promise.all([tradeApi.evidence.all(), tradeApi.costs(), tradeApi.models.all()]),
  );

  override render() {
    return html`<div class="stack" @ferrule-retry=${() => this.#all.again()}>
      <h1 tabindex="-1">Prices</h1>
      <p class="soft">What things were sold at, and what was asked for them. An estimate counts the closest and the newest most, and says how few they are.</p>
      ${whenReady(
        this.#all.state,
        "the prices",
        ([{ evidence }, costs, { models }]) => html`
          ${evidence.length > 0 ? html`<section class="ticket" aria-labelledby="say"><h2 id="say">What they say</h2><ferrule-price-picture .evidence=${evidence}></ferrule-price-picture></section>` : ""}
          <ferrule-shelf-list .things=${[...evidence].sort((one, other) => other.on.localeCompare(one.on))} .kind=${priceShelf(costs, models)}></ferrule-shelf-list>
          <a class="button" href="/api/evidence/export.csv" download>The prices as CSV</a>
          <ferrule-import-box .send=${tradeApi.evidence.importFile} .columns=${columns} .replaceLabel=${"Replace prices of the same name"}></ferrule-import-box>`,
      )}
    </div>`;
  }
}

customElements.define("ferrule-prices-view", PricesView);
