import { html, LitElement } from "lit";
import { api, type Bench } from "../api.ts";
import { contextOf } from "../bench-context.ts";
import { emptyNote, whenReady } from "../components/state-notes.ts";
import { wantList, wantListStyles } from "../components/want-list.ts";
import type { DisplaySettings } from "../display-settings.ts";
import { Fetched } from "../fetched.ts";
import { benchTables } from "../live/bench-tables.ts";
import { baseStyles } from "../styles/base-styles.ts";

/** What the bench is missing: what to look for, the want that completes most first. */
export class WantsView extends LitElement {
  static override properties = { display: {} };
  static override styles = [baseStyles, wantListStyles];
  declare display: DisplaySettings;
  readonly #all = new Fetched(this, () => Promise.all([api.bench(), api.resolve()]), benchTables);

  override render() {
    return html`<div class="stack" @ferrule-retry=${() => this.#all.again()}>
      <h1 tabindex="-1">Wants</h1>
      <p class="soft">The fewest parts that would turn what lies on the bench into clubs. Carry this list when you look through offers.</p>
      ${whenReady(this.#all.state, "the wants", ([bench, { wants }]) =>
        wants.length === 0
          ? this.renderEmpty(bench)
          : html`<div class="ticket">${wantList(wants, contextOf(bench, this.display.lengthUnit))}</div>`,
      )}
    </div>`;
  }

  private renderEmpty(bench: Bench) {
    const text =
      bench.parts.length === 0
        ? "Put some parts on the bench, and what they lack is listed here."
        : "No single part would complete another club.";
    return emptyNote("Nothing is wanted", text, html`<a class="button" href="/add">Add a part</a>`);
  }
}

customElements.define("ferrule-wants-view", WantsView);
