import type {
  CatalogueModel,
  CostSettings,
  Deal,
  Evidence,
  Listing,
  ListingItem,
  Money,
  Sighting,
} from "@ferrule/core";
import { html, LitElement, type TemplateResult } from "lit";
import { api } from "../api.ts";
import "../components/buy-form.ts";
import "../components/deal-mark.ts";
import { dealItem, dealItemStyles } from "../components/deal-item.ts";
import type { ListingFacts } from "../components/listing-facts.ts";
import "../components/listing-facts.ts";
import { listingHits } from "../components/listing-hits.ts";
import { markedWords, markedWordsStyles } from "../components/marked-words.ts";
import { meanwhileNote } from "../components/meanwhile-note.ts";
import "../components/outcome-box.ts";
import type { PriceNote } from "../components/price-note.ts";
import "../components/price-note.ts";
import "../components/question-message.ts";
import { settingsTableStyles } from "../components/settings-table.ts";
import { whenReady } from "../components/state-notes.ts";
import { tellBought } from "../components/tell-bought.ts";
import { waitingNote } from "../components/waiting-note.ts";
import { reasonList, wayTable, wayTableStyles } from "../components/way-table.ts";
import type { DisplaySettings } from "../display-settings.ts";
import type { News } from "../events.ts";
import { Fetched, failed } from "../fetched.ts";
import { moneyText } from "../format/money.ts";
import { parseNumber } from "../format/parse-number.ts";
import { withItem, withoutItem } from "../listing/change-items.ts";
import { likelyPurchase } from "../listing/likely-purchase.ts";
import {
  draftFromListing,
  type ListingDraft,
  listingFromDraft,
  type Writing,
} from "../listing/listing-draft.ts";
import { OpenThing } from "../live/open-thing.ts";
import { hrefs } from "../route.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { type BuyRequest, type JudgeReply, tradeApi } from "../trade-api.ts";
import { watchApi } from "../watch-api.ts";
import { dealSentence } from "../words/deal-sentence.ts";
import { outcomeWords, wayWords } from "../words/deal-words.ts";
import { listingTitle } from "../words/listing-title.ts";
import { listingStyles } from "./listing-styles.ts";

/** Time for the next key to be struck before a correction is judged. */
const pauseMs = 400;

interface Loaded {
  readonly costs: CostSettings;
  readonly models: readonly CatalogueModel[];
  readonly evidence: ReadonlyMap<string, Evidence>;
  /** Names of the parts on the bench. */
  readonly parts: ReadonlySet<string>;
}

