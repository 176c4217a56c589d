import { type FieldPath, fields, type Refusal } from "@ferrule/core";
import { css, html, LitElement } from "lit";
import type { DisplaySettings } from "../display-settings.ts";
import { tell } from "../events.ts";
import type { Draft } from "../form/draft.ts";
import type { FormField } from "../form/form-field.ts";
import { isDiameter } from "../form/is-diameter.ts";
import { refusalsAt, refusalText } from "../form/refusals-at.ts";
import { parseLength } from "../format/parse-length.ts";
import { quantityText } from "../format/written-reading.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { fieldText } from "../words/field-words.ts";

const unitWords = { in: "in", g: "g", deg: "degrees", cm3: "cm³", cpm: "cycles a minute", none: "" } as const;
const sources = {
  "": "Source",
  measured: "I measured it",
  stated: "Somebody said so",
  catalogue: "A catalogue",
} as const;

/** One field of the part form: its label, why it matters, its control, and what the server said about it. */
export class PartField extends LitElement {
  static override properties = { field: {}, draft: {}, display: {}, refusals: {}, isOpen: { state: true } };
  static override styles = [
    baseStyles,
    formStyles,
    css`
      .pair {
        display: grid;
        grid-template-columns: minmax(0, 1fr) minmax(0, 2fr);
        gap: 0.5rem;
      }
      details:not([open]) summary {
        color: var(--ink-soft);
        font-weight: 400;
      }
    `,
  ];
  declare field: FormField;
  declare draft: Draft;
  declare display: DisplaySettings;
  declare refusals: readonly Refusal[];
  /** How sure somebody is of a reading is asked once they open it. */
  declare private isOpen: boolean;

  override render() {
    const { path, why, control } = this.field;
    const refused = refusalsAt(this.refusals, path);
    const meaning = control === "reading" ? `${sentenceCase(fields[path as FieldPath].meaning)}.` : undefined;
    return html`
      <label for="control">${fieldText(path)}${this.renderUnit()}</label>
      <p class="why" id="why">${why ?? meaning ?? ""}</p>
      ${this.renderControl(refused.length > 0)}
      <p class="why" aria-live="polite">${this.readBack()}</p>
      <div id="refused">${refused.map((refusal) => html`<p class="refusal">✕ ${refusalText(refusal)}</p>`)}</div>
    `;
  }

  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>("#control")?.focus();
  }

  private renderUnit() {
    if (this.field.control === "money")
      return ` (${this.draft[`${this.field.path}:currency`] ?? this.display.currency})`;
    if (this.field.control !== "reading") return "";
    const word = this.isLength() ? this.lengthUnit() : unitWords[fields[this.field.path].unit];
    return word === "" ? "" : ` (${word})`;
  }

  private renderControl(invalid: boolean) {
    const { field } = this;
    const value = this.draft[field.path] ?? "";
    switch (field.control) {
      case "choice":
        return this.renderSelect(field.path, { "": "Not known", ...field.choices }, invalid);
      case "yes-no":
        return this.renderSelect(field.path, { "": "Not known", yes: "Yes", no: "No" }, invalid);
      case "settings":
        return html`<textarea id="control" placeholder="One a line: label, then degrees turned" .value=${value} aria-invalid=${invalid} aria-describedby="why refused" @input=${this.#typed(field.path)}></textarea>`;
      case "reading":
        return this.renderReading(field.path, invalid);
      default:
        return html`<input id="control" type=${field.control === "date" ? "date" : "text"} .value=${value} aria-invalid=${invalid} aria-describedby="why refused" @input=${this.#typed(field.path)} />`;
    }
  }

  private renderReading(path: FieldPath, invalid: boolean) {
    const name = fieldText(path);
    const isKnown = Boolean(this.draft[`${path}:plusMinus`] || this.draft[`${path}:source`]);
    return html`<input id="control" inputmode=${this.isLength() ? "text" : "decimal"} autocomplete="off" .value=${this.draft[path] ?? ""} aria-invalid=${invalid} aria-describedby="why refused" @input=${this.#typed(path)} />
      <details class="small" ?open=${isKnown} @toggle=${(event: Event) => (this.isOpen = (event.target as HTMLDetailsElement).open)}>
        <summary>How sure?</summary>
        ${isKnown || this.isOpen ? this.renderSureness(path, name) : ""}
      </details>`;
  }

  private renderSureness(path: FieldPath, name: string) {
    return html`<div class="pair">
          <input placeholder="±" aria-label="${name}: plus or minus" autocomplete="off" .value=${this.draft[`${path}:plusMinus`] ?? ""} @input=${this.#typed(`${path}:plusMinus`)} />
          ${this.renderSelect(`${path}:source`, sources, false, `${name}: source`)}
        </div>`;
  }

  private renderSelect(
    name: string,
    choices: Readonly<Record<string, string>>,
    invalid: boolean,
    label?: string,
  ) {
    const value = this.draft[name] ?? "";
    return html`<select id=${label ? "source" : "control"} aria-label=${label ?? fieldText(name)} aria-invalid=${invalid} aria-describedby="why refused" @change=${this.#typed(name)}>
      ${Object.entries(choices).map(([key, word]) => html`<option value=${key} ?selected=${key === value}>${word}</option>`)}
    </select>`;
  }

  /** What a fraction or another unit was taken to be, so that a slip shows before it is sent. */
  private readBack(): string {
    const { field } = this;
    const text = this.draft[field.path]?.trim() ?? "";
    if (field.control !== "reading" || !this.isLength() || !/[/a-z"″]|\d\s\d/i.test(text)) return "";
    const valueIn = parseLength(text, this.lengthUnit());
    return valueIn === undefined
      ? ""
      : `Read as ${quantityText(field.path, valueIn, this.display.lengthUnit)}`;
  }

  private isLength(): boolean {
    return this.field.control === "reading" && fields[this.field.path].unit === "in";
  }

  private lengthUnit() {
    return isDiameter(this.field.path as FieldPath) ? "in" : this.display.lengthUnit;
  }

  readonly #typed = (name: string) => (event: Event) => {
    tell(this, "ferrule-answered", {
      name,
      value: (event.target as HTMLInputElement | HTMLSelectElement).value,
    });
  };
}

function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

customElements.define("ferrule-part-field", PartField);
