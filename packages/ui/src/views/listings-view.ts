import { decodedText, type Sighting } from "@ferrule/core";
import { css, html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import { ApiError } from "../api.ts";
import { batchApi } from "../batch-api.ts";
import { sightingRow, sightingRowStyles } from "../components/sighting-row.ts";
import { whenReady } from "../components/state-notes.ts";
import type { DisplaySettings } from "../display-settings.ts";
import { tell } from "../events.ts";
import { Fetched, failed } from "../fetched.ts";
import { refusalText } from "../form/refusals-at.ts";
import { countText } from "../format/number.ts";
import { parseNumber } from "../format/parse-number.ts";
import { isOneListing } from "../listing/is-one-listing.ts";
import { hrefs } from "../route.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { twoColumns } from "../styles/two-columns.ts";
import { tradeApi } from "../trade-api.ts";
import { batchText } from "../words/batch-words.ts";
import { outcomeWords } from "../words/deal-words.ts";

const mostRows = 60;

/** Listings pasted or brought in from a file, and the log of those that were seen before. */
export class ListingsView extends LitElement {
  static override properties = {
    display: {},
    shared: {},
    pasted: {},
    text: { state: true },
    km: { state: true },
    busy: { state: true },
    trouble: { state: true },
    outcome: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    twoColumns,
    sightingRowStyles,
    css`
      .two {
        --first: 6fr;
        --second: 5fr;
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
    `,
  ];
  declare display: DisplaySettings;
  /** Text that another app has shared. */
  declare shared: string | undefined;
  /** Text that the user has pasted somewhere in the page where nothing was being typed. */
  declare pasted: string | undefined;
  declare private text: string;
  declare private km: string;
  declare private busy: boolean;
  declare private trouble: string | undefined;
  declare private outcome: string;
  readonly #batches = new Fetched(this, batchApi.all);
  readonly #sightings = new Fetched(this, () => tradeApi.sightings.all());

  constructor() {
    super();
    this.text = "";
    this.km = "";
    this.busy = false;
    this.outcome = "";
  }

  /** Shared text is read at one press: another site could send text here too, and nothing is kept unasked. */
  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("shared") && this.shared) this.text = this.shared;
  }

  protected override firstUpdated(): void {
    if (this.pasted) void this.#readPasted(this.pasted);
  }

  override render() {
    return html`<div class="stack" @ferrule-retry=${() => this.#sightings.again()}>
      <h1 tabindex="-1">Listings</h1>
      ${this.trouble ? html`<p class="ticket refusal" role="alert">✕ ${this.trouble}</p>` : ""}
      <div class="two">
        <div class="stack">${this.renderPaste()}${this.renderBatches()}</div>
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
        <textarea id="paste" data-begin placeholder="The words as the seller wrote them, price and all: read as soon as they are pasted" @paste=${this.#pastedHere} .value=${this.text} @input=${(event: Event) => (this.text = (event.target as HTMLTextAreaElement).value)}></textarea>
      </div>
      <div class="row between">
        <div class="km"><label for="km">Drive there and back (km)</label><input id="km" inputmode="decimal" autocomplete="off" placeholder="If you would fetch it" .value=${this.km} @input=${(event: Event) => (this.km = (event.target as HTMLInputElement).value)} /></div>
        ${"clipboard" in navigator ? html`<button type="button" ?disabled=${this.busy} @click=${this.#pasteForThem}>Paste and read</button>` : ""}
        <button class="main" type="submit" ?disabled=${this.busy || this.text.trim() === ""}>${this.busy ? "Reading …" : "Read it"}</button>
      </div>
      <details>
        <summary>Many at once</summary>
        <p class="why">Hundreds at once: listings with an empty line between them, one to a line, CSV with a column "text" or "title", or one JSON object per line. All are read, judged and kept, the best first.</p>
        <label for="file">Choose a file</label>
        <input id="file" type="file" accept=".txt,.csv,.jsonl,.ndjson,text/plain,text/csv" ?disabled=${this.busy} @change=${this.#chosen} />
        <p><button type="button" ?disabled=${this.busy || this.text.trim() === ""} @click=${() => this.#addMany(this.text)}>What is pasted above is many listings</button></p>
      </details>
    </form>`;
  }

  private renderBatches(): TemplateResult | string {
    const { state } = this.#batches;
    if (state.is !== "ready" || state.value.batches.length === 0) return "";
    return html`<section class="ticket" aria-labelledby="batches">
      <h2 id="batches">Brought in together</h2>
      <ul class="plain">${state.value.batches.map((batch) => html`<li class="sighting"><a href=${hrefs.batch(batch.id)}>${batch.name}</a><p class="small soft">${batchText(batch)} · ${batch.startedOn}</p></li>`)}</ul>
    </section>`;
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

  /** A listing pasted whole into the empty box is read at once; several at a time may be meant to be told apart. */
  readonly #pastedHere = (event: ClipboardEvent): void => {
    const text = event.clipboardData?.getData("text/plain") ?? "";
    if (this.text.trim() !== "" || !isOneListing(text)) return;
    event.preventDefault();
    void this.#readPasted(text);
  };

  /** For a thumb: the browser may ask first whether the page may see what was copied. */
  readonly #pasteForThem = async (): Promise<void> => {
    const text = await navigator.clipboard.readText().catch(() => "");
    if (text.trim() !== "") return this.#readPasted(text);
    this.trouble =
      "There was nothing to paste, or the browser does not let the page see it. Paste it into the box.";
    this.renderRoot.querySelector("textarea")?.focus();
  };

  #readPasted(text: string): Promise<void> {
    this.text = text;
    return isOneListing(text) ? this.#read() : Promise.resolve();
  }

  readonly #read = async (event?: Event): Promise<void> => {
    event?.preventDefault();
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
    if (!file) return;
    const text = decodedText(new Uint8Array(await file.arrayBuffer()));
    if (text === undefined) this.trouble = `${file.name} is no text.`;
    else await this.#addMany(text, file.name);
  };

  #addMany(text: string, name?: string): Promise<void> {
    return this.#busily(async () => {
      const { batch } = await batchApi.add(text, name);
      tell(this, "ferrule-go", { path: hrefs.batch(batch) });
    });
  }

  async #busily(work: () => Promise<void>): Promise<void> {
    this.busy = true;
    this.trouble = undefined;
    await work().catch((error: unknown) => {
      const refusals = error instanceof ApiError ? error.refusals : [];
      this.trouble = [`${failed(error).message}.`, ...refusals.map(refusalText)].join(" ");
    });
    this.busy = false;
  }
}

customElements.define("ferrule-listings-view", ListingsView);
