import type { Refusal, Watch } from "@ferrule/core";
import { html, LitElement, type TemplateResult } from "lit";
import { ApiError } from "../api.ts";
import { type News, tell } from "../events.ts";
import { failed } from "../fetched.ts";
import { refusalsAtNeeds, watchFields, watchOf } from "../shelves/watch-fields.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { watchApi } from "../watch-api.ts";
import { kindWords } from "../words/part-words.ts";
import "./record-form.ts";

const kinds: readonly Watch["kind"][] = ["head", "adapter", "shaft", "grip"];

/** Puts something on the watchlist by hand. Tells `ferrule-retry` when it is there. */
export class WatchForm extends LitElement {
  static override properties = {
    currency: {},
    open: { state: true },
    kind: { state: true },
    trouble: { state: true },
    refusals: { state: true },
  };
  static override styles = [baseStyles, formStyles];
  declare currency: string;
  declare private open: boolean;
  declare private kind: Watch["kind"];
  declare private trouble: string | undefined;
  declare private refusals: readonly Refusal[];

  constructor() {
    super();
    this.open = false;
    this.kind = "shaft";
    this.refusals = [];
  }

  override render(): TemplateResult {
    if (!this.open)
      return html`<button class="main" @click=${() => this.#show(true)}>Add a want by hand</button>`;
    return html`<section class="ticket stack" aria-labelledby="add">
      <h2 id="add">Something else to watch for</h2>
      <div><label for="kind">What kind of part</label>
        <select id="kind" @change=${(event: Event) => (this.kind = (event.target as HTMLSelectElement).value as Watch["kind"])}>
          ${kinds.map((kind) => html`<option value=${kind} ?selected=${kind === this.kind}>${kindWords[kind]}</option>`)}
        </select></div>
      <ferrule-record-form
        .fields=${watchFields(this.kind, this.currency)}
        .record=${{}}
        .submitWord=${"Put it on the list"}
        .trouble=${this.trouble}
        .refusals=${this.refusals}
        @ferrule-record=${(event: CustomEvent<News["ferrule-record"]>) => this.#add(event)}
      ><button type="button" @click=${() => this.#show(false)}>Not now</button></ferrule-record-form>
    </section>`;
  }

  #show(open: boolean): void {
    this.open = open;
    this.trouble = undefined;
    this.refusals = [];
    void this.updateComplete.then(() =>
      this.renderRoot.querySelector<HTMLElement>(open ? "#kind" : "button")?.focus(),
    );
  }

  async #add(event: CustomEvent<News["ferrule-record"]>): Promise<void> {
    event.stopPropagation();
    await watchApi.add(watchOf(this.kind, event.detail.record)).then(
      () => {
        this.#show(false);
        tell(this, "ferrule-retry", undefined);
      },
      (error: unknown) => {
        this.trouble = `${failed(error).message}.`;
        this.refusals = error instanceof ApiError ? refusalsAtNeeds(error.refusals) : [];
      },
    );
  }
}

customElements.define("ferrule-watch-form", WatchForm);
