import type { Build, Club, ClubDimensions, Estimates, Goal, Grip, Head, Part, Shaft } from "@ferrule/core";
import { css, html, LitElement, type TemplateResult } from "lit";
import { api, type TuneRequest } from "../api.ts";
import type { BenchContext } from "../bench-context.ts";
import "../drawings/club-drawing.ts";
import { clubLayout } from "../drawings/club-layout.ts";
import { dimensionRows } from "../drawings/club-words.ts";
import "../drawings/swing-weight-drawing.ts";
import { type SwingTune, swingPoint } from "../drawings/swing-weight-plot.ts";
import { lengthIntervalText, swingWeightIntervalText } from "../format/interval.ts";
import type { LengthUnit } from "../format/length.ts";
import { lengthLabel } from "../format/length-label.ts";
import { numberText } from "../format/number.ts";
import { swingWeightText } from "../format/swing-weight.ts";
import { isJoined } from "../is-joined.ts";
import { LatestAnswer } from "../latest-answer.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { targetOf } from "../target-of.ts";

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

/** Half an inch, four grams at the head and fifteen in the butt: as large as single changes are usually made. */
function singleTunes({ playingLengthIn }: Build, unit: LengthUnit): readonly (readonly [string, Build])[] {
  const longer = (byIn: number): Build =>
    playingLengthIn === undefined ? { buttTrimIn: -byIn } : { playingLengthIn: playingLengthIn + byIn };
  const asIs: Build = playingLengthIn === undefined ? {} : { playingLengthIn };
  return [
    [`cut ${lengthLabel(0.5, unit)}`, longer(-0.5)],
    [`add ${lengthLabel(0.5, unit)}`, longer(0.5)],
    ["4 g head", { ...asIs, extraHeadMassG: 4 }],
    ["15 g butt", { ...asIs, counterweightG: 15 }],
  ];
}

interface Drawn {
  readonly dimensions: ClubDimensions;
  readonly estimates: Estimates;
}

/** A club drawn to scale, with what could be cut from it and put on it to be tried by hand. */
export class TunePicture extends LitElement {
  static override properties = { club: {}, context: {}, goal: {}, build: {}, gripId: {} };
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
      table {
        border-collapse: collapse;
        width: 100%;
        max-width: 32rem;
      }
      th,
      td {
        text-align: left;
        padding: 0.3rem 0.6rem 0.3rem 0;
        border-top: 1px solid var(--line);
        font-weight: 400;
      }
      td {
        font-family: var(--mono);
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
  declare goal: Goal;
  declare build: Build;
  /** The grip it has, or the one of a way that is tried. */
  declare gripId: string | undefined;
  readonly #drawn = new LatestAnswer<Drawn>(this, 40);
  /** What each change does by itself, to the club as it is answered. */
  readonly #tunes = new LatestAnswer<readonly SwingTune[]>(this, 0);
  /** The club as it comes, asked for once somebody tries another grip. */
  #uncut: { readonly club: Club; readonly asked: Promise<ClubDimensions> } | undefined;

  constructor() {
    super();
    this.build = {};
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has("club")) void this.#tunes.ask(() => this.#askTunes());
    if (!changed.has("club") && !changed.has("build") && !changed.has("gripId")) return;
    void this.#drawn.askSoon(() => this.#ask());
  }