/** One listing: what to do about it, what its words say, and what becomes of it. Every correction is judged at once, and kept. */
export class ListingView extends LitElement {
  static override properties = {
    display: {},
    sightingId: {},
    judged: {},
    sighting: { state: true },
    listing: { state: true },
    draft: { state: true },
    slips: { state: true },
    where: { state: true },
    deal: { state: true },
    judging: { state: true },
    trouble: { state: true },
    buying: { state: true },
    seen: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    settingsTableStyles,
    wayTableStyles,
    dealItemStyles,
    markedWordsStyles,
    listingStyles,
  ];
  declare display: DisplaySettings;
  declare sightingId: string;
  /** What was said of it a moment ago, where the page comes from judging it. */
  declare judged: JudgeReply | undefined;
  /** As it stands in the log. */
  declare private sighting: Sighting | undefined;
  /** What holds now, corrections and all. */
  declare private listing: Listing | undefined;
  declare private draft: ListingDraft;
  declare private slips: Readonly<Record<string, string>>;
  /** The drive and the place, as typed. */
  declare private where: { readonly km: string; readonly place: string };
  declare private deal: Deal | undefined;
  declare private judging: boolean;
  declare private trouble: string | undefined;
  declare private buying: boolean;
  /** The fact whose words are shown. */
  declare private seen: string | undefined;
  #turn = 0;
  #soon: ReturnType<typeof setTimeout> | undefined;
  readonly #hits = new Fetched(this, () => watchApi.hits());
  /** What somebody else made of the listing while it is being corrected here. */
  readonly #changedElsewhere = new OpenThing(this, () => {
    const { sightingId: id, listing: base } = this;
    return (
      base && {
        table: "sightings",
        id,
        base,
        present: async () => (await tradeApi.sightings.one(id)).listing,
      }
    );
  });
  readonly #all: Fetched<Loaded> = new Fetched<Loaded>(this, () => this.#load());

  constructor() {
    super();
    this.draft = {};
    this.slips = {};
    this.where = { km: "", place: "" };
    this.judging = false;
    this.buying = false;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    if (this.#soon !== undefined) void this.#judge();
  }

  override render() {
    return html`<div
      class="stack"
      @ferrule-retry=${this.#again}
      @ferrule-answered=${(event: CustomEvent<News["ferrule-answered"]>) => this.#answered(event.detail.name, event.detail.value)}
      @ferrule-see-fact=${(event: CustomEvent<News["ferrule-see-fact"]>) => this.#seeFact(event.detail.field)}
      @ferrule-see-words=${(event: CustomEvent<News["ferrule-see-words"]>) => this.#seeWords(event.detail.field)}
      @ferrule-add-item=${() => this.#change((listing) => withItem(listing))}
      @ferrule-remove-item=${(event: CustomEvent<News["ferrule-remove-item"]>) => this.#change((listing) => withoutItem(listing, event.detail.index))}
    >
      <div class="row between"><h1 tabindex="-1">${this.renderTitle()}</h1><a class="button" href=${hrefs.history("sightings", this.sightingId)}>What changed here</a></div>
      ${meanwhileNote(this.#changedElsewhere.meanwhile, this.#takeTheirs, "Your next correction here would take its place.")}
      ${whenReady(this.#all.state, "the listing", (loaded) => (this.listing && this.sighting ? this.renderAll(loaded, this.sighting, this.listing) : html``))}
    </div>`;
  }

  private renderTitle(): string {
    return this.listing && this.sighting ? listingTitle(this.listing, this.sighting.text) : "A listing";
  }

  private renderAll(loaded: Loaded, sighting: Sighting, listing: Listing): TemplateResult {
    const { currency } = loaded.costs;
    return html`
      ${this.trouble ? html`<p class="ticket refusal" role="alert">✕ ${this.trouble}</p>` : ""}
      ${this.renderVerdict(sighting, loaded.costs)}
      <div class="parts">
        ${this.renderWords(sighting, listing)}
        <div class="stack side">
          ${this.deal && this.deal.questions.length > 0 ? this.renderQuestions(this.deal, loaded) : ""}
          ${listingHits(this.#hitsHere(), currency)}
          ${this.renderWhere()}
          <section class="ticket" aria-labelledby="became"><h2 id="became">What became of it</h2>
            <ferrule-outcome-box .sighting=${sighting} .currency=${currency}></ferrule-outcome-box></section>
        </div>
        ${this.renderFacts(loaded, listing)}
      </div>
      ${this.deal ? this.renderDeal(this.deal, loaded, listing) : ""}
    `;
  }

  private renderVerdict(sighting: Sighting, costs: CostSettings): TemplateResult {
    const { deal } = this;
    const isOver = sighting.outcome !== "open";
    return html`<section class="ticket verdict ${this.judging ? "judging" : ""}" aria-labelledby="verdict" aria-busy=${this.judging}>
      <h2 id="verdict">Verdict</h2>
      ${isOver ? html`<p><strong>${outcomeWords[sighting.outcome]}.</strong> What stands here is what it looked like when it was last judged.</p>` : ""}
      <div class="halves">
        <div class="stack">
          <div role="status">${deal ? html`<ferrule-deal-mark class="said" .verdict=${deal.verdict} .words=${dealSentence(deal)}></ferrule-deal-mark>` : html`<p class="soft">${this.judging ? "Judging …" : this.renderLast(sighting)}</p>`}</div>
          ${deal ? this.renderFigures(deal, costs) : ""}
        </div>
        ${deal ? this.renderReasons(deal, costs) : ""}
      </div>
      ${isOver ? html`<button @click=${() => this.#judge()}>Judge it as of today</button>` : this.renderBuy(sighting, costs.currency)}
    </section>`;
  }

  private renderLast({ verdict, mostToPay, listing }: Sighting): TemplateResult | string {
    if (!verdict) return "Not judged yet.";
    const words = dealSentence({ verdict, mostToPay: mostToPay ?? null, asking: listing.asking });
    return html`<ferrule-deal-mark class="said" .verdict=${verdict} .words=${words}></ferrule-deal-mark>`;
  }

  private renderReasons({ reasons, cares, asking }: Deal, costs: CostSettings): TemplateResult {
    return html`<div>
      ${reasonList(reasons)}
      ${isConvertible(asking, costs) ? "" : html`<p>No rate is known for ${asking?.currency}, so what is asked does not count yet. <a href="/costs">Type one in</a>.</p>`}
      ${cares.length > 0 ? html`<div class="care"><strong>Look twice</strong>${reasonList(cares)}</div>` : ""}
    </div>`;
  }

  private renderFigures(
    { mostToPay, asking, gettingHereMinor, best }: Deal,
    costs: CostSettings,
  ): TemplateResult {
    return html`<dl class="figures">
      <div><dt>Most to pay</dt><dd>${mostToPay ? moneyText(mostToPay.amountMinor, mostToPay.currency) : "Nothing to go by"}</dd></div>
      <div><dt>Asked</dt><dd>${asking ? moneyText(asking.amountMinor, asking.currency) : "Not said"}</dd></div>
      <div><dt>Getting it here</dt><dd>${moneyText(gettingHereMinor, costs.currency)}</dd></div>
      <div><dt>Best thing to do</dt><dd class="word">${wayWords[best]}</dd></div>
    </dl>`;
  }

  private renderBuy(sighting: Sighting, currency: string): TemplateResult {
    if (!this.buying)
      return html`<div class="row">${this.renderBuyAtOnce(sighting, currency)}<button @click=${this.#openBuying}>I bought it otherwise</button></div>`;
    return html`<section aria-label="Buying it"><hr class="rule" />
      <ferrule-buy-form .sighting=${{ ...sighting, listing: this.listing ?? sighting.listing }} .currency=${currency}></ferrule-buy-form>
    </section>`;
  }

  /** One press, where nothing is left to be said but that it was bought at what was asked. */
  private renderBuyAtOnce(sighting: Sighting, currency: string): TemplateResult | string {
    const { asking, items } = this.listing ?? sighting.listing;
    if (!asking || asking.currency !== currency || items.length === 0) return "";
    return html`<button class=${this.deal?.verdict === "buy" ? "main" : ""} ?disabled=${this.judging} @click=${() => this.#buyAtOnce(sighting)}>Bought for ${moneyText(asking.amountMinor, asking.currency)}</button>`;
  }

  private renderWords(sighting: Sighting, listing: Listing): TemplateResult {
    const loose = listing.doubts.filter(({ field }) => field === null);
    return html`<section class="ticket stack" aria-labelledby="words">
      <h2 id="words">What the words say</h2>
      ${sighting.text === "" ? "" : markedWords(sighting.text, listing.spans, this.seen)}
      ${loose.length > 0 ? html`<ul class="doubts small">${loose.map(({ text }) => html`<li>${text}</li>`)}</ul>` : ""}
    </section>`;
  }

  private renderFacts({ models }: Loaded, listing: Listing): TemplateResult {
    return html`<section class="ticket stack facts" aria-labelledby="facts">
      <h2 id="facts">The facts, to be corrected</h2>
      <p class="why">What is empty was not said. Correct what was read wrongly, or fill in what you know: it is judged again, and your correction is kept.</p>
      <ferrule-listing-facts .listing=${listing} .draft=${this.draft} .slips=${this.slips} .models=${models} .display=${this.display}></ferrule-listing-facts>
    </section>`;
  }

  private renderQuestions(deal: Deal, { costs, parts }: Loaded): TemplateResult {
    return html`<section class="ticket" aria-labelledby="ask"><h2 id="ask">What to find out</h2>
      <ferrule-question-message .deal=${deal} .currency=${costs.currency} .parts=${parts}></ferrule-question-message></section>`;
  }

  private renderWhere(): TemplateResult {
    const typed = (name: "km" | "place") => (event: Event) => {
      this.where = { ...this.where, [name]: (event.target as HTMLInputElement).value };
      this.#judgeSoon();
    };
    const isWrong = this.where.km.trim() !== "" && parseNumber(this.where.km) === undefined;
    return html`<section class="ticket" aria-labelledby="where"><h2 id="where">Where it is</h2>
      <div class="where">
        <div><label for="place">Place</label><input id="place" autocomplete="off" .value=${this.where.place} @input=${typed("place")} /></div>
        <div><label for="km">Drive there and back (km)</label><input id="km" inputmode="decimal" autocomplete="off" aria-invalid=${isWrong} aria-describedby="km-refused" .value=${this.where.km} @input=${typed("km")} /></div>
      </div>
      <div id="km-refused">${isWrong ? html`<p class="refusal">✕ A number of kilometres is expected.</p>` : ""}</div>
    </section>`;
  }

  private renderDeal(deal: Deal, { costs, evidence }: Loaded, listing: Listing): TemplateResult {
    const { currency } = costs;
    const waits = deal.alternatives.flatMap(({ waiting }) => (waiting ? [waiting] : []));
    return html`
      <section class="ticket" aria-labelledby="ways"><h2 id="ways">What could be done with it</h2>${wayTable(deal, currency)}</section>
      <section class="ticket stack" aria-labelledby="here"><h2 id="here">What it is worth here</h2>
        ${deal.items.map((item, at) => dealItem(item, evidence, this.renderPriceNote(listing.items[at], item.resale.known, currency), currency))}
        ${deal.items.length === 0 ? html`<p>Nothing in it was recognised. Add an item above.</p>` : ""}
      </section>
      ${waits.length > 0 ? html`<section class="ticket" aria-labelledby="waits"><h2 id="waits">What waiting comes to</h2>${waits.map((waiting) => waitingNote(waiting, currency))}</section>` : ""}
      ${deal.notices.length > 0 ? html`<section class="ticket" aria-labelledby="notices"><h2 id="notices">Worth knowing</h2><ul>${deal.notices.map((text) => html`<li>${text}</li>`)}</ul></section>` : ""}
    `;
  }

  private renderPriceNote(item: ListingItem | undefined, isKnown: boolean, currency: string): TemplateResult {
    return item
      ? html`<ferrule-price-note .item=${item} .open=${!isKnown} .currency=${currency}></ferrule-price-note>`
      : html``;
  }

  async #load(): Promise<Loaded> {
    const [sighting, costs, { models }, { evidence }, { parts }] = await Promise.all([
      tradeApi.sightings.one(this.sightingId),
      tradeApi.costs(),
      tradeApi.models.all(),
      tradeApi.evidence.all(),
      api.bench(),
    ]);
    this.sighting = sighting;
    if (!this.listing) this.#open(sighting, costs.currency);
    return {
      costs,
      models,
      evidence: new Map(evidence.map((row) => [row.id, row])),
      parts: new Set(parts.map(({ id }) => id)),
    };
  }

  #open(sighting: Sighting, currency: string): void {
    this.listing = sighting.listing;
    this.draft = draftFromListing(sighting.listing, this.#writing(currency));
    this.where = {
      km: sighting.roundTripKm === undefined ? "" : String(sighting.roundTripKm),
      place: sighting.place ?? "",
    };
    if (this.judged?.sighting?.id === sighting.id) this.deal = this.judged.deal;
    else if (sighting.outcome === "open") void this.#judge();
  }

  /** The facts as they are there now, in place of those that stand here. */
  readonly #takeTheirs = async (): Promise<void> => {
    clearTimeout(this.#soon);
    this.#soon = undefined;
    this.#changedElsewhere.forget();
    this.listing = undefined;
    this.judged = undefined;
    await this.#all.again();
  };

  #writing(
    currency = this.#all.state.is === "ready" ? this.#all.state.value.costs.currency : "EUR",
  ): Writing {
    return { lengthUnit: this.display.lengthUnit, currency };
  }

  /** Something else has changed, such as a price that was noted: what is typed here stays. */
  readonly #again = async (): Promise<void> => {
    await this.#all.again();
    if (this.sighting?.outcome === "open") await this.#judge();
  };

  /** Another maker or model than the list's is not that model any more; a model of the list names both. */
  #answered(name: string, value: string): void {
    if (!this.listing) return;
    const [, at, field] = /^(items\.\d+)\.(maker|model|modelId)$/.exec(name) ?? [];
    const also = field === "modelId" ? this.#namesOf(value, at) : field ? { [`${at}.modelId`]: "" } : {};
    this.draft = { ...this.draft, ...also, [name]: value };
    const { listing, slips } = listingFromDraft(this.draft, this.listing, this.#writing());
    this.listing = listing;
    this.slips = slips;
    this.#judgeSoon();
  }

  #namesOf(modelId: string, at: string | undefined): ListingDraft {
    const models = this.#all.state.is === "ready" ? this.#all.state.value.models : [];
    const model = models.find(({ id }) => id === modelId);
    return model ? { [`${at}.maker`]: model.maker, [`${at}.model`]: model.model } : {};
  }

  #change(change: (listing: Listing) => Listing): void {
    if (!this.listing) return;
    this.listing = change(this.listing);
    this.draft = draftFromListing(this.listing, this.#writing());
    this.slips = {};
    this.#judgeSoon();
  }

  #judgeSoon(): void {
    clearTimeout(this.#soon);
    this.#soon = setTimeout(() => void this.#judge(), pauseMs);
  }

  /** An answer that a later correction has overtaken is dropped. */
  async #judge(): Promise<void> {
    clearTimeout(this.#soon);
    this.#soon = undefined;
    if (!this.listing || !this.sighting) return;
    const turn = ++this.#turn;
    this.judging = true;
    const answer = await this.#ask(this.sighting, this.listing).then(
      ({ deal, sighting }) => ({ deal, sighting: sighting ?? this.sighting, trouble: undefined }),
      (error: unknown) => ({
        deal: this.deal,
        sighting: this.sighting,
        trouble: `${failed(error).message}.`,
      }),
    );
    if (turn !== this.#turn) return;
    Object.assign(this, answer);
    this.judging = false;
    await this.#hits.again();
  }

  #hitsHere() {
    const { state } = this.#hits;
    return state.is === "ready"
      ? state.value.hits.filter(({ sighting }) => sighting === this.sightingId)
      : [];
  }

  /** One call both keeps the correction and judges it. */
  #ask(sighting: Sighting, listing: Listing): Promise<JudgeReply> {
    const km = parseNumber(this.where.km);
    const place = this.where.place.trim();
    return tradeApi.judge({
      sighting: sighting.id,
      listing,
      ...(km !== undefined && km >= 0 && { roundTripKm: km }),
      ...(place !== "" && { place }),
    });
  }

  async #buyAtOnce(sighting: Sighting): Promise<void> {
    if (this.#soon !== undefined) await this.#judge();
    const purchase = likelyPurchase({ ...sighting, listing: this.listing ?? sighting.listing });
    await tradeApi.buy(sighting.id, purchase as BuyRequest).then(
      (reply) => tellBought(this, reply),
      (error: unknown) => (this.trouble = `${failed(error).message}.`),
    );
  }

  readonly #openBuying = async (): Promise<void> => {
    if (this.#soon !== undefined) await this.#judge();
    this.buying = true;
    await this.updateComplete;
    const form = this.renderRoot.querySelector<LitElement>("ferrule-buy-form");
    await form?.updateComplete;
    form?.focus();
  };

  #seeFact(field: string): void {
    this.seen = field;
    const notes = [...this.renderRoot.querySelectorAll<PriceNote>("ferrule-price-note")];
    if (field === "roundTripKm") this.renderRoot.querySelector<HTMLElement>("#km")?.focus();
    else if (field === "resale") (notes.find(({ open }) => open) ?? notes[0])?.focus();
    else this.renderRoot.querySelector<ListingFacts>("ferrule-listing-facts")?.see(field);
  }

  async #seeWords(field: string): Promise<void> {
    this.seen = field;
    await this.updateComplete;
    const mark = this.renderRoot.querySelector("mark.seen");
    mark?.scrollIntoView({ block: "center" });
    mark?.querySelector<HTMLElement>("a")?.focus({ preventScroll: true });
  }
}

/** Whether an amount can be set against the bench's currency. */
function isConvertible(money: Money | null, { currency, rates }: CostSettings): boolean {
  return money === null || money.currency === currency || rates[money.currency] !== undefined;
}

customElements.define("ferrule-listing-view", ListingView);
