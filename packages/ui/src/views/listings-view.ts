import type { Sighting } from "@ferrule/core";
import { css, html, LitElement, type TemplateResult } from "lit";
import { sightingRow, sightingRowStyles } from "../components/sighting-row.ts";
import { whenReady } from "../components/state-notes.ts";
import type { DisplaySettings } from "../display-settings.ts";
import { tell } from "../events.ts";
import { Fetched, failed } from "../fetched.ts";
import { moneyText } from "../format/money.ts";
import { countText } from "../format/number.ts";
import { parseNumber } from "../format/parse-number.ts";
import { hrefs } from "../route.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { type ReadListing, tradeApi } from "../trade-api.ts";
import { outcomeWords } from "../words/deal-words.ts";
import { listingTitle } from "../words/listing-title.ts";

const mostRows = 60;

/** One listing of many, and what came of judging it. */
interface Candidate extends ReadListing {
  readonly judged?: Sighting;
  readonly trouble?: string;
}

/** Listings pasted or brought in from a file, and the log of those that were seen before. */
export class ListingsView extends LitElement {
  static override properties = {
    display: {},
    text: { state: true },
    km: { state: true },
    busy: { state: true },
    trouble: { state: true },
    many: { state: true },
    outcome: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    sightingRowStyles,
    css`
      .two {
        display: grid;
        gap: 1rem;
        grid-template-columns: minmax(0, 1fr);
        align-items: start;
      }
      @media (min-width: 60rem) {
        .two {
          grid-template-columns: minmax(0, 6fr) minmax(0, 5fr);
        }
      }
      textarea {
        min-height: 11rem;
      }
      .km {
        max-width: 12rem;
      }
      .narrow {
        max-width: 16rem;
      }
      .quote {
        white-space: pre-wrap;
        overflow-wrap: anywhere;
      }
    `,
  ];
  declare display: DisplaySettings;
  declare private text: string;
  declare private km: string;
  declare private busy: boolean;
  declare private trouble: string | undefined;
  declare private many: readonly Candidate[];
  declare private outcome: string;
  readonly #sightings = new Fetched(this, () => tradeApi.sightings.all());
  #stopped = false;

  constructor() {
    super();
    this.text = "";
    this.km = "";
    this.busy = false;
    this.many = [];
    this.outcome = "";
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stopped = true;
  }

  override render() {
    return html`<div class="stack" @ferrule-retry=${() => this.#sightings.again()}>
      <h1 tabindex="-1">Listings</h1>
      ${this.trouble ? html`<p class="ticket refusal" role="alert">✕ ${this.trouble}</p>` : ""}
      <div class="two">
        <div class="stack">${this.renderPaste()}${this.many.length > 0 ? this.renderMany() : ""}</div>
        <section class="ticket" aria-labelledby="seen">
          <h2 id="seen">Seen before</h2>
          ${whenReady(this.#sightings.state, "the log", ({ sightings }) => this.renderSightings(sightings))}
        </section>
      </div>
    </div>`;
  }

  private renderPaste(): TemplateResult {
    return html`<form class="ticket stack" aria-labelledby="paste-title" @submit=${this.#read}>
      <h2 id="paste-title">Is it worth buying?</h2>
      <div>
        <label for="paste">Paste a listing</label>
        <textarea id="paste" placeholder="The words as the seller wrote them, price and all" .value=${this.text} @input=${(event: Event) => (this.text = (event.target as HTMLTextAreaElement).value)}></textarea>
      </div>
      <div class="row between">
        <div class="km"><label for="km">Drive there and back (km)</label><input id="km" inputmode="decimal" autocomplete="off" placeholder="If you would fetch it" .value=${this.km} @input=${(event: Event) => (this.km = (event.target as HTMLInputElement).value)} /></div>
        <button class="main" type="submit" ?disabled=${this.busy || this.text.trim() === ""}>${this.busy ? "Reading …" : "Read it"}</button>
      </div>
      <details>
        <summary>Many at once</summary>
        <p class="why">A text file with many listings: one to a line, or several lines each with an empty line between. Nothing is kept until it is judged.</p>
        <label for="file">Choose a file</label>
        <input id="file" type="file" accept=".txt,.csv,text/plain" @change=${this.#chosen} />
        <p><button type="button" ?disabled=${this.text.trim() === ""} @click=${() => this.#readMany(this.text)}>What is pasted above is many listings</button></p>
      </details>
    </form>`;
  }

