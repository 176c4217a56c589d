import type { Refusal, Sighting } from "@ferrule/core";
import { html, LitElement, type TemplateResult } from "lit";
import { ApiError } from "../api.ts";
import { failed } from "../fetched.ts";
import type { RecordField } from "../form/record-field.ts";
import { likelyPaid, likelyPurchase } from "../listing/likely-purchase.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { type BuyRequest, tradeApi } from "../trade-api.ts";
import { itemTitle } from "../words/listing-title.ts";
import "./record-form.ts";
import { tellBought } from "./tell-bought.ts";

/** Buying what a listing offers: what was paid, when, the drive, and which of it. */
export class BuyForm extends LitElement {
  static override properties = {
    sighting: {},
    currency: {},
    left: { state: true },
    busy: { state: true },
    trouble: { state: true },
    refusals: { state: true },
  };
  static override styles = [baseStyles, formStyles];
  declare sighting: Sighting;
  declare currency: string;
  /** Items that were not taken. */
  declare private left: readonly number[];
  declare private busy: boolean;
  declare private trouble: string | undefined;
  declare private refusals: readonly Refusal[];

  constructor() {
    super();
    this.left = [];
    this.busy = false;
    this.refusals = [];
  }

  override render(): TemplateResult {
    return html`<div class="stack">
      ${this.sighting.listing.items.length > 1 ? this.renderItems() : ""}
      <ferrule-record-form
        .fields=${this.fields()}
        .record=${likelyPurchase(this.sighting)}
        .keepsTyped=${true}
        .submitWord=${"Put it on the bench"}
        .busy=${this.busy}
        .trouble=${this.trouble}
        .refusals=${this.refusals}
        @ferrule-record=${this.#buy}
      ></ferrule-record-form>
    </div>`;
  }

  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>("ferrule-record-form")?.focus();
  }

  private renderItems(): TemplateResult {
    return html`<fieldset>
      <legend>Which of it did you buy?</legend>
      ${this.sighting.listing.items.map(
        (item, at) =>
          html`<label class="tick"><input type="checkbox" .checked=${!this.left.includes(at)} @change=${() => this.#turn(at)} />${itemTitle(item)}</label>`,
      )}
    </fieldset>`;
  }

  private fields(): readonly RecordField[] {
    const { currency } = likelyPaid(this.sighting.listing) ?? this;
    const isForeign = currency !== this.currency;
    return [
      { path: "paid", label: "Paid", control: "money", currency, needed: true },
      ...(isForeign
        ? [
            {
              path: "rate",
              label: `One ${currency} in ${this.currency}`,
              control: "number",
              needed: true,
            } as const,
          ]
        : []),
      { path: "on", label: "On", control: "date", needed: true },
      { path: "postage", label: "Postage on top", control: "money", currency },
      { path: "roundTripKm", label: "Drive, there and back", control: "number", unit: "km" },
      { path: "minutes", label: "Time for it", control: "number", unit: "min" },
    ];
  }

  #turn(at: number): void {
    this.left = this.left.includes(at) ? this.left.filter((one) => one !== at) : [...this.left, at];
  }

  readonly #buy = async (event: CustomEvent<{ record: Record<string, unknown> }>): Promise<void> => {
    event.stopPropagation();
    const taken = this.sighting.listing.items.map((_item, at) => at).filter((at) => !this.left.includes(at));
    if (taken.length === 0) {
      this.trouble = "Nothing is ticked as bought.";
      return;
    }
    this.busy = true;
    const request = { ...event.detail.record, ...(this.left.length > 0 && { items: taken }) } as BuyRequest;
    await tradeApi.buy(this.sighting.id, request).then(
      (reply) => tellBought(this, reply),
      (error: unknown) => this.#refused(error),
    );
    this.busy = false;
  };

  #refused(error: unknown): void {
    this.trouble = `${failed(error).message}.`;
    this.refusals = error instanceof ApiError ? error.refusals : [];
  }
}

customElements.define("ferrule-buy-form", BuyForm);
