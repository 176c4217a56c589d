import { html, LitElement } from "lit";
import { api } from "../api.ts";
import { contextOf } from "../bench-context.ts";
import { questionList } from "../components/question-list.ts";
import { emptyNote, whenReady } from "../components/state-notes.ts";
import type { DisplaySettings } from "../display-settings.ts";
import { Fetched } from "../fetched.ts";
import { benchTables } from "../live/bench-tables.ts";
import { baseStyles } from "../styles/base-styles.ts";

/** What to find out, the answer that settles most first. */
export class QuestionsView extends LitElement {
  static override properties = { display: {} };
  static override styles = [baseStyles];
  declare display: DisplaySettings;
  readonly #all = new Fetched(this, () => Promise.all([api.bench(), api.resolve()]), benchTables);

  override render() {
    return html`<div class="stack" @ferrule-retry=${() => this.#all.again()}>
      <h1 tabindex="-1">Questions</h1>
      <p class="soft">Facts nobody has stated yet. The first one settles the most clubs; most take a caliper and a minute, or a message to the seller.</p>
      ${whenReady(this.#all.state, "the questions", ([bench, { questions }]) =>
        questions.length === 0
          ? emptyNote("Nothing to find out", "Every club on this bench is decided by what is known already.")
          : html`<div class="ticket">${questionList(questions, contextOf(bench, this.display.lengthUnit))}</div>`,
      )}
    </div>`;
  }
}

customElements.define("ferrule-questions-view", QuestionsView);