  private renderMany(): TemplateResult {
    const left = this.many.filter(({ judged }) => !judged).length;
    return html`<section class="ticket" aria-labelledby="many">
      <h2 id="many">${countText(this.many.length, "listing")} read</h2>
      <div class="row between">
        <p class="small soft" role="status">${left === 0 ? "All judged, the best first." : `${this.many.length - left} judged, ${left} to go.`}</p>
        ${left > 0 ? html`<button class="main" ?disabled=${this.busy} @click=${this.#judgeAll}>${this.busy ? "Judging …" : `Judge all ${left}`}</button>` : ""}
      </div>
      <ul class="plain">${this.inOrder()
        .slice(0, mostRows)
        .map((one) => this.renderCandidate(one))}</ul>
      ${this.many.length > mostRows ? html`<p class="small soft">The first ${mostRows} of ${this.many.length}. All that are judged stand in the log.</p>` : ""}
    </section>`;
  }

  private renderCandidate(one: Candidate): TemplateResult {
    if (one.judged) return sightingRow(one.judged);
    const { listing, text } = one;
    const doubts = listing.doubts.length > 0 ? ` · ${countText(listing.doubts.length, "doubt")}` : "";
    return html`<li class="sighting">
      <strong>${listingTitle(listing, text)}</strong>
      <p class="small soft">${listing.asking ? `asked ${moneyText(listing.asking.amountMinor, listing.asking.currency)}` : "no price asked"} · ${countText(listing.items.length, "item")}${doubts}</p>
      <details class="small"><summary>The words</summary><p class="quote">${text}</p></details>
      ${one.trouble ? html`<p class="refusal">✕ ${one.trouble}</p>` : ""}
      <div class="row"><button ?disabled=${this.busy} aria-label="Judge ${listingTitle(listing, text)}" @click=${() => this.#judgeOne(one)}>Judge it</button></div>
    </li>`;
  }

  /** Judged ones first, by how far the most to pay lies over what is asked; the rest as they came. */
  private inOrder(): readonly Candidate[] {
    const margin = ({ judged }: Candidate) =>
      judged ? (judged.mostToPay?.amountMinor ?? 0) - (judged.listing.asking?.amountMinor ?? 0) : -Infinity;
    const isDone = this.many.every(({ judged }) => judged);
    return isDone ? [...this.many].sort((one, other) => margin(other) - margin(one)) : this.many;
  }

  private renderSightings(all: readonly Sighting[]): TemplateResult {
    if (all.length === 0)
      return html`<p class="soft">Nothing yet. Every listing that is judged is kept here; what they asked, and how often they came, is what the estimates of waiting rest on.</p>`;
    const found = all.filter(({ outcome }) => this.outcome === "" || outcome === this.outcome);
    return html`<div class="narrow">
        <label for="outcome">What became of it</label>
        <select id="outcome" @change=${(event: Event) => (this.outcome = (event.target as HTMLSelectElement).value)}>
          ${Object.entries({ "": "Anything", ...outcomeWords }).map(([value, word]) => html`<option value=${value} ?selected=${value === this.outcome}>${word}</option>`)}
        </select>
      </div>
      <p class="small soft" role="status">${found.length === all.length ? countText(all.length, "listing") : `${found.length} of ${countText(all.length, "listing")}`}</p>
      <ul class="plain">${found.slice(0, mostRows).map(sightingRow)}</ul>
      ${found.length > mostRows ? html`<p class="small soft">The newest ${mostRows}.</p>` : ""}
      <a class="button" href="/api/sightings/export.csv" download>The log as CSV</a>`;
  }

  readonly #read = async (event: Event): Promise<void> => {
    event.preventDefault();
    const roundTripKm = parseNumber(this.km);
    if (this.km.trim() !== "" && roundTripKm === undefined) {
      this.trouble = "The drive was not understood; a number of kilometres is expected.";
      return;
    }
    const request = { text: this.text, ...(roundTripKm !== undefined && { roundTripKm }) };
    await this.#busily(async () => {
      const judged = await tradeApi.judge(request);
      if (judged.sighting) tell(this, "ferrule-go", { path: hrefs.listing(judged.sighting.id), judged });
    });
  };

  readonly #chosen = async (event: Event): Promise<void> => {
    const file = (event.target as HTMLInputElement).files?.[0];
    if (file) await this.#readMany(await file.text());
  };

  #readMany(text: string): Promise<void> {
    return this.#busily(async () => {
      this.many = (await tradeApi.readMany(text)).listings;
      if (this.many.length === 0) this.trouble = "No listing was found in it.";
    });
  }

  readonly #judgeOne = (one: Candidate): Promise<void> =>
    this.#busily(async () => {
      await this.#judge(one);
      await this.#sightings.again();
    });

  /** One after another, so that the page stays quick and each verdict shows as it comes. */
  readonly #judgeAll = (): Promise<void> =>
    this.#busily(async () => {
      for (const one of this.many) {
        if (this.#stopped) return;
        if (!one.judged) await this.#judge(one);
      }
      await this.#sightings.again();
    });

  async #judge(one: Candidate): Promise<void> {
    const { text, listing } = one;
    const judged = await tradeApi.judge({ text, listing }).then(
      ({ sighting }): Candidate => (sighting ? { text, listing, judged: sighting } : { text, listing }),
      (error: unknown): Candidate => ({ text, listing, trouble: `${failed(error).message}.` }),
    );
    this.many = this.many.map((other) => (other === one ? judged : other));
  }

  async #busily(work: () => Promise<void>): Promise<void> {
    this.busy = true;
    this.trouble = undefined;
    await work().catch((error: unknown) => {
      this.trouble = `${failed(error).message}.`;
    });
    this.busy = false;
  }
}

customElements.define("ferrule-listings-view", ListingsView);
