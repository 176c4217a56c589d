import type { ClubType, Target } from "@ferrule/core";
import { css, html, LitElement } from "lit";
import { tell } from "../events.ts";
import type { LengthUnit } from "../format/length.ts";
import { lengthInput } from "../format/length-input.ts";
import { parseLength } from "../format/parse-length.ts";
import { parseSwingWeight, swingWeightText } from "../format/swing-weight.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { clubTypeWords } from "../words/part-words.ts";

type Wrong = "length" | "swing" | undefined;

/** The target of one club type: a playing length and a swing weight. Sends `ferrule-target` once both can be read. */
export class TargetField extends LitElement {
  static override properties = { clubType: {}, target: {}, lengthUnit: {}, wrong: { state: true } };
  static override styles = [
    baseStyles,
    formStyles,
    css`
      .pair {
        display: grid;
        grid-template-columns: 1fr 1fr;
        gap: 0.5rem;
      }
      label {
        font-weight: 400;
        font-size: 0.875rem;
      }
    `,
  ];
  declare clubType: ClubType;
  declare target: Target;
  declare lengthUnit: LengthUnit;
  declare private wrong: Wrong;

  override render() {
    const { playingLengthIn, swingWeightPoints } = this.target;
    return html`<fieldset @change=${this.#changed}>
      <legend>${clubTypeWords[this.clubType]}</legend>
      <div class="pair">
        <div>
          <label for="length">Playing length (${this.lengthUnit})</label>
          <input id="length" autocomplete="off" aria-invalid=${this.wrong === "length"} aria-describedby="wrong" .value=${playingLengthIn === undefined ? "" : lengthInput(playingLengthIn, this.lengthUnit)} />
        </div>
        <div>
          <label for="swing">Swing weight</label>
          <input id="swing" autocomplete="off" placeholder="such as D2" aria-invalid=${this.wrong === "swing"} aria-describedby="wrong" .value=${swingWeightPoints === undefined ? "" : swingWeightText(swingWeightPoints)} />
        </div>
      </div>
      <p class="refusal" id="wrong" aria-live="polite">${this.renderWrong()}</p>
    </fieldset>`;
  }

  private renderWrong() {
    if (this.wrong === "length") return "✕ A length, such as 45, 45 1/4 or 114.3 cm, is expected.";
    return this.wrong === "swing" ? "✕ A letter and a number, such as D2 or C9.5, is expected." : "";
  }

  readonly #changed = () => {
    const text = (id: string) =>
      this.renderRoot.querySelector<HTMLInputElement>(`#${id}`)?.value.trim() ?? "";
    const playingLengthIn = parseLength(text("length"), this.lengthUnit);
    const swingWeightPoints = parseSwingWeight(text("swing"));
    this.wrong =
      playingLengthIn === undefined && text("length") !== ""
        ? "length"
        : swingWeightPoints === undefined && text("swing") !== ""
          ? "swing"
          : undefined;
    if (this.wrong) return;
    const target = { playingLengthIn, swingWeightPoints };
    tell(this, "ferrule-target", { clubType: this.clubType, target });
  };
}

customElements.define("ferrule-target-field", TargetField);
