import { html, LitElement } from "lit";
import { tell } from "../events.ts";
import type { RecordField } from "../form/record-field.ts";
import { type LabelSetup, labelPresets } from "../labels/label-sheet.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import "./record-form.ts";

const mm = (path: string, label: string): RecordField => ({
  path,
  label,
  control: "number",
  unit: "mm",
  needed: true,
});
const edge = (path: string, label: string): RecordField => ({
  path,
  label,
  why: "Empty: in the middle.",
  control: "number",
  unit: "mm",
  empty: null,
});

const fields: readonly RecordField[] = [
  {
    path: "paper",
    label: "Paper",
    control: "choice",
    choices: { a4: "A4", letter: "Letter", roll: "A roll, one label after another" },
  },
  mm("widthMm", "Width of a label"),
  mm("heightMm", "Height of a label"),
  mm("gapAcrossMm", "Between two side by side"),
  mm("gapDownMm", "Between one and the next below"),
  edge("leftMm", "From the left edge to the first"),
  edge("topMm", "From the top edge to the first"),
];

/** The size of labels and their paper: one of the common ones, or own figures. Sends `ferrule-label-setup`. */
export class LabelSetupForm extends LitElement {
  static override properties = { setup: {} };
  static override styles = [baseStyles, formStyles];
  declare setup: LabelSetup;

  override render() {
    const same = labelPresets.findIndex(({ setup }) => JSON.stringify(setup) === JSON.stringify(this.setup));
    const own = `Own figures: ${this.setup.widthMm} × ${this.setup.heightMm} mm`;
    return html`<div class="grid"><div>
        <label for="size">Size</label>
        <select id="size" @change=${this.#chosen}>
          ${labelPresets.map(({ name }, at) => html`<option value=${at} .selected=${at === same}>${name}</option>`)}
          ${same < 0 ? html`<option value="" .selected=${true}>${own}</option>` : ""}
        </select>
      </div></div>
      <details><summary>Own figures</summary>
        <ferrule-record-form .fields=${fields} .record=${this.setup} .keepsTyped=${true} .submitWord=${"Use these"}
          @ferrule-record=${(event: CustomEvent<{ record: unknown }>) => this.#use(event.detail.record as LabelSetup)}></ferrule-record-form>
      </details>`;
  }

  readonly #chosen = (event: Event) => {
    const setup = labelPresets[Number((event.target as HTMLSelectElement).value)]?.setup;
    if (setup) this.#use(setup);
  };

  #use(setup: LabelSetup): void {
    tell(this, "ferrule-label-setup", setup);
  }
}

customElements.define("ferrule-label-setup", LabelSetupForm);