  override render() {
    const { value, trouble, isAsking } = this.#drawn;
    return html`<div class="stack" aria-busy=${isAsking}>
      ${trouble ? html`<p class="refusal" role="alert">✕ ${trouble}</p>` : ""}
      ${value ? this.renderDrawn(value) : html`<p class="soft">Drawing …</p>`}
      ${this.renderSliders()}
      ${value ? this.renderSwingWeight(value) : ""}
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

  /** Swing weight against length, and the same in words. */
  private renderSwingWeight({ estimates }: Drawn): TemplateResult | string {
    const { lengthUnit } = this.context;
    const start = swingPoint(this.club.estimates);
    const now = swingPoint(estimates);
    if (!start || !now) return "";
    const tunes = this.#tunes.value ?? [];
    const target = this.#target();
    const words = (point: { lengthIn: number; points: number }) =>
      html`<td role="cell" data-label="Length">${lengthLabel(point.lengthIn, lengthUnit)}</td><td role="cell" data-label="Swing weight">${swingWeightText(point.points)}</td>`;
    return html`<section aria-labelledby="swing"><h3 id="swing">Swing weight against length</h3>
      <ferrule-swing-weight-drawing .start=${start} .now=${now} .target=${target} .tunes=${tunes} .unit=${lengthUnit}></ferrule-swing-weight-drawing>
      <p class="small soft">Bars: where each lies 95 times in 100. Broken lines: the target. Arrows: what one change does by itself.</p>
      <details class="small"><summary>The same as a table</summary>
        <table role="table"><thead role="rowgroup"><tr role="row"><th scope="col" role="columnheader">Change</th><th scope="col" role="columnheader">Length</th><th scope="col" role="columnheader">Swing weight</th></tr></thead>
        <tbody role="rowgroup">
          <tr role="row"><th scope="row" role="rowheader">As it is</th>${words(start)}</tr>
          <tr role="row"><th scope="row" role="rowheader">As tried</th>${words(now)}</tr>
          ${tunes.map(({ label, to }) => html`<tr role="row"><th scope="row" role="rowheader">${label}</th>${words(to)}</tr>`)}
        </tbody></table></details>
    </section>`;
  }

  private renderSliders(): TemplateResult {
    return html`<fieldset><legend>Try a change</legend>
      <div class="sliders">${names.map((name) => this.renderSlider(name))}</div>
      ${this.#isTouched() ? html`<button type="button" @click=${this.#asItIs}>Back to how it was</button>` : ""}
    </fieldset>`;
  }

  private renderSlider(name: Slider): TemplateResult {
    const { label, min, max, step } = sliders[name];
    const cutIn = name === "buttTrimIn" ? this.#drawn.value?.dimensions.buttTrimIn : undefined;
    const value = this.build[name] ?? cutIn ?? 0;
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

  /** Shows a way that was found, and comes into sight. */
  tryWay({ build, grip }: { readonly build: Build; readonly grip: string }): void {
    this.build = build;
    this.gripId = grip === this.club.grip ? undefined : grip;
    const isCalm = matchMedia("(prefers-reduced-motion: reduce)").matches;
    this.scrollIntoView({ behavior: isCalm ? "auto" : "smooth" });
  }

  #isTouched(): boolean {
    return this.gripId !== undefined || names.some((name) => this.build[name] !== undefined);
  }

  readonly #asItIs = () => {
    this.build = {};
    this.gripId = undefined;
  };

  /** A change that this club cannot take, such as a longer butt than there is shaft for, is left out. */
  async #askTunes(): Promise<readonly SwingTune[]> {
    const tunes = singleTunes(this.#base(), this.context.lengthUnit);
    const answers = await Promise.allSettled(
      tunes.map(([, build]) => api.estimate(clubRequest(this.club, this.context, build, undefined))),
    );
    return answers.flatMap((answer, at) => {
      const to = answer.status === "fulfilled" ? swingPoint(answer.value) : undefined;
      const label = tunes[at]?.[0];
      return to && label ? [{ label, to }] : [];
    });
  }

  /** The build that the club's own estimates are for: cut to the length that is wanted, where it can be, else as it comes. */
  #base(): Build {
    const { playingLengthIn: wantedIn } = this.#target();
    const estimatedIn = this.club.estimates.playingLengthIn?.value ?? Number.NaN;
    return wantedIn !== undefined && Math.abs(estimatedIn - wantedIn) < 1e-6
      ? { playingLengthIn: wantedIn }
      : {};
  }

  #target() {
    return targetOf(this.goal, this.context.parts.get(this.club.head) as Head);
  }

  async #ask(): Promise<Drawn> {
    const request = await this.#request();
    const [dimensions, estimates] = await Promise.all([api.dimensions(request), api.estimate(request)]);
    return { dimensions, estimates };
  }

  /** With another grip the shaft keeps the length that was read with the old one, whose cap may be in that reading. */
  async #request(): Promise<ClubRequest> {
    const build = this.build.buttTrimIn === undefined ? { ...this.#base(), ...this.build } : this.build;
    const request = clubRequest(this.club, this.context, build, this.gripId);
    if (this.gripId === undefined) return request;
    const { uncutLengthIn } = await this.#askUncut();
    if (uncutLengthIn === null) return request;
    const length = { lengthIn: uncutLengthIn, basis: "shaft-alone" } as const;
    return { ...request, shaft: { ...(request.shaft as Shaft), length } };
  }

  /** A slider that moves asks again and again; the shaft stays the same. What was not answered is asked for anew. */
  #askUncut(): Promise<ClubDimensions> {
    if (this.#uncut?.club === this.club) return this.#uncut.asked;
    const asked = api.dimensions(clubRequest(this.club, this.context, {}, undefined));
    this.#uncut = { club: this.club, asked };
    asked.catch(() => {
      if (this.#uncut?.asked === asked) this.#uncut = undefined;
    });
    return asked;
  }
}

type ClubRequest = Omit<TuneRequest, "target" | "options">;

/** The parts of a club, its build and what is joined already, as the server takes them. */
function clubRequest(
  { head, adapter, shaft, grip }: Club,
  { parts, joints }: BenchContext,
  build: Build,
  gripId: string | undefined,
): ClubRequest {
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
