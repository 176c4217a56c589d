import type { Club, Goal, Head, Part, TuneSolution } from "@ferrule/core";
import { css, html, LitElement } from "lit";
import { api, type TuneReply } from "../api.ts";
import type { BenchContext } from "../bench-context.ts";
import { tell } from "../events.ts";
import { failed } from "../fetched.ts";
import { intervalText, lengthIntervalText, swingWeightIntervalText } from "../format/interval.ts";
import { lengthInput } from "../format/length-input.ts";
import { countText } from "../format/number.ts";
import { parseLength } from "../format/parse-length.ts";
import { parseSwingWeight, swingWeightText } from "../format/swing-weight.ts";
import { isJoined } from "../is-joined.ts";
import { hrefs } from "../route.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { targetOf } from "../target-of.ts";
import { changeText } from "../words/change-text.ts";
import { cautionBox, cautionBoxStyles } from "./caution-box.ts";

/** Asks what would bring a club to a length and a swing weight, and lists the ways, the smallest change first. */
export class TuneForm extends LitElement {
  static override properties = {
    club: {},
    context: {},
    goal: {},
    reply: { state: true },
    trouble: { state: true },
    asking: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    cautionBoxStyles,
    css`
      .ways li {
        padding: 0.6rem 0;
        border-top: 1px solid var(--line);
      }
      .ways li p {
        margin: 0.2rem 0;
      }
    `,
  ];
  declare club: Club;
  declare context: BenchContext;
  declare goal: Goal;
  declare private reply: TuneReply | undefined;
  declare private trouble: string | undefined;
  declare private asking: boolean;

  override render() {
    const { lengthUnit } = this.context;
    const { playingLengthIn, swingWeightPoints } = targetOf(
      this.goal,
      this.context.parts.get(this.club.head) as Head | undefined,
    );
    return html`<form class="ticket stack" novalidate @submit=${this.#ask}>
      <h2>Tune it</h2>
      <p class="why">The length and swing weight you want; the ways there are listed with the smallest change first.</p>
      <div class="grid">
        <div>
          <label for="length">Playing length (${lengthUnit})</label>
          <input id="length" autocomplete="off" .value=${playingLengthIn === undefined ? "" : lengthInput(playingLengthIn, lengthUnit)} />
        </div>
        <div>
          <label for="swing">Swing weight</label>
          <input id="swing" autocomplete="off" placeholder="such as D2" .value=${swingWeightPoints === undefined ? "" : swingWeightText(swingWeightPoints)} />
        </div>
      </div>
      <button type="submit" ?disabled=${this.asking}>Find the ways</button>
      <div aria-live="polite">
        ${this.trouble ? html`<p class="refusal">✕ ${this.trouble}</p>` : ""}
        ${this.reply ? this.renderReply(this.reply) : ""}
      </div>
    </form>`;
  }

  private renderReply({ solutions, cautions }: TuneReply) {
    if (solutions.length === 0)
      return html`<p>No ordinary change reaches that. Another shaft, head or grip would have to.</p>`;
    return html`<h3>${countText(solutions.length, "way")}</h3><ol class="plain ways">${solutions.map((solution) => html`<li>${this.renderSolution(solution)}</li>`)}</ol>${cautions.length > 0 ? cautionBox(cautions) : ""}`;
  }

  private renderSolution(solution: TuneSolution) {
    const { lengthUnit, parts } = this.context;
    const { playingLengthIn, swingWeight, massG, moiKgCm2, frequencyCpm } = solution.estimates;
    const becomes = [
      playingLengthIn && lengthIntervalText(playingLengthIn, lengthUnit),
      swingWeight && swingWeightIntervalText(swingWeight),
      massG && intervalText(massG, "g", 1),
      moiKgCm2 && intervalText(moiKgCm2, "kg·cm²", 0),
      frequencyCpm && intervalText(frequencyCpm, "cpm", 0),
    ];
    return html`<strong>${changeText(solution, this.club.grip, parts, lengthUnit)}</strong><p class="small soft">Becomes ${becomes.filter(Boolean).join(" · ")}</p>
      <button type="button" @click=${() => tell(this, "ferrule-try-way", solution)}>Draw this way</button> <a class="button" href=${this.sheetFor(solution)}>Build sheet for this</a>`;
  }

  /** The club with the grip that this way takes. */
  private sheetFor({ build, grip }: TuneSolution): string {
    const { head, adapter, shaft } = this.club;
    return hrefs.sheet({ head, id: [head, adapter ?? "-", shaft, grip].join("+") }, build);
  }

  readonly #ask = async (event: Event) => {
    event.preventDefault();
    const text = (id: string) =>
      this.renderRoot.querySelector<HTMLInputElement>(`#${id}`)?.value.trim() ?? "";
    const playingLengthIn = parseLength(text("length"), this.context.lengthUnit);
    const swingWeightPoints = parseSwingWeight(text("swing"));
    this.reply = undefined;
    this.trouble = this.#slip(text("length"), playingLengthIn, text("swing"), swingWeightPoints);
    if (this.trouble) return;
    this.asking = true;
    await this.#send({ playingLengthIn, swingWeightPoints });
    this.asking = false;
  };

  #slip(
    lengthText: string,
    lengthIn: number | undefined,
    swingText: string,
    points: number | undefined,
  ): string | undefined {
    if (lengthText === "" && swingText === "") return "A length, a swing weight or both are needed.";
    if (lengthText !== "" && lengthIn === undefined)
      return "The length was not understood; 45, 45 1/4 and 114.3 cm are.";
    return swingText !== "" && points === undefined
      ? "The swing weight was not understood; D2 and C9.5 are."
      : undefined;
  }

  /** Grips that nothing is gripped to: those could go on instead. */
  #looseGrips(): Part[] {
    const used = new Set(this.context.joints.flatMap(({ parts }) => parts));
    return [...this.context.parts.values()].filter(({ id, kind }) => kind === "grip" && !used.has(id));
  }

  async #send(target: { playingLengthIn?: number; swingWeightPoints?: number }): Promise<void> {
    const part = (id: string) => this.context.parts.get(id) as Part;
    const { head, adapter, shaft, grip } = this.club;
    const request = {
      head: part(head),
      adapter: adapter === null ? undefined : part(adapter),
      shaft: part(shaft),
      grip: part(grip),
      gripped: isJoined(this.context.joints, shaft, "gripped"),
      bonded: isJoined(this.context.joints, shaft, "bonded"),
      target,
      options: { grips: this.#looseGrips() },
    };
    await api.tune(request).then(
      (reply) => (this.reply = reply),
      (error: unknown) => (this.trouble = `${failed(error).message}.`),
    );
  }
}

customElements.define("ferrule-tune-form", TuneForm);
