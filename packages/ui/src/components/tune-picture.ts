import type { Build, Club, ClubDimensions, Estimates, Grip, Head, Part } from "@ferrule/core";
import { css, html, LitElement, type TemplateResult } from "lit";
import { api, type TuneRequest } from "../api.ts";
import type { BenchContext } from "../bench-context.ts";
import "../drawings/club-drawing.ts";
import { clubLayout } from "../drawings/club-layout.ts";
import { dimensionRows } from "../drawings/club-words.ts";
import { lengthIntervalText, swingWeightIntervalText } from "../format/interval.ts";
import { lengthLabel } from "../format/length-label.ts";
import { numberText } from "../format/number.ts";
import { isJoined } from "../is-joined.ts";
import { LatestAnswer } from "../latest-answer.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";

type Slider = Exclude<keyof Build, "playingLengthIn">;

interface SliderWords {
  readonly label: string;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly isLength: boolean;
}

/** What can be turned by hand. A slider reaches what is ordinary; the ways of the form below may go further. */
const sliders: Readonly<Record<Slider, SliderWords>> = {
  buttTrimIn: { label: "Cut from the butt", min: -2, max: 4, step: 1 / 16, isLength: true },
  tipTrimIn: { label: "Cut from the tip", min: 0, max: 3, step: 1 / 16, isLength: true },
  extraHeadMassG: { label: "Added at the head", min: -10, max: 20, step: 0.5, isLength: false },
  counterweightG: { label: "Put in the butt", min: 0, max: 50, step: 1, isLength: false },
};
const names = Object.keys(sliders) as Slider[];

interface Drawn {
  readonly dimensions: ClubDimensions;
  readonly estimates: Estimates;
}

/** A club drawn to scale, with what could be cut from it and put on it to be tried by hand. */
export class TunePicture extends LitElement {
  static override properties = { club: {}, context: {}, build: {}, gripId: {} };
  static override styles = [
    baseStyles,
    formStyles,
    css`
      .sliders {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(15rem, 100%), 1fr));
        gap: 0.25rem 1.5rem;
      }
      .sliders label {
        display: flex;
        justify-content: space-between;
        gap: 0.5rem;
        font-weight: 400;
      }
      output {
        font-family: var(--mono);
        font-weight: 600;
      }
      input[type="range"] {
        min-height: 36px;
        padding: 0;
        border: 0;
        accent-color: var(--accent);
      }
      .becomes {
        max-width: none;
        display: flex;
        flex-wrap: wrap;
        gap: 0.25rem 1.5rem;
        font-family: var(--mono);
        font-weight: 600;
      }
      .becomes span span {
        font-family: var(--sans);
        font-weight: 400;
        color: var(--ink-soft);
      }
      dl {
        display: grid;
        grid-template-columns: minmax(0, 1fr) auto;
        gap: 0.15rem 1rem;
      }
      dd {
        font-family: var(--mono);
        font-size: 0.875rem;
        text-align: right;
      }
    `,
  ];
  declare club: Club;
  declare context: BenchContext;
  declare build: Build;
  /** The grip it has, or the one of a way that is tried. */
  declare gripId: string | undefined;
  readonly #drawn = new LatestAnswer<Drawn>(this, 40);

