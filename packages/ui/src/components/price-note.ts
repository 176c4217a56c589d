import type { ListingItem, Money, Refusal } from "@ferrule/core";
import { html, LitElement, type TemplateResult } from "lit";
import { ApiError } from "../api.ts";
import { tell } from "../events.ts";
import { failed } from "../fetched.ts";
import type { RecordField } from "../form/record-field.ts";
import { dayText } from "../format/today.ts";
import { subjectOfItem } from "../listing/subject-of-item.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { tradeApi } from "../trade-api.ts";
import { conditionWords } from "../words/deal-words.ts";
import { itemTitle } from "../words/listing-title.ts";
import "./record-form.ts";

/** Notes one price of an item, or of the club it becomes, as evidence; tells `ferrule-retry` once it is noted. */
export class PriceNote extends LitElement {
  static override properties = {
    item: {},
    currency: {},
    open: {},
    trouble: { state: true },
    refusals: { state: true },
  };
  static override styles = [baseStyles];
  declare item: ListingItem;
  declare currency: string;
  declare open: boolean;
  declare private trouble: string | undefined;
  declare private refusals: readonly Refusal[];

  constructor() {
    super();
    this.open = false;
    this.refusals = [];
  }

  override render(): TemplateResult {
    return html`<details ?open=${this.open}>
      <summary>Note a price you know of</summary>
      <ferrule-record-form
        .fields=${this.fields()}
        .record=${{ on: dayText(new Date()), what: "sold", as: "itself" }}
        .submitWord=${"Note the price"}
        .trouble=${this.trouble}
        .refusals=${this.refusals}
        @ferrule-record=${this.#note}
      ></ferrule-record-form>
    </details>`;
  }

  override focus(): void {
    const details = this.renderRoot.querySelector("details");
    if (details) details.open = true;
    this.renderRoot.querySelector<HTMLElement>("ferrule-record-form")?.focus();
  }

  private fields(): readonly RecordField[] {
    const { kind } = this.item;
    const whole = { itself: itemTitle({ ...this.item, quantity: 1 }), club: "The finished club of it" };
    return [
      { path: "price", label: "Price", control: "money", currency: this.currency, needed: true },
      { path: "what", label: "It was", control: "choice", choices: { sold: "Sold at that", asked: "Asked" } },
      ...(kind === "head" || kind === "shaft"
        ? [{ path: "as", label: "For", control: "choice", choices: whole } as const]
        : []),
      {
        path: "condition",
        label: "Condition",
        control: "choice",
        choices: { "": "Not known", ...conditionWords },
      },
      { path: "on", label: "On", control: "date", needed: true },
      { path: "daysToSell", label: "Days it took", control: "number" },
    ];
  }

  readonly #note = async (event: CustomEvent<{ record: Record<string, unknown> }>): Promise<void> => {
    event.stopPropagation();
    const { as, ...noted } = event.detail.record as { as?: "itself" | "club"; price: Money };
    await tradeApi.evidence.add({ ...subjectOfItem(this.item, as ?? "itself"), ...noted }).then(
      () => {
        this.trouble = undefined;
        this.refusals = [];
        tell(this, "ferrule-done", { text: "The price is noted." });
        tell(this, "ferrule-retry", undefined);
      },
      (error: unknown) => {
        this.trouble = `${failed(error).message}.`;
        this.refusals = error instanceof ApiError ? error.refusals : [];
      },
    );
  };
}

customElements.define("ferrule-price-note", PriceNote);
