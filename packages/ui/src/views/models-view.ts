import { html, LitElement } from "lit";
import "../components/import-box.ts";
import "../components/shelf-list.ts";
import { whenReady } from "../components/state-notes.ts";
import { Fetched } from "../fetched.ts";
import { modelShelf } from "../shelves/model-shelf.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { tradeApi } from "../trade-api.ts";

const columns = ["kind", "maker", "model", "aliases", "clubType", "adapterFamily", "year"] as const;

/** The models that are known by name when a listing is read. */
export class ModelsView extends LitElement {
  static override styles = [baseStyles];
  readonly #models = new Fetched(this, () => tradeApi.models.all());

  override render() {
    return html`<div class="stack" @ferrule-retry=${() => this.#models.again()}>
      <h1 tabindex="-1">Models</h1>
      <p class="soft">Makers and models by name, with the adapter family each takes. Listings are read against this list; what it does not hold is still read, only without its family.</p>
      ${whenReady(
        this.#models.state,
        "the models",
        ({ models }) => html`
          <ferrule-shelf-list .things=${models} .kind=${modelShelf()}></ferrule-shelf-list>
          <a class="button" href="/api/catalogue/export.csv" download>The models as CSV</a>
          <ferrule-import-box .send=${tradeApi.models.importFile} .columns=${columns} .replaceLabel=${"Replace models of the same name"}></ferrule-import-box>`,
      )}
    </div>`;
  }
}

customElements.define("ferrule-models-view", ModelsView);
