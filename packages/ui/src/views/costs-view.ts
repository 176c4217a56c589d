import type { CostSettings, ItemKind, Refusal } from "@ferrule/core";
import { html, LitElement, type TemplateResult } from "lit";
import { keyed } from "lit/directives/keyed.js";
import { ApiError, tookTheirs } from "../api.ts";
import "../components/record-form.ts";
import "../components/shelf-list.ts";
import { whenReady } from "../components/state-notes.ts";
import { tell } from "../events.ts";
import { Fetched, failed } from "../fetched.ts";
import { type CostSection, costSections } from "../shelves/cost-sections.ts";
import { feeShelf } from "../shelves/fee-shelf.ts";
import { parcelFields } from "../shelves/parcel-fields.ts";
import { postageShelf } from "../shelves/postage-shelf.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { tradeApi } from "../trade-api.ts";
import { itemKindWords } from "../words/item-words.ts";

/** Everything about money that the user decides; each group is kept by itself. */
export class CostsView extends LitElement {
  static override properties = {
    wrong: { state: true },
    trouble: { state: true },
    refusals: { state: true },
  };
  static override styles = [baseStyles];
  /** The group whose change was refused. */
  declare private wrong: string | undefined;
  declare private trouble: string | undefined;
  declare private refusals: readonly Refusal[];
  readonly #costs = new Fetched(this, () => this.#ask(), ["costs"]);
  /** The costs that what is being typed began with. */
  #base: CostSettings | undefined;
  #isTyped = false;
  /** How often what was typed in a group was given up for what somebody else made of it. */
  readonly #givenUp = new Map<string, number>();

  constructor() {
    super();
    this.refusals = [];
  }

  override render() {
    return html`<div class="stack" @ferrule-retry=${this.#again} @input=${() => (this.#isTyped = true)}>
      <h1 tabindex="-1">Costs</h1>
      <p class="soft">What buying, working, sending and selling costs you. Every verdict rests on these; put in your own figures, for the first ones are only examples.</p>
      ${whenReady(this.#costs.state, "the costs", (costs) => this.renderCosts(costs))}
    </div>`;
  }

  private renderCosts(costs: CostSettings): TemplateResult {
    const base = this.#base ?? costs;
    const save = (change: Partial<CostSettings>) => this.#save(change, base);
    return html`
      ${costSections.filter(({ folded }) => !folded).map((section) => this.renderSection(section, costs))}
      <section class="ticket" aria-labelledby="fees"><h2 id="fees">Places to sell, and their fees</h2>
        <ferrule-shelf-list .things=${costs.feeTables} .kind=${feeShelf(base, (feeTables) => save({ feeTables }))}></ferrule-shelf-list></section>
      <section class="ticket" aria-labelledby="services"><h2 id="services">Ways to send a parcel</h2>
        <ferrule-shelf-list .things=${costs.services} .kind=${postageShelf(base, (services) => save({ services }))}></ferrule-shelf-list></section>
      <section class="ticket" aria-labelledby="parcels"><h2 id="parcels">Parcels</h2>
        <p class="soft small">How big and heavy each thing is once it is packed.</p>
        ${(Object.keys(itemKindWords) as ItemKind[]).map((kind) => this.renderParcel(kind, costs))}
      </section>
      ${costSections.filter(({ folded }) => folded).map((section) => this.renderSection(section, costs))}
    `;
  }

  private renderSection(section: CostSection, costs: CostSettings): TemplateResult {
    const { id, title, why, folded, fields, opened, closed } = section;
    const form = this.renderForm(id, fields(costs), opened(costs), closed);
    return html`<section class="ticket" aria-labelledby=${id}><h2 id=${id}>${title}</h2>
      ${why ? html`<p class="soft small">${why}</p>` : ""}
      ${folded ? html`<details><summary>Show them</summary>${form}</details>` : form}
    </section>`;
  }

  private renderParcel(kind: ItemKind, costs: CostSettings): TemplateResult {
    const closed = (parcel: object) =>
      ({ parcels: { ...costs.parcels, [kind]: parcel } }) as Partial<CostSettings>;
    return html`<details><summary>${itemKindWords[kind]}</summary>${this.renderForm(`parcel-${kind}`, parcelFields, costs.parcels[kind], closed)}</details>`;
  }

  private renderForm(
    id: string,
    fields: ReturnType<CostSection["fields"]>,
    record: unknown,
    closed: CostSection["closed"],
  ): TemplateResult {
    const isWrong = this.wrong === id;
    const form = html`<ferrule-record-form
      .fields=${fields}
      .record=${record}
      .keepsTyped=${true}
      .submitWord=${"Keep these"}
      .trouble=${isWrong ? this.trouble : undefined}
      .refusals=${isWrong ? this.refusals : []}
      @ferrule-record=${(event: CustomEvent<{ record: Record<string, unknown> }>) => this.#keep(id, closed(event.detail.record))}
    ></ferrule-record-form>`;
    return html`${keyed(this.#givenUp.get(id) ?? 0, form)}`;
  }

  /** What somebody else changed is filled in where nothing is being typed; what is typed is held against what it began with. */
  async #ask(): Promise<CostSettings> {
    const costs = await tradeApi.costs();
    if (!this.#isTyped) this.#base = costs;
    return costs;
  }

  readonly #again = (): Promise<void> => {
    this.#isTyped = false;
    return this.#costs.again();
  };

  #save(change: Partial<CostSettings>, base = this.#base): Promise<unknown> {
    return base ? tradeApi.changeCosts(change, base) : Promise.resolve();
  }

  async #keep(id: string, change: Partial<CostSettings>): Promise<void> {
    this.wrong = undefined;
    await this.#save(change, this.#base).then(
      () => tell(this, "ferrule-done", { text: "Kept." }),
      (error: unknown) => this.#refused(id, error),
    );
    if (!this.wrong) await this.#again();
  }

  #refused(id: string, error: unknown): void {
    if (error instanceof ApiError && error.code === tookTheirs) {
      this.#givenUp.set(id, 1 + (this.#givenUp.get(id) ?? 0));
      tell(this, "ferrule-done", { text: `${error.message}.` });
      return;
    }
    this.wrong = id;
    this.trouble = `${failed(error).message}.`;
    this.refusals = error instanceof ApiError ? error.refusals : [];
  }
}

customElements.define("ferrule-costs-view", CostsView);
