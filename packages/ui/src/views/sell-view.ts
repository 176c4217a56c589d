import {
  type CostSettings,
  type Joint,
  type Money,
  type Part,
  type PriceSuggestion,
  type Refusal,
  safetyStops,
} from "@ferrule/core";
import { css, html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import { ApiError, api, type Bench } from "../api.ts";
import "../components/record-form.ts";
import { emptyNote, whenReady } from "../components/state-notes.ts";
import { tell } from "../events.ts";
import { Fetched, failed } from "../fetched.ts";
import type { RecordField } from "../form/record-field.ts";
import { moneyText } from "../format/money.ts";
import { countText } from "../format/number.ts";
import { dayText } from "../format/today.ts";
import { clubsOnBench } from "../search/clubs-on-bench.ts";
import { noFilter, type PartFinder, partFinder } from "../search/find-parts.ts";
import { sheetApi } from "../sheet-api.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { twoColumns } from "../styles/two-columns.ts";
import { tradeApi } from "../trade-api.ts";
import { conditionWords } from "../words/deal-words.ts";
import { clubTitle, partTitle } from "../words/part-title.ts";

const mostRows = 12;

/** Selling parts of the bench, or a club that is put together there. */
export class SellView extends LitElement {
  static override properties = {
    chosen: {},
    suggested: { state: true },
    text: { state: true },
    trouble: { state: true },
    refusals: { state: true },
    busy: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    twoColumns,
    css`
      /* Somebody who comes with the parts chosen is here for the sale: on a phone it stands first. */
      @media (max-width: 59.99rem) {
        .known {
          order: -1;
        }
      }
      li {
        border-top: 1px solid var(--line);
      }
      label.tick span {
        overflow-wrap: anywhere;
      }
    `,
  ];
  declare chosen: readonly string[];
  /** What the chosen parts would go for together, as far as noted prices say, by the parts' ids. */
  declare private suggested: { readonly of: string; readonly price: PriceSuggestion } | undefined;
  declare private text: string;
  declare private trouble: string | undefined;
  declare private refusals: readonly Refusal[];
  declare private busy: boolean;
  #isBegun = false;
  #cameChosen = false;
  readonly #all = new Fetched(this, () => Promise.all([api.bench(), tradeApi.costs()]));

  constructor() {
    super();
    this.chosen = [];
    this.text = "";
    this.refusals = [];
    this.busy = false;
  }

  override render() {
    return html`<div class="stack" @ferrule-retry=${() => this.#all.again()}>
      <h1 tabindex="-1">Sell</h1>
      ${whenReady(this.#all.state, "the bench", ([bench, costs]) => this.renderBench(bench, costs))}
    </div>`;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!this.hasUpdated) this.#cameChosen = this.chosen.length > 0;
    if (changed.has("chosen")) void this.#suggest();
  }

  /** One for each bench as it was fetched, so that typing does not write down anew what is searched. */
  readonly #finders = new WeakMap<readonly Joint[], PartFinder>();

  /** Typing begins at the price, once the form stands there and the focus is nowhere else in it. */
  protected override updated(): void {
    const form = this.renderRoot.querySelector<LitElement>("ferrule-record-form");
    if (this.#isBegun || !form || this.chosen.length === 0 || this.suggested === undefined) return;
    this.#isBegun = true;
    if (this.renderRoot instanceof ShadowRoot && this.renderRoot.activeElement?.matches("input, select"))
      return;
    void form.updateComplete.then(() => form.focus());
  }

  private renderBench(bench: Bench, costs: CostSettings): TemplateResult {
    const unsold = bench.parts.filter(({ soldOn }) => soldOn === undefined);
    if (unsold.length === 0)
      return emptyNote(
        "Nothing to sell",
        "There is no part on the bench that is not sold.",
        html`<a class="button" href="/">To the bench</a>`,
      );
    return html`<div class="two">
      ${this.renderChoice(unsold, bench.joints)}
      <section class="ticket ${this.#cameChosen ? "known" : ""}" aria-labelledby="sale"><h2 id="sale">The sale</h2>${this.renderForm(unsold, costs)}</section>
    </div>`;
  }

  private renderChoice(unsold: readonly Part[], joints: readonly Joint[]): TemplateResult {
    const parts = new Map(unsold.map((part) => [part.id, part]));
    const clubs = clubsOnBench(unsold, joints);
    const find = this.#finders.get(joints) ?? partFinder(unsold, joints);
    this.#finders.set(joints, find);
    const found = find({ ...noFilter, text: this.text });
    const shown = [
      ...new Set([...unsold.filter(({ id }) => this.chosen.includes(id)), ...found.slice(0, mostRows)]),
    ];
    return html`<section class="ticket stack" aria-labelledby="what">
      <h2 id="what">What is sold?</h2>
      ${clubs.length > 0 ? this.renderClubs(clubs, parts) : ""}
      <div><label for="search">Search the parts</label><input id="search" type="search" autocomplete="off" .value=${this.text} @input=${(event: Event) => (this.text = (event.target as HTMLInputElement).value)} /></div>
      <ul class="plain">${shown.map(
        (part) =>
          html`<li><label class="tick"><input type="checkbox" .checked=${this.chosen.includes(part.id)} @change=${() => this.#turn([part.id])} /><span>${partTitle(part)} <span class="mono soft">${part.id}</span></span></label></li>`,
      )}</ul>
      ${found.length > mostRows ? html`<p class="small soft">${found.length - mostRows} more; search to find them.</p>` : ""}
    </section>`;
  }

  private renderClubs(
    clubs: readonly (readonly string[])[],
    parts: ReadonlyMap<string, Part>,
  ): TemplateResult {
    return html`<div><label for="club">A club that is put together</label>
      <select id="club" @change=${(event: Event) => this.#choose((event.target as HTMLSelectElement).value)}>
        <option value="">No, parts</option>
        ${clubs.map((ids) => html`<option value=${ids.join("\n")} ?selected=${sameParts(ids, this.chosen)}>${clubTitle(parts, ids[0] ?? "")} (${ids.join(" + ")})</option>`)}
      </select></div>`;
  }

  private renderForm(unsold: readonly Part[], costs: CostSettings): TemplateResult {
    const sold = unsold.filter(({ id }) => this.chosen.includes(id));
    if (sold.length === 0) return html`<p class="soft">Choose what is sold first.</p>`;
    return html`<p><strong>${sold.map(partTitle).join(", ")}</strong></p>
      ${this.renderPaid(sold)}
      ${
        safetyStops(sold).length > 0
          ? html`<label class="tick"><input type="checkbox" id="broken" /><span>Sold as broken, and the buyer told that it is not to be swung</span></label>`
          : ""
      }
      <ferrule-record-form
        .fields=${sellFields(costs, this.priceWhy())}
        .record=${{ on: dayText(new Date()), club: this.clubName(sold), price: this.price(costs) }}
        .keepsTyped=${true}
        .submitWord=${"Write the sale in the books"}
        .trouble=${this.trouble}
        .refusals=${this.refusals}
        .busy=${this.busy}
        @ferrule-record=${this.#sell}
      ></ferrule-record-form>`;
  }

  private renderPaid(sold: readonly Part[]): TemplateResult | string {
    const paid = sold.flatMap((part) => (part.paid ? [part.paid] : []));
    const [first] = paid;
    if (!first || paid.some(({ currency }) => currency !== first.currency)) return "";
    const totalMinor = paid.reduce((sum, { amountMinor }) => sum + amountMinor, 0);
    return html`<p class="small soft">Paid for it: ${moneyText(totalMinor, first.currency)}${paid.length < sold.length ? ", as far as is known" : ""}.</p>`;
  }

  /** What the lines of the books go together under: the club by its head, else nothing. */
  private clubName(sold: readonly Part[]): string | undefined {
    const head = sold.find(({ kind }) => kind === "head");
    return head && sold.length > 1
      ? `${clubTitle(new Map(sold.map((part) => [part.id, part])), head.id)} ${head.id}`
      : undefined;
  }

  private price({ currency }: CostSettings): Money | undefined {
    const price = this.suggested?.price;
    return price?.known && price.suggested.currency === currency ? price.suggested : undefined;
  }

  private priceWhy(): string | undefined {
    const price = this.suggested?.price;
    if (!price?.known) return undefined;
    const { lowMinor, highMinor, basisCount, suggested } = price;
    const text = (amountMinor: number) => moneyText(amountMinor, suggested.currency);
    return `Filled in: the middle of what such a thing goes for (${text(lowMinor)} to ${text(highMinor)}, from ${countText(basisCount, "price")} noted). Type over it what it brought.`;
  }

  /** An estimate that comes too late, after other parts were chosen, is dropped; parts that are stopped have none. */
  async #suggest(): Promise<void> {
    const of = this.chosen.join("\n");
    if (of === "" || this.suggested?.of === of) return;
    const price = await sheetApi.advert(this.chosen).then(
      (draft) => draft.price,
      (): PriceSuggestion => ({ known: false, question: "" }),
    );
    if (this.chosen.join("\n") === of) this.suggested = { of, price };
  }

  #turn(ids: readonly string[]): void {
    const [first] = ids;
    this.chosen = this.chosen.includes(first ?? "")
      ? this.chosen.filter((id) => !ids.includes(id))
      : [...this.chosen, ...ids];
  }

  #choose(ids: string): void {
    this.chosen = ids === "" ? [] : ids.split("\n");
  }

  readonly #sell = async (event: CustomEvent<{ record: Record<string, unknown> }>): Promise<void> => {
    this.busy = true;
    const { price } = event.detail.record as { price: Money };
    const isBroken = this.renderRoot.querySelector<HTMLInputElement>("#broken")?.checked ?? false;
    const broken = isBroken ? { notToBeSwung: true } : {};
    await tradeApi.sell({ parts: this.chosen, ...event.detail.record, ...broken }).then(
      () => {
        tell(this, "ferrule-done", { text: `Sold at ${moneyText(price.amountMinor, price.currency)}.` });
        tell(this, "ferrule-go", { path: "/books" });
      },
      (error: unknown) => {
        this.trouble = `${failed(error).message}.`;
        this.refusals = error instanceof ApiError ? error.refusals : [];
      },
    );
    this.busy = false;
  };
}

function sameParts(one: readonly string[], other: readonly string[]): boolean {
  return one.length === other.length && one.every((id) => other.includes(id));
}

function sellFields(
  { currency, feeTables, sellsBy, buyerPaysPostage }: CostSettings,
  priceWhy: string | undefined,
): readonly RecordField[] {
  const place = feeTables.find(({ id }) => id === sellsBy)?.name ?? "the place you sell by";
  return [
    {
      path: "price",
      label: "Price, without postage",
      ...(priceWhy && { why: priceWhy, wide: true, guessed: true }),
      control: "money",
      currency,
      needed: true,
    },
    { path: "on", label: "On", control: "date", needed: true },
    { path: "daysToSell", label: "Days it was for sale", control: "number" },
    { path: "fees", label: "Fees", why: `Empty: by the fees of ${place}.`, control: "money", currency },
    {
      path: "postage",
      label: "What sending it cost",
      why: `Empty: nothing. ${buyerPaysPostage ? "The buyer pays it on top, so as much comes in as goes out." : "It is in the price: it goes off what you get."}`,
      control: "money",
      currency,
    },
    {
      path: "condition",
      label: "Condition",
      control: "choice",
      choices: { "": "Not said", ...conditionWords },
    },
    {
      path: "club",
      label: "Name in the books",
      why: "Lines of the same name are summed up together.",
      control: "text",
    },
    { path: "note", label: "Note", control: "note" },
  ];
}

customElements.define("ferrule-sell-view", SellView);
