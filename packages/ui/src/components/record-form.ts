import type { Refusal } from "@ferrule/core";
import { css, html, LitElement, type PropertyValues } from "lit";
import { tell } from "../events.ts";
import { draftFromRecord, type RecordDraft, recordFromDraft } from "../form/record-draft.ts";
import type { RecordField } from "../form/record-field.ts";
import { refusalsAt, refusalText } from "../form/refusals-at.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";

const yesNo = { "": "Not said", yes: "Yes", no: "No" } as const;

/** A plain form over a record: says at the field what could not be read, and sends `ferrule-record` once all of it can. */
export class RecordForm extends LitElement {
  static override properties = {
    fields: {},
    record: {},
    keepsTyped: {},
    submitWord: {},
    refusals: {},
    trouble: {},
    busy: {},
    draft: { state: true },
    slips: { state: true },
    notSent: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    css`
      .grid {
        grid-template-columns: repeat(auto-fill, minmax(min(12rem, 100%), 1fr));
        align-items: end;
      }
      .wide {
        grid-column: 1 / -1;
      }
      .lines {
        font-family: var(--mono);
        font-size: 0.875rem;
      }
    `,
  ];
  declare fields: readonly RecordField[];
  declare record: unknown;
  /** Whether another record leaves what was typed, and fills only the fields that were not. */
  declare keepsTyped: boolean;
  declare submitWord: string;
  declare refusals: readonly Refusal[];
  declare trouble: string | undefined;
  declare busy: boolean;
  declare private draft: RecordDraft;
  declare private slips: Readonly<Record<string, string>>;
  /** Why Enter did not send the form. */
  declare private notSent: string;
  #from: RecordDraft | undefined;
  /** Paths of the fields that somebody typed in. */
  #touched: ReadonlySet<string> = new Set();

  constructor() {
    super();
    this.fields = [];
    this.refusals = [];
    this.keepsTyped = false;
    this.draft = {};
    this.slips = {};
    this.notSent = "";
    this.busy = false;
    this.submitWord = "Save";
  }

  /** A record that says the same again does not overwrite what is being typed. */
  protected override willUpdate(changed: PropertyValues): void {
    if (!changed.has("record") && !changed.has("fields")) return;
    const from = draftFromRecord(this.fields, this.record);
    if (JSON.stringify(from) === JSON.stringify(this.#from)) return;
    const typed = this.keepsTyped ? differing(this.draft, this.#from ?? {}) : {};
    this.#from = from;
    this.#touched = new Set(Object.keys(typed));
    this.draft = { ...from, ...typed };
    this.slips = {};
  }

  override render() {
    return html`<form class="stack" novalidate @submit=${this.#submit} @keydown=${this.#pressed}>
      ${this.renderTrouble()}
      <div class="grid">${this.fields.map((field) => this.renderField(field))}</div>
      <p role="status">${this.notSent}</p>
      <div class="row"><button class="main" type="submit" ?disabled=${this.busy}>${this.submitWord}</button><slot></slot></div>
    </form>`;
  }

  override focus(): void {
    const first = this.renderRoot.querySelector<HTMLElement>("input, select, textarea");
    first?.focus();
    if (first instanceof HTMLInputElement) first.select();
  }

  private renderTrouble() {
    if (!this.trouble) return "";
    const elsewhere = this.refusals.filter(
      (refusal) => !this.fields.some(({ path }) => refusalsAt([refusal], path).length > 0),
    );
    return html`<div role="alert">
      <p class="refusal">✕ ${this.trouble}</p>
      ${elsewhere.map((refusal) => html`<p>${refusal.field}: ${refusalText(refusal)}</p>`)}
    </div>`;
  }

  private renderField(field: RecordField) {
    const { path, label, why } = field;
    const refused = [
      ...(this.slips[path] ? [this.slips[path]] : []),
      ...refusalsAt(this.refusals, path).map(refusalText),
    ];
    return html`<div class=${field.wide || field.control === "lines" || field.control === "note" ? "wide" : ""}>
      <label for=${path}>${label}${unitText(field)}</label>
      ${why ? html`<p class="why" id="${path}-why">${why}</p>` : ""}
      ${this.renderControl(field, refused.length > 0)}
      <div id="${path}-refused">${refused.map((text) => html`<p class="refusal">✕ ${text}</p>`)}</div>
    </div>`;
  }

  private renderControl(field: RecordField, invalid: boolean) {
    const { path } = field;
    const value = this.draft[path] ?? "";
    const described = `${field.why ? `${path}-why ` : ""}${path}-refused`;
    switch (field.control) {
      case "choice":
      case "yes-no":
        return html`<select id=${path} aria-invalid=${invalid} aria-describedby=${described} @change=${this.#typed(path)}>
          ${Object.entries(field.control === "choice" ? field.choices : yesNo).map(([key, word]) => html`<option value=${key} ?selected=${key === value}>${word}</option>`)}
        </select>`;
      case "note":
      case "lines":
        return html`<textarea id=${path} class=${field.control} placeholder=${field.control === "lines" ? field.example : ""} spellcheck=${field.control === "note"} aria-invalid=${invalid} aria-describedby=${described} .value=${value} @input=${this.#typed(path)}></textarea>`;
      default:
        return html`<input id=${path} type=${field.control === "date" ? "date" : "text"} inputmode=${inputMode(field)} autocomplete="off" aria-invalid=${invalid} aria-describedby=${described} .value=${value} @input=${this.#typed(path)} />`;
    }
  }

  /** Enter in a field would send what was only guessed; on the button it is a press like any other. */
  readonly #pressed = (event: KeyboardEvent) => {
    if (event.key !== "Enter" || !(event.target instanceof HTMLInputElement)) return;
    const guess = this.fields.find(
      ({ path, guessed }) => guessed && this.draft[path] && !this.#touched.has(path),
    );
    if (!guess) return;
    event.preventDefault();
    this.notSent = `Not written yet: “${guess.label}” is still what was filled in. Press the button if that is right, or type over it.`;
    this.renderRoot.querySelector<HTMLElement>("button[type='submit']")?.focus();
  };

  readonly #typed = (path: string) => (event: Event) => {
    this.#touched = new Set([...this.#touched, path]);
    this.notSent = "";
    this.draft = { ...this.draft, [path]: (event.target as HTMLInputElement).value };
    if (this.slips[path])
      this.slips = Object.fromEntries(Object.entries(this.slips).filter(([at]) => at !== path));
  };

  readonly #submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    const { record, slips } = recordFromDraft(this.fields, this.draft);
    this.slips = slips;
    if (Object.keys(slips).length === 0) return tell(this, "ferrule-record", { record });
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>("[aria-invalid='true']")?.focus();
  };
}

/** What stands in the draft otherwise than it was filled in. */
function differing(draft: RecordDraft, from: RecordDraft): RecordDraft {
  return Object.fromEntries(Object.entries(draft).filter(([path, text]) => text !== (from[path] ?? "")));
}

function unitText(field: RecordField): string {
  if (field.control === "money" || field.control === "minor") return ` (${field.currency})`;
  return field.control === "number" && field.unit ? ` (${field.unit})` : "";
}

function inputMode(field: RecordField): "decimal" | "text" {
  return field.control === "number" || field.control === "money" || field.control === "minor"
    ? "decimal"
    : "text";
}

customElements.define("ferrule-record-form", RecordForm);
