import type { Sighting } from "@ferrule/core";
import { css, html, LitElement, type TemplateResult } from "lit";
import { tell } from "../events.ts";
import { failed } from "../fetched.ts";
import { moneyText, parseMoney } from "../format/money.ts";
import { dayText } from "../format/today.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { tradeApi } from "../trade-api.ts";
import { outcomeWords } from "../words/deal-words.ts";

/** Marking what became of a listing that was not bought: sold and at what price, gone, passed over, or open again. */
export class OutcomeBox extends LitElement {
  static override properties = {
    sighting: {},
    currency: {},
    price: { state: true },
    trouble: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    css`
      .sold {
        display: grid;
        grid-template-columns: minmax(8rem, 14rem) auto;
        gap: 0.5rem;
        align-items: end;
        justify-content: start;
      }
      @media (max-width: 34rem) {
        .sold {
          grid-template-columns: minmax(0, 1fr);
        }
      }
    `,
  ];
  declare sighting: Sighting;
  declare currency: string;
  declare private price: string;
  declare private trouble: string | undefined;

  constructor() {
    super();
    this.price = "";
  }

  override render(): TemplateResult {
    const { outcome, outcomeOn, outcomePrice } = this.sighting;
    const price = outcomePrice ? ` at ${moneyText(outcomePrice.amountMinor, outcomePrice.currency)}` : "";
    return html`<div class="stack">
      <p><strong>${outcomeWords[outcome]}${price}</strong>${outcomeOn ? html` <span class="soft">on ${outcomeOn}</span>` : ""}</p>
      ${this.renderNext()}
      ${this.trouble ? html`<p class="refusal" role="alert">✕ ${this.trouble}</p>` : ""}
    </div>`;
  }

  private renderNext(): TemplateResult {
    const { outcome } = this.sighting;
    if (outcome === "open") return this.renderChoices();
    if (outcome === "bought")
      return html`<p class="small soft">Its parts are <a href="/">on the bench</a>, and what it cost is <a href="/books">in the books</a>.</p>`;
    return html`<button @click=${() => this.#mark("open")}>Open it again</button>`;
  }

  private renderChoices(): TemplateResult {
    return html`<div class="row">
        <button @click=${() => this.#mark("ignored")}>Pass it over</button>
        <button @click=${() => this.#mark("gone")}>It is gone</button>
      </div>
      <form class="sold" @submit=${this.#sold}>
        <div><label for="price">It sold at (${this.currency})</label>
          <input id="price" inputmode="decimal" autocomplete="off" placeholder="If you know" .value=${this.price} @input=${(event: Event) => (this.price = (event.target as HTMLInputElement).value)} /></div>
        <button type="submit">Somebody else bought it</button>
      </form>`;
  }

  readonly #sold = (event: Event): void => {
    event.preventDefault();
    const amountMinor = parseMoney(this.price, this.currency);
    if (this.price.trim() !== "" && amountMinor === undefined) {
      this.trouble = "An amount is expected, such as 45, 45,50 or 45.50.";
      return;
    }
    void this.#mark("sold", amountMinor);
  };

  async #mark(outcome: Sighting["outcome"], amountMinor?: number): Promise<void> {
    const isOpen = outcome === "open";
    const change = {
      outcome,
      outcomeOn: isOpen ? null : dayText(new Date()),
      outcomePrice: amountMinor === undefined ? null : { amountMinor, currency: this.currency },
    };
    this.trouble = await tradeApi.sightings.patch(this.sighting.id, change, this.sighting).then(
      () => undefined,
      (error: unknown) => `${failed(error).message}.`,
    );
    if (this.trouble) return;
    tell(this, "ferrule-done", {
      text: isOpen ? "Open again." : `Marked: ${outcomeWords[outcome].toLowerCase()}.`,
    });
    tell(this, "ferrule-retry", undefined);
  }
}

customElements.define("ferrule-outcome-box", OutcomeBox);
