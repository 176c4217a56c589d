import type { BuildSheet, MeasuredQuantity } from "@ferrule/core";
import { html, LitElement } from "lit";
import { tell } from "../events.ts";
import { failed } from "../fetched.ts";
import type { LengthUnit } from "../format/length.ts";
import { parseLength } from "../format/parse-length.ts";
import { parseNumber } from "../format/parse-number.ts";
import { parseSwingWeight } from "../format/swing-weight.ts";
import { type MeasureReply, sheetApi } from "../sheet-api.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { quantityHelp, quantityWords } from "../words/sheet-words.ts";

const units: Readonly<Record<MeasuredQuantity, string>> = {
  playingLengthIn: "",
  swingWeightPoints: "such as D2",
  massG: "g",
  frequencyCpm: "cpm",
};

/** Takes what was read off the finished club, and says so once it is kept. */
export class MeasuredForm extends LitElement {
  static override properties = {
    sheet: {},
    lengthUnit: {},
    isJoined: {},
    trouble: { state: true },
    slips: { state: true },
    busy: { state: true },
  };
  static override styles = [baseStyles, formStyles];
  declare sheet: BuildSheet;
  declare lengthUnit: LengthUnit;
  /** Whether the club stands on the bench already. */
  declare isJoined: boolean;
  declare private trouble: string | undefined;
  declare private slips: ReadonlySet<MeasuredQuantity>;
  declare private busy: boolean;

  constructor() {
    super();
    this.slips = new Set();
    this.busy = false;
  }

  override render() {
    return html`<form class="stack" novalidate @submit=${this.#send}>
      <div class="grid">${this.sheet.blanks.map(({ quantity }) => this.renderField(quantity))}</div>
      ${
        this.isJoined
          ? ""
          : html`<label class="tick"><input type="checkbox" id="built" checked /><span>The club is put together now: make its joints on the bench</span></label>`
      }
      <div class="grid">
        <div><label for="by">Who measured (may be left empty)</label><input id="by" autocomplete="name" maxlength="200" /></div>
        <div><label for="note">Note (may be left empty)</label><input id="note" maxlength="2000" autocomplete="off" /></div>
      </div>
      ${this.trouble ? html`<p class="refusal" role="alert">✕ ${this.trouble}</p>` : ""}
      <button class="main" type="submit" ?disabled=${this.busy}>Keep what was measured</button>
    </form>`;
  }

  override focus(): void {
    const first = this.renderRoot.querySelector<HTMLElement>("input");
    first?.scrollIntoView({ block: "center" });
    first?.focus({ preventScroll: true });
  }

  private renderField(quantity: MeasuredQuantity) {
    const unit = quantity === "playingLengthIn" ? this.lengthUnit : units[quantity];
    const isSlip = this.slips.has(quantity);
    return html`<div>
      <label for=${quantity}>${quantityWords[quantity]} (${unit})</label>
      <p class="why" id="${quantity}-why">${quantityHelp[quantity]}</p>
      <input id=${quantity} autocomplete="off" inputmode=${quantity === "swingWeightPoints" ? "text" : "decimal"}
        aria-describedby="${quantity}-why" aria-invalid=${isSlip ? "true" : "false"} />
      ${isSlip ? html`<p class="refusal">✕ This was not understood.</p>` : ""}
    </div>`;
  }

  #text(id: string): string {
    return this.renderRoot.querySelector<HTMLInputElement>(`#${id}`)?.value.trim() ?? "";
  }

  #read(quantity: MeasuredQuantity, text: string): number | undefined {
    if (quantity === "playingLengthIn") return parseLength(text, this.lengthUnit);
    return quantity === "swingWeightPoints" ? parseSwingWeight(text) : parseNumber(text);
  }

  readonly #send = async (event: Event): Promise<void> => {
    event.preventDefault();
    const typed = this.sheet.blanks.flatMap(({ quantity }) => {
      const text = this.#text(quantity);
      return text === "" ? [] : [[quantity, this.#read(quantity, text)] as const];
    });
    this.slips = new Set(typed.flatMap(([quantity, value]) => (value === undefined ? [quantity] : [])));
    this.trouble = typed.length === 0 ? "At least one figure is needed." : undefined;
    if (this.trouble || this.slips.size > 0) return;
    this.busy = true;
    const built = this.renderRoot.querySelector<HTMLInputElement>("#built")?.checked ?? false;
    const [by, note] = [this.#text("by"), this.#text("note")];
    const request = {
      club: this.sheet.club,
      build: this.sheet.build,
      measured: Object.fromEntries(typed),
      ...(built ? { built } : {}),
      ...(by ? { by } : {}),
      ...(note ? { note } : {}),
    };
    await sheetApi.measure(request).then(
      (reply: MeasureReply) => tell(this, "ferrule-measured", reply),
      (error: unknown) => (this.trouble = `${failed(error).message}.`),
    );
    this.busy = false;
  };
}

customElements.define("ferrule-measured-form", MeasuredForm);
