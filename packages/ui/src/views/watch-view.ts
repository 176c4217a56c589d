import type { Watch } from "@ferrule/core";
import { css, html, LitElement, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import { hitList, hitListStyles } from "../components/hit-list.ts";
import { emptyNote, whenReady } from "../components/state-notes.ts";
import "../components/watch-form.ts";
import "../components/watch-item.ts";
import { type News, tell } from "../events.ts";
import { Fetched, failed } from "../fetched.ts";
import { countText } from "../format/number.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { tradeApi } from "../trade-api.ts";
import { type SeenHit, type WatchEntry, watchApi } from "../watch-api.ts";

const mostRows = 60;
/** Time until what wants are worth is asked for again, while it is being worked out. */
const againMs = 1500;

/** What is wanted, the most worth first, and what has turned up of it. */
export class WatchView extends LitElement {
  static override properties = { allHits: { state: true }, trouble: { state: true } };
  static override styles = [
    baseStyles,
    formStyles,
    hitListStyles,
    css`
      .hits {
        border-width: 2px;
        border-color: var(--line-strong);
      }
      .wants > li {
        padding: 0.9rem 0;
        border-top: 2px dashed var(--line);
      }
    `,
  ];
  declare private allHits: boolean;
  declare private trouble: string | undefined;
  readonly #entries = new Fetched(this, () => this.#askEntries());
  readonly #hits = new Fetched(this, () => watchApi.hits(this.allHits));
  /** Whether the worths that were last heard of are being worked out anew. */
  #isStale = false;
  readonly #costs = new Fetched(this, tradeApi.costs);
  #soon: ReturnType<typeof setTimeout> | undefined;

  constructor() {
    super();
    this.allHits = false;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#soon);
  }

  override render(): TemplateResult {
    return html`<div
      class="stack"
      @ferrule-retry=${this.#again}
      @ferrule-watch=${(event: CustomEvent<News["ferrule-watch"]>) => this.#try(() => watchApi.change(event.detail.base.id, event.detail.change, event.detail.base))}
      @ferrule-unwatch=${(event: CustomEvent<News["ferrule-unwatch"]>) => this.#unwatch(event.detail)}
    >
      <h1 tabindex="-1">Watchlist</h1>
      <p class="soft">What the bench is missing, and what each is worth to it, with no limit to what you spend or to your hours. Every open listing of the log, and each that is read, is held against this list.</p>
      ${this.trouble ? html`<p class="ticket refusal" role="alert">✕ ${this.trouble}</p>` : ""}
      ${whenReady(
        this.#costs.state,
        "the costs",
        ({ currency }) => html`
        ${whenReady(this.#hits.state, "the hits", ({ hits }) => this.renderHits(hits, currency))}
        <ferrule-watch-form .currency=${currency}></ferrule-watch-form>
        ${whenReady(this.#entries.state, "the wants", ({ entries, upToDate }) => this.renderWants(entries, upToDate, currency))}
      `,
      )}
    </div>`;
  }

  private renderHits(hits: readonly SeenHit[], currency: string): TemplateResult {
    const open = hits.filter(({ isDealtWith }) => !isDealtWith).length;
    const none =
      "Nothing open. Listings that are pasted or brought in many at once show up here when they offer what is wanted.";
    return html`<section class="ticket hits" aria-labelledby="hits">
      <h2 id="hits">${open === 0 ? "Hits" : countText(open, "hit")}</h2>
      ${hits.length === 0 ? html`<p class="soft">${none}</p>` : hitList(hits.slice(0, mostRows), currency, (hit) => void this.#try(() => watchApi.dealWith(hit.id, !hit.isDealtWith)))}
      ${hits.length > mostRows ? html`<p class="small soft">The first ${mostRows} of ${hits.length}.</p>` : ""}
      <label class="tick small"><input type="checkbox" .checked=${this.allHits} @change=${this.#chooseAll} /> Show those that are dealt with too</label>
    </section>`;
  }

  private renderWants(entries: readonly WatchEntry[], upToDate: boolean, currency: string): TemplateResult {
    if (entries.length === 0)
      return emptyNote(
        "Nothing is wanted",
        "Put some parts on the bench, and what they lack is listed here; or add a want by hand.",
      );
    return html`<section class="ticket" aria-labelledby="wants">
      <h2 id="wants">Wanted</h2>
      <div class="row between"><p class="small soft" role="status">${countText(entries.length, "want")}${upToDate ? ", the most worth first" : "; what they are worth is being worked out"}${entries.length > mostRows ? `, the first ${mostRows} shown` : ""}.</p><a class="button" href="/wants">Why each is wanted</a></div>
      <ol class="plain wants">${repeat(
        entries.slice(0, mostRows),
        ({ watch }) => watch.id,
        (entry) =>
          html`<li><ferrule-watch-item .entry=${entry} .currency=${currency}></ferrule-watch-item></li>`,
      )}</ol>
    </section>`;
  }

  async #askEntries() {
    const answer = await watchApi.entries();
    clearTimeout(this.#soon);
    // A worth that has become known is a cap that hits are held against.
    if (answer.upToDate && this.#isStale) void this.#hits.again();
    this.#isStale = !answer.upToDate;
    if (!answer.upToDate && this.isConnected)
      this.#soon = setTimeout(() => void this.#entries.again(), againMs);
    return answer;
  }

  readonly #again = (): void => {
    void this.#entries.again();
    void this.#hits.again();
    if (this.#costs.state.is !== "ready") void this.#costs.again();
  };

  readonly #chooseAll = (event: Event): void => {
    this.allHits = (event.target as HTMLInputElement).checked;
    void this.#hits.again();
  };

  async #unwatch(watch: Watch): Promise<void> {
    await this.#try(async () => {
      const { deleted } = await watchApi.remove(watch.id, watch);
      tell(this, "ferrule-done", {
        text: "It is off the list.",
        undo: () => watchApi.add(deleted),
        undone: "It is on the list again.",
      });
    });
  }

  async #try(work: () => Promise<unknown>): Promise<void> {
    this.trouble = await work().then(
      () => undefined,
      (error: unknown) => `${failed(error).message}.`,
    );
    this.#again();
  }
}

customElements.define("ferrule-watch-view", WatchView);