  constructor() {
    super();
    this.build = {};
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has("club") && !changed.has("build") && !changed.has("gripId")) return;
    void this.#drawn.askSoon(() => this.#ask());
  }

  override render() {
    const { value, trouble, isAsking } = this.#drawn;
    return html`<div class="stack" aria-busy=${isAsking}>
      ${trouble ? html`<p class="refusal" role="alert">✕ ${trouble}</p>` : ""}
      ${value ? this.renderDrawn(value) : html`<p class="soft">Drawing …</p>`}
      ${this.renderSliders()}
    </div>`;
  }

  private renderDrawn({ dimensions, estimates }: Drawn): TemplateResult {
    const { lengthUnit, parts } = this.context;
    const layout = clubLayout(dimensions, estimates.balanceFromButtIn);
    if (!layout) return html`<p>It cannot be drawn to scale: its length is not known.</p>`;
    const head = parts.get(this.club.head) as Head;
    return html`<ferrule-club-drawing .layout=${layout} .head=${head} .typical=${dimensions.typical} .unit=${lengthUnit}></ferrule-club-drawing>
      <p class="small soft">Everything along the shaft is to scale; the outline of the head is only of its kind. ≈ stands before what rests on a typical figure.</p>
      <details class="small"><summary>The measures of the drawing</summary>
        <dl>${dimensionRows(layout, dimensions.typical, lengthUnit).map(([name, text]) => html`<dt>${name}</dt><dd>${text}</dd>`)}</dl>
      </details>
      ${this.renderBecomes(estimates)}`;
  }

  private renderBecomes({ playingLengthIn, swingWeight, massG }: Estimates): TemplateResult {
    const figures = [
      ["length", playingLengthIn && lengthIntervalText(playingLengthIn, this.context.lengthUnit)],
      ["swing weight", swingWeight && swingWeightIntervalText(swingWeight)],
      ["mass", massG && `${numberText(massG.value, 0)} g`],
    ] as const;
    return html`<p class="becomes" role="status">${figures.map(([word, text]) => (text ? html`<span><span>${word}</span> ${text}</span>` : ""))}</p>`;
  }

  private renderSliders(): TemplateResult {
    return html`<fieldset><legend>Try a change</legend>
      <div class="sliders">${names.map((name) => this.renderSlider(name))}</div>
      ${this.#isTouched() ? html`<button type="button" @click=${this.#asItIs}>As it is</button>` : ""}
    </fieldset>`;
  }

  private renderSlider(name: Slider): TemplateResult {
    const { label, min, max, step } = sliders[name];
    const value = this.build[name] ?? 0;
    const text = this.#text(name, value);
    return html`<div>
      <label for=${name}><span>${label}</span><output>${text}</output></label>
      <input id=${name} type="range" min=${Math.min(min, value)} max=${Math.max(max, value)} step=${step} .value=${String(value)} aria-valuetext=${text}
        @input=${(event: Event) => this.#turn(name, Number((event.target as HTMLInputElement).value))} />
    </div>`;
  }

  #text(name: Slider, value: number): string {
    if (!sliders[name].isLength) return `${numberText(value, 1)} g`;
    const length = lengthLabel(Math.abs(value), this.context.lengthUnit);
    return value < 0 ? `${length} added` : length;
  }

  #turn(name: Slider, value: number): void {
    this.build = { ...this.build, [name]: value };
  }

  #isTouched(): boolean {
    return this.gripId !== undefined || names.some((name) => (this.build[name] ?? 0) !== 0);
  }

  readonly #asItIs = () => {
    this.build = {};
    this.gripId = undefined;
  };

  async #ask(): Promise<Drawn> {
    const request = clubRequest(this.club, this.context, this.build, this.gripId);
    const [dimensions, estimates] = await Promise.all([api.dimensions(request), api.estimate(request)]);
    return { dimensions, estimates };
  }
}

/** The parts of a club, its build and what is joined already, as the server takes them. */
export function clubRequest(
  { head, adapter, shaft, grip }: Club,
  { parts, joints }: BenchContext,
  build: Build,
  gripId: string | undefined,
): Omit<TuneRequest, "target" | "options"> {
  const part = (id: string) => parts.get(id) as Part;
  return {
    head: part(head),
    adapter: adapter === null ? undefined : part(adapter),
    shaft: part(shaft),
    grip: part(gripId ?? grip) as Grip,
    gripped: gripId === undefined && isJoined(joints, shaft, "gripped"),
    bonded: isJoined(joints, shaft, "bonded"),
    build,
  };
}

customElements.define("ferrule-tune-picture", TunePicture);
