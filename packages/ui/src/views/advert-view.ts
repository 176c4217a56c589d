import type { SaleDescription, SaleFact, SaleLine } from "@ferrule/core";
import { css, html, LitElement, type TemplateResult } from "lit";
import { whenReady } from "../components/state-notes.ts";
import "../components/template-form.ts";
import { tell } from "../events.ts";
import { Fetched } from "../fetched.ts";
import { shareText } from "../format/duration.ts";
import { moneyIntervalText, moneyText } from "../format/money.ts";
import { numberText } from "../format/number.ts";
import { hrefs } from "../route.ts";
import { sheetApi } from "../sheet-api.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { twoColumns } from "../styles/two-columns.ts";
import { closenessWords } from "../words/deal-words.ts";
import { fieldText } from "../words/field-words.ts";

/** A draft of what to write about parts that go for one price, and what every line of it rests on. */
export class AdvertView extends LitElement {
  static override properties = { parts: {}, copied: { state: true } };
  static override styles = [
    baseStyles,
    formStyles,
    twoColumns,
    css`
      #text {
        min-height: 26rem;
      }
      .two {
        --first: 3fr;
        --second: 2fr;
      }
      .price {
        font-family: var(--mono);
        font-size: 1.3rem;
        font-weight: 700;
      }
      li {
        overflow-wrap: anywhere;
      }
    `,
  ];
  declare parts: readonly string[];
  declare private copied: string;
  readonly #draft: Fetched<SaleDescription> = new Fetched<SaleDescription>(this, () => this.#ask());
  /** Whether somebody has written into the text. */
  #isTyped = false;

  constructor() {
    super();
    this.parts = [];
    this.copied = "";
  }

  override render() {
    const { state } = this.#draft;
    return html`<div class="stack" @ferrule-retry=${this.#anew}>
      <h1 tabindex="-1">Describe it for sale</h1>
      ${whenReady(state, "the description", (draft) => this.renderDraft(draft))}
      ${state.is === "failed" && state.code === "unsafe" ? this.renderStopped() : ""}
    </div>`;
  }

  /** What is changed elsewhere does not write over what somebody has written here. */
  async #ask(): Promise<SaleDescription> {
    const draft = await sheetApi.advert(this.parts);
    const { state } = this.#draft;
    return this.#isTyped && state.is === "ready" ? { ...draft, text: state.value.text } : draft;
  }

  readonly #anew = (): void => {
    this.#isTyped = false;
    void this.#draft.again();
  };

  private renderDraft(draft: SaleDescription): TemplateResult {
    return html`<div class="two">
        <section class="ticket stack" aria-labelledby="draft"><h2 id="draft">The draft</h2>
          <p class="why">Only what the bench knows is said. Change the words as you like; what you add is yours.</p>
          <div class="row">
            <button class="main" @click=${this.#copy}>Copy the text</button>
            <a class="button" href=${hrefs.sell(this.parts)}>It is sold</a>
            <span role="status">${this.copied}</span>
          </div>
          <label for="text">Text</label><textarea id="text" .value=${draft.text} @input=${() => (this.#isTyped = true)}></textarea>
        </section>
        <div class="stack">${this.renderPrice(draft)}${this.renderPhotos(draft)}</div>
      </div>
      ${this.renderFacts(draft)}
      <section class="ticket" aria-labelledby="own"><h2 id="own">Your template</h2>
        <details><summary>Change how descriptions are written</summary><ferrule-template-form .parts=${this.parts}></ferrule-template-form></details>
      </section>`;
  }

  private renderPrice({ price }: SaleDescription): TemplateResult {
    if (!price.known)
      return html`<section class="ticket" aria-labelledby="price"><h2 id="price">Price</h2><p>No price is suggested. ${price.question}</p></section>`;
    const { suggested, lowMinor, highMinor, effectiveCount, basis, basisCount } = price;
    const { amountMinor: valueMinor, currency } = suggested;
    return html`<section class="ticket" aria-labelledby="price"><h2 id="price">Price</h2>
      <p class="price">${moneyIntervalText({ valueMinor, lowMinor, highMinor }, currency)}</p>
      <p class="small soft">The middle of what such a thing goes for, and where 95 in 100 lie. It amounts to ${numberText(effectiveCount, 1)} equally good prices of ${basisCount} noted.</p>
      <details><summary>The prices that weigh most</summary><ul>${basis.map(
        ({ on, what, price: noted, closeness, share }) =>
          html`<li>${moneyText(noted.amountMinor, noted.currency)} ${what} on ${on}, ${closenessWords[closeness].toLowerCase()}, ${shareText(share)}</li>`,
      )}</ul><p class="small"><a href="/prices">All noted prices</a></p></details>
    </section>`;
  }

  private renderPhotos({ photos }: SaleDescription): TemplateResult {
    return html`<section class="ticket" aria-labelledby="photos"><h2 id="photos">Photographs</h2>
      ${photos.map((text) => html`<label class="tick"><input type="checkbox" /><span>${text}</span></label>`)}</section>`;
  }

  private renderFacts(draft: SaleDescription): TemplateResult {
    const lines = [
      draft.title,
      ...draft.parts,
      ...draft.measures,
      ...draft.condition,
      ...draft.extras,
      ...draft.unknown,
    ];
    return html`<section class="ticket" aria-labelledby="facts"><h2 id="facts">What each line rests on</h2>
      <details><summary>${lines.length} lines</summary><ul>${lines.map((line) => this.renderLine(line))}</ul></details></section>`;
  }

  private renderLine({ text, from }: SaleLine): TemplateResult {
    return html`<li>${text}<br /><span class="small soft">${[...new Set(from.map(factText))].join("; ")}</span></li>`;
  }

  private renderStopped(): TemplateResult {
    return html`<section class="ticket stack" aria-labelledby="stopped"><h2 id="stopped">Stopped for safety</h2>
      <p>Nothing is described for sale as something to swing while a fault of safety stands against it.</p>
      <div class="row">${this.parts.map((id) => html`<a class="button" href=${hrefs.inspect(id)}>Look over ${id}</a>`)}</div></section>`;
  }

  readonly #copy = async (): Promise<void> => {
    const box = this.renderRoot.querySelector<HTMLTextAreaElement>("#text");
    if (!box) return;
    // Over plain HTTP from another device the browser has no clipboard to write to; then the text is selected.
    const copied = await navigator.clipboard?.writeText(box.value).then(
      () => true,
      () => false,
    );
    if (!copied) box.select();
    this.copied = copied ? "Copied." : "The text is selected: copy it from there.";
    tell(this, "ferrule-done", { text: this.copied });
  };
}

function factText(fact: SaleFact): string {
  switch (fact.of) {
    case "part":
      return `${fact.part}, ${fieldText(fact.field).toLowerCase()}`;
    case "joint":
      return `joint of ${fact.parts.join(" and ")}`;
    case "offer":
      return `what goes: ${fact.parts.join(", ")}`;
    case "measurement":
      return `measured (${fact.measurement})`;
    case "estimate":
      return "worked out from the parts";
    case "inspection":
      return `looked over (${fact.inspection})`;
    case "clearance":
      return `cleared (${fact.clearance})`;
  }
}

customElements.define("ferrule-advert-view", AdvertView);
