import type { CatalogueModel, Doubt, Fault, Listing, ListingItem } from "@ferrule/core";
import { html, LitElement, type TemplateResult } from "lit";
import type { DisplaySettings } from "../display-settings.ts";
import { tell } from "../events.ts";
import { currencies } from "../format/money.ts";
import {
  fieldsToShow,
  type ItemField,
  itemControls,
  lengthBasisWords,
  tipForms,
} from "../listing/item-fields.ts";
import type { ListingDraft } from "../listing/listing-draft.ts";
import { factNumbers } from "../listing/word-pieces.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { intentWords, listingFieldWords, postageWords } from "../words/item-words.ts";
import { listingFactText } from "../words/listing-fact-text.ts";
import { itemTitle } from "../words/listing-title.ts";
import { faultsByKind, faultWords } from "../words/part-words.ts";
import { listingFactsStyles } from "./listing-facts-styles.ts";

const yesNo = { yes: "Yes", no: "No" } as const;
const offers = { yes: "Yes", no: "No, the price is firm" } as const;
const faultAnswers = { there: "It is there", "not-there": "Said not to be there" } as const;
const mostModels = 300;

/** Everything that was read from a listing, each fact to be corrected in place; what is empty was not said. */
export class ListingFacts extends LitElement {
  static override properties = { listing: {}, draft: {}, slips: {}, models: {}, display: {} };
  static override styles = [baseStyles, formStyles, listingFactsStyles];
  declare listing: Listing;
  declare draft: ListingDraft;
  declare slips: Readonly<Record<string, string>>;
  declare models: readonly CatalogueModel[];
  declare display: DisplaySettings;

  override render() {
    return html`
      <fieldset>
        <legend>The offer</legend>
        <div class="facts">
          ${this.renderMoney("asking")}
          ${this.renderChoice("negotiable", offers)}
          ${this.renderPostage()}
          ${this.renderChoice("intent", intentWords)}
        </div>
      </fieldset>
      ${this.listing.items.map((item, at) => this.renderItem(item, at))}
      <button @click=${() => tell(this, "ferrule-add-item", undefined)}>Add an item</button>
    `;
  }

  /** Puts the focus on the control of a fact, opening what it is in. */
  see(field: string): void {
    const path = field.replace(".deniedFaults.", ".faults.");
    const control =
      this.renderRoot.querySelector<HTMLElement>(`[name="${CSS.escape(path)}"]`) ??
      this.renderRoot.querySelector<HTMLElement>(`[name^="${CSS.escape(path)}"]`);
    const holder = control?.closest("details");
    if (holder) holder.open = true;
    control?.focus();
  }

  private renderItem(item: ListingItem, at: number): TemplateResult {
    const { first, rest } = fieldsToShow(item);
    const path = `items.${at}`;
    const isOnly = this.listing.items.length === 1;
    return html`<fieldset>
      <legend>${isOnly ? "" : `${at + 1}. `}${itemTitle(item)}</legend>
      <div class="facts">${first.map((field) => this.renderField(item, field, `${path}.${field}`))}</div>
      ${this.renderFaults(item, path)}
      <details>
        <summary>More facts</summary>
        <div class="facts">${rest.map((field) => this.renderField(item, field, `${path}.${field}`))}</div>
      </details>
      ${isOnly ? "" : html`<button aria-label="Take it out: item ${at + 1}, ${itemTitle(item)}" @click=${() => tell(this, "ferrule-remove-item", { index: at })}>Take it out</button>`}
    </fieldset>`;
  }

  private renderField(item: ListingItem, field: ItemField, path: string): TemplateResult {
    const control = itemControls[field];
    switch (control.control) {
      case "choice":
        return this.renderChoice(path, control.choices, control.needed);
      case "yes-no":
        return this.renderChoice(path, yesNo);
      case "money":
        return this.renderMoney(path);
      case "length":
        return this.renderPair(path, `basis`, lengthBasisWords, this.display.lengthUnit);
      case "tip":
        return this.renderPair(path, `form`, { "": "Form not said", ...tipForms }, "in");
      case "model":
        return this.renderModel(item, path);
      case "number":
        return this.renderText(path, control.unit);
      default:
        return this.renderText(path);
    }
  }

  private renderText(path: string, unit?: string): TemplateResult {
    return this.renderFact(path, unit, this.renderInput(path, unit ? "decimal" : "text"));
  }

  private renderChoice(
    path: string,
    choices: Readonly<Record<string, string>>,
    needed = false,
  ): TemplateResult {
    const all = needed ? choices : { "": "Not said", ...choices };
    return this.renderFact(path, undefined, this.renderSelect(path, all));
  }

  private renderMoney(path: string): TemplateResult {
    return this.renderFact(
      path,
      undefined,
      html`<span class="pair">${this.renderInput(path, "decimal")}${this.renderSelect(`${path}:currency`, this.currencyChoices(path), `${labelOf(path)}: currency`)}</span>`,
    );
  }

  private renderPostage(): TemplateResult {
    const isAmount = this.draft["postage"] === "amount";
    return this.renderFact(
      "postage",
      undefined,
      html`${this.renderSelect("postage", { "": "Not said", ...postageWords })}
        ${isAmount ? html`<span class="pair">${this.renderInput("postage:amount", "decimal", "Postage: how much")}${this.renderSelect("postage:amount:currency", this.currencyChoices("postage:amount"), "Postage: currency")}</span>` : ""}`,
    );
  }

