import { html, LitElement } from "lit";
import { api } from "../api.ts";
import "../components/import-box.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { kindWords } from "../words/part-words.ts";

const csvKinds = { ...kindWords, joint: "Joints", claim: "Fit claims", goal: "Goal" } as const;
const columns = ["kind", "maker", "tip.diameterIn"] as const;

/** Files in and out. */
export class ExchangeView extends LitElement {
  static override styles = [baseStyles];

  override render() {
    return html`<div class="stack">
      <h1 tabindex="-1">Import and export</h1>
      <ferrule-import-box .send=${api.importFile} .columns=${columns} .replaceLabel=${"Replace what is on the bench under the same name"}></ferrule-import-box>
      ${this.renderExport()}
    </div>`;
  }

  private renderExport() {
    return html`<section class="ticket stack" aria-labelledby="out">
      <h2 id="out">Take it out</h2>
      <p class="soft">JSON holds the whole bench. CSV opens in any spreadsheet: everything, or one kind.</p>
      <div class="row">
        <a class="button" href="/api/bench/export.json" download>The bench as JSON</a>
        <a class="button" href="/api/bench/export.csv" download>Everything as CSV</a>
      </div>
      <ul class="plain row">
        ${Object.entries(csvKinds).map(([kind, word]) => html`<li><a class="button" href="/api/bench/export.csv?kind=${kind}" download>${word}</a></li>`)}
      </ul>
    </section>`;
  }
}

customElements.define("ferrule-exchange-view", ExchangeView);
