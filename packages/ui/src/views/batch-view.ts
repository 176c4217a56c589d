import { css, html, LitElement, type TemplateResult } from "lit";
import { type Batch, type BatchRow, batchApi } from "../batch-api.ts";
import { batchRowStyles, batchRows } from "../components/batch-rows.ts";
import { whenReady } from "../components/state-notes.ts";
import { Fetched, failed } from "../fetched.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { tradeApi } from "../trade-api.ts";
import { batchText } from "../words/batch-words.ts";

const againMs = 700;
const fewRows = 100;
const manyRows = 5000;

/** Many listings that came together: how far they are judged, and what each brings, the best first. */
export class BatchView extends LitElement {
  static override properties = {
    batchId: {},
    onlyHits: { state: true },
    most: { state: true },
    trouble: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    batchRowStyles,
    css`
      .bar {
        height: 1.1rem;
        border: 1.5px solid var(--line-strong);
        border-radius: 4px;
        background: var(--ticket-2);
        overflow: hidden;
      }
      .bar svg {
        display: block;
        width: 100%;
        height: 100%;
        fill: var(--accent);
      }
    `,
  ];
  declare batchId: string;
  declare private onlyHits: boolean;
  declare private most: number;
  declare private trouble: string | undefined;
  readonly #batch = new Fetched(this, () => this.#ask());
  readonly #costs = new Fetched(this, tradeApi.costs);
  #soon: ReturnType<typeof setTimeout> | undefined;

  constructor() {
    super();
    this.onlyHits = false;
    this.most = fewRows;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#soon);
  }

  override render(): TemplateResult {
    const { state } = this.#batch;
    return html`<div class="stack" @ferrule-retry=${this.#again}>
      <h1 tabindex="-1">${state.is === "ready" ? state.value.name : "Many listings"}</h1>
      ${this.trouble ? html`<p class="ticket refusal" role="alert">✕ ${this.trouble}</p>` : ""}
      ${whenReady(this.#costs.state, "the costs", ({ currency }) => whenReady(state, "the listings", (batch) => html`${this.renderProgress(batch)}${this.renderRows(batch.rows, batch.total, currency)}`))}
    </div>`;
  }

  private renderProgress(batch: Batch): TemplateResult {
    const { total, done, state } = batch;
    const share = total === 0 ? 100 : (done / total) * 100;
    return html`<section class="ticket stack" aria-labelledby="progress">
      <h2 id="progress">How far it is</h2>
      <div class="bar" role="progressbar" aria-label="Listings judged" aria-valuemin="0" aria-valuemax=${total} aria-valuenow=${done} aria-valuetext=${batchText(batch)}><svg viewBox="0 0 100 1" preserveAspectRatio="none" aria-hidden="true"><rect width=${share} height="1" /></svg></div>
      <div class="row between">
        <p role="status">${batchText(batch)}.</p>
        <div class="row">
          ${state === "running" ? html`<button @click=${() => this.#try(() => batchApi.stop(batch.id))}>Stop</button>` : ""}
          ${state === "stopped" ? html`<button class="main" @click=${() => this.#try(() => batchApi.resume(batch.id))}>Go on</button>` : ""}
          <a class="button" href="/listings">All listings</a>
        </div>
      </div>
      ${state === "running" ? html`<p class="small soft">You can leave this page: the judging goes on, and what is judged stays.</p>` : ""}
    </section>`;
  }

  private renderRows(rows: readonly BatchRow[], total: number, currency: string): TemplateResult {
    const shown = rows.filter(({ hits }) => !this.onlyHits || hits.length > 0);
    return html`<section class="ticket" aria-labelledby="rows">
      <h2 id="rows">What each brings</h2>
      <label class="tick small"><input type="checkbox" .checked=${this.onlyHits} @change=${this.#showHits} /> Only what is on the watchlist</label>
      ${shown.length === 0 ? html`<p class="soft">None of those shown.</p>` : batchRows(shown, currency)}
      ${rows.length === this.most && this.most < manyRows ? html`<p class="small soft">The best ${rows.length} of ${total}.</p><button @click=${this.#showMore}>Show all</button>` : ""}
    </section>`;
  }

  async #ask() {
    const answer = await batchApi.one(this.batchId, this.most);
    clearTimeout(this.#soon);
    if (answer.state === "running" && this.isConnected)
      this.#soon = setTimeout(() => void this.#batch.again(), againMs);
    return answer;
  }

  readonly #again = (): void => {
    void this.#batch.again();
    void this.#costs.again();
  };

  /** What is on the watchlist may be far down: all have to be here to find it. */
  readonly #showHits = (event: Event): void => {
    this.onlyHits = (event.target as HTMLInputElement).checked;
    if (this.onlyHits && this.most < manyRows) this.#showMore();
  };

  readonly #showMore = (): void => {
    this.most = manyRows;
    void this.#batch.again();
  };

  async #try(work: () => Promise<unknown>): Promise<void> {
    this.trouble = await work().then(
      () => undefined,
      (error: unknown) => `${failed(error).message}.`,
    );
    await this.#batch.again();
  }
}

customElements.define("ferrule-batch-view", BatchView);