  private renderPair(path: string, name: string, choices: Readonly<Record<string, string>>, unit: string) {
    return this.renderFact(
      path,
      unit,
      html`<span class="pair even">${this.renderInput(path, "text")}${this.renderSelect(`${path}:${name}`, choices, `${labelOf(path)}: ${name === "basis" ? "how it was taken" : "form"}`)}</span>`,
    );
  }

  private renderModel(item: ListingItem, path: string): TemplateResult {
    const alike = this.models
      .filter(({ kind }) => kind === item.kind || item.kind === "club")
      .slice(0, mostModels);
    const chosen = this.models.find(({ id }) => id === item.modelId);
    const all = chosen && !alike.includes(chosen) ? [chosen, ...alike] : alike;
    const choices = Object.fromEntries(all.map(({ id, maker, model }) => [id, `${maker} ${model}`]));
    return this.renderChoice(
      path,
      item.modelId && !chosen ? { [item.modelId]: item.modelId, ...choices } : choices,
    );
  }

  private renderFaults(item: ListingItem, path: string): TemplateResult {
    const kind = item.kind === "club" ? "head" : item.kind;
    const ofKind = item.kind === "club" ? [...faultsByKind.head, ...faultsByKind.shaft] : faultsByKind[kind];
    const said = [...item.faults, ...item.deniedFaults];
    const rest = [...new Set(ofKind)].filter((fault) => !said.includes(fault));
    const one = (fault: Fault) =>
      this.renderFact(
        `${path}.faults.${fault}`,
        undefined,
        this.renderSelect(`${path}.faults.${fault}`, { "": "Not mentioned", ...faultAnswers }),
      );
    return html`
      ${said.length > 0 ? html`<div class="facts">${said.map(one)}</div>` : ""}
      <details><summary>${said.length > 0 ? "Other faults" : "Faults: none mentioned"}</summary><div class="facts">${rest.map(one)}</div></details>`;
  }

  /** A fact: its label and number, its control, what could not be read, and what a reader would not be sure of. */
  private renderFact(path: string, unit: string | undefined, control: TemplateResult): TemplateResult {
    const number = factNumbers(this.listing.spans).get(spanField(this.listing, path));
    const slip = this.slips[path] ?? this.slips[`${path}:amount`];
    const doubts = this.doubtsOf(path);
    return html`<div class="fact ${isBroad(path) ? "broad" : ""} ${doubts.length > 0 ? "doubted" : ""}">
      <div class="head">
        <label for=${idOf(path)}>${labelOf(path)}${unit ? ` (${unit})` : ""}</label>
        ${number ? html`<button class="number" aria-label="${number}: see the words for ${listingFactText(path).toLowerCase()}" @click=${() => tell(this, "ferrule-see-words", { field: spanField(this.listing, path) })}>${number}</button>` : ""}
      </div>
      ${control}
      <div id="${idOf(path)}-notes">
        ${slip ? html`<p class="refusal">✕ ${slip}</p>` : ""}
        ${doubts.map(({ text }) => html`<p class="doubt">${text}</p>`)}
      </div>
    </div>`;
  }

  private renderInput(path: string, inputmode: "decimal" | "text", label?: string): TemplateResult {
    return html`<input id=${idOf(path)} name=${path} aria-label=${label ?? listingFactText(path)} inputmode=${inputmode} autocomplete="off" placeholder="Not said" aria-invalid=${this.slips[path] !== undefined} aria-describedby="${idOf(path)}-notes" .value=${this.draft[path] ?? ""} @input=${this.#typed(path)} />`;
  }

  private renderSelect(
    path: string,
    choices: Readonly<Record<string, string>>,
    label?: string,
  ): TemplateResult {
    const value = this.draft[path] ?? "";
    return html`<select id=${idOf(path)} name=${path} class=${value === "" ? "empty" : ""} aria-label=${label ?? listingFactText(path)} @change=${this.#typed(path)}>
      ${Object.entries(choices).map(([key, word]) => html`<option value=${key} ?selected=${key === value}>${word}</option>`)}
    </select>`;
  }

  private currencyChoices(path: string): Readonly<Record<string, string>> {
    const all = new Set<string>([this.draft[`${path}:currency`] ?? this.display.currency, ...currencies]);
    return Object.fromEntries([...all].map((currency) => [currency, currency]));
  }

  private doubtsOf(path: string): readonly Doubt[] {
    return this.listing.doubts.filter(
      ({ field }) => field === path || (field !== null && spanField(this.listing, path) === field),
    );
  }

  readonly #typed = (name: string) => (event: Event) => {
    tell(this, "ferrule-answered", { name, value: (event.target as HTMLInputElement).value });
  };
}

/** Facts that take two controls side by side. */
function isBroad(path: string): boolean {
  return /^(?:asking|postage)$|\.(?:length|tip|price)$/.test(path);
}

function idOf(path: string): string {
  return path.replaceAll(/[.:]/g, "-");
}

/** The label beside a control; the item it belongs to is said by the group. */
function labelOf(path: string): string {
  const name = path.replace(/^items\.\d+\./, "");
  const fault = /^faults\.(.+)$/.exec(name)?.[1];
  return fault ? faultWords[fault as Fault] : (listingFieldWords[name] ?? name);
}

/** The field under which the words name a fact: a denied fault, or the size inside a length or a tip, has one of its own. */
function spanField({ spans }: Listing, path: string): string {
  const denied = path.replace(".faults.", ".deniedFaults.");
  const found = spans.find(({ field }) => field === path || field === denied || field.startsWith(`${path}.`));
  return found?.field ?? path;
}

customElements.define("ferrule-listing-facts", ListingFacts);
