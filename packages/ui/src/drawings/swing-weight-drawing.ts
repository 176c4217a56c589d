import { scaleLinear } from "d3-scale";
import { line } from "d3-shape";
import { css, html, svg, type TemplateResult } from "lit";
import { fractionText, type LengthUnit } from "../format/length.ts";
import { lengthLabel } from "../format/length-label.ts";
import { numberText } from "../format/number.ts";
import { swingWeightText } from "../format/swing-weight.ts";
import { cmFromIn, inFromCm } from "../format/units.ts";
import { drawingStyles } from "./drawing-styles.ts";
import { MeasuredDrawing } from "./measured-drawing.ts";
import { placeAround } from "./place-around.ts";
import {
  inchTicks,
  type SwingPoint,
  type SwingTarget,
  type SwingTune,
  swingDomains,
} from "./swing-weight-plot.ts";

const leftPx = 34;
const bottomPx = 38;
const topPx = 8;
/** What counts as there: half a point and 1/32 in, as the ways are found. */
const reach = { lengthIn: 1 / 32, points: 0.5 } as const;

/** Swing weight against length: the club as it is and as it is tried with where each may lie, the target, and what single changes do. */
export class SwingWeightDrawing extends MeasuredDrawing {
  static override properties = { start: {}, now: {}, target: {}, tunes: {}, unit: {} };
  static override styles = [
    drawingStyles,
    css`
      svg {
        max-width: 44rem;
      }
      .interval {
        stroke: currentColor;
        stroke-width: 1.5;
        fill: none;
      }
      .start {
        fill: var(--ticket);
        stroke: currentColor;
        stroke-width: 2;
      }
      .trail {
        fill: none;
        stroke: currentColor;
        stroke-width: 1.5;
        stroke-dasharray: 2 3;
      }
      .tune {
        fill: none;
        stroke: var(--ink-soft);
        stroke-width: 1;
      }
      .target {
        fill: none;
        stroke: var(--accent);
        stroke-width: 1.5;
      }
      .target-line {
        fill: none;
        stroke: var(--accent);
        stroke-width: 1;
        stroke-dasharray: 6 4;
      }
    `,
  ];
  declare start: SwingPoint;
  /** As it is tried; the same as `start` while nothing is. */
  declare now: SwingPoint;
  declare target: SwingTarget;
  declare tunes: readonly SwingTune[];
  declare unit: LengthUnit;

  override render() {
    return this.widthPx > 0 ? this.renderPlot(Math.min(704, this.widthPx)) : html``;
  }

  private renderPlot(widthPx: number): TemplateResult {
    const heightPx = Math.max(230, Math.min(330, widthPx * 0.55));
    const domains = swingDomains([this.start, this.now], this.target, this.tunes);
    const x = scaleLinear()
      .domain(domains.lengthIn)
      .range([leftPx, widthPx - 6]);
    const y = scaleLinear()
      .domain(domains.points)
      .range([heightPx - bottomPx, topPx]);
    const at = ({ lengthIn, points }: { lengthIn: number; points: number }) =>
      [x(lengthIn), y(points)] as const;
    const box = { left: leftPx + 4, right: widthPx - 2, top: topPx, bottom: heightPx - bottomPx - 2 };
    return html`<svg viewBox="0 0 ${widthPx} ${heightPx}" role="img" aria-label=${this.#sentence()}>
      ${this.#axes(x, y, widthPx, heightPx)}${this.#target(x, y, widthPx, heightPx)}
      ${this.tunes.map(({ to }) => arrow(at(this.start), at(to)))}
      ${this.#club(this.start, x, y, "start")}
      ${this.#isTried() ? svg`<path class="trail" d=${line()([[...at(this.start)], [...at(this.now)]])} />${this.#club(this.now, x, y, "full")}` : ""}
      ${this.#labels(at, box)}
    </svg>`;
  }

  #isTried(): boolean {
    return (
      Math.abs(this.now.lengthIn - this.start.lengthIn) > 1e-6 ||
      Math.abs(this.now.points - this.start.points) > 1e-6
    );
  }

  #labels(
    at: (point: SwingPoint) => readonly [number, number],
    box: Parameters<typeof placeAround>[1],
  ): TemplateResult {
    const wanted = [
      ...(this.#isTried() ? [{ point: this.now, label: "as tried" }] : []),
      { point: this.start, label: "as it is" },
      ...this.tunes.map(({ label, to }) => ({ point: to, label })),
    ].map(({ point, label }) => {
      const [[xPx, yPx], [fromX, fromY]] = [at(point), at(this.start)];
      const away =
        point === this.start || point === this.now ? undefined : ([xPx - fromX, yPx - fromY] as const);
      return { xPx, yPx, label, ...(away && { away }) };
    });
    const places = placeAround(wanted, box);
    return svg`${places.map((place, i) =>
      place
        ? svg`<text x=${place.xPx} y=${place.yPx} text-anchor=${place.anchor}>${wanted[i]?.label}</text>`
        : "",
    )}`;
  }

  #axes(x: Scale, y: Scale, widthPx: number, heightPx: number): TemplateResult {
    const base = heightPx - bottomPx;
    const [low = 0, high = 0] = y.domain();
    const step = high - low > 14 ? 4 : high - low > 7 ? 2 : 1;
    const rows = y.ticks((high - low) / step).filter((value) => Number.isInteger(value));
    return svg`<path class="edge" d="M${leftPx} ${topPx}V${base}H${widthPx - 4}" />
      ${rows.map((points) => svg`<path class="fine" d="M${leftPx} ${y(points)}H${widthPx - 4}" stroke-dasharray="1 5" /><text x=${leftPx - 6} y=${y(points) + 4} text-anchor="end">${swingWeightText(points, 0)}</text>`)}
      ${this.#lengthTicks(x, widthPx).map(({ valueIn, text }) => svg`<path class="measure" d="M${x(valueIn)} ${base}v5" /><text x=${x(valueIn)} y=${base + 18} text-anchor="middle">${text}</text>`)}
      <text class="soft" x=${widthPx - 4} y=${base + 34} text-anchor="end">playing length, ${this.unit}</text>
      <text class="soft" x=${leftPx + 6} y=${topPx + 8}>swing weight</text>`;
  }

  #lengthTicks(x: Scale, widthPx: number): readonly { valueIn: number; text: string }[] {
    const count = Math.max(4, Math.floor(widthPx / 80));
    const [low = 0, high = 0] = x.domain();
    if (this.unit === "in")
      return inchTicks(low, high, count).map((valueIn) => ({ valueIn, text: fractionText(valueIn) }));
    const cm = scaleLinear().domain([cmFromIn(low), cmFromIn(high)]);
    return cm.ticks(count).map((value) => ({ valueIn: inFromCm(value), text: numberText(value, 1) }));
  }

  #club(
    { lengthIn, points, lowIn, highIn, lowPoints, highPoints }: SwingPoint,
    x: Scale,
    y: Scale,
    kind: string,
  ) {
    const [cx, cy] = [x(lengthIn), y(points)];
    const cap = 4;
    return svg`<path class=${kind === "full" ? "interval" : "measure"} d="M${x(lowIn)} ${cy}H${x(highIn)}M${x(lowIn)} ${cy - cap}v${2 * cap}M${x(highIn)} ${cy - cap}v${2 * cap}M${cx} ${y(lowPoints)}V${y(highPoints)}M${cx - cap} ${y(lowPoints)}h${2 * cap}M${cx - cap} ${y(highPoints)}h${2 * cap}" />
      <circle class=${kind} cx=${cx} cy=${cy} r="5" />`;
  }

  /** A ring and hair lines where both are wanted, else the one line. */
  #target(x: Scale, y: Scale, widthPx: number, heightPx: number): TemplateResult {
    const { playingLengthIn, swingWeightPoints } = this.target;
    const vertical =
      playingLengthIn === undefined ? "" : `M${x(playingLengthIn)} ${topPx}V${heightPx - bottomPx}`;
    const level = swingWeightPoints === undefined ? "" : `M${leftPx} ${y(swingWeightPoints)}H${widthPx - 4}`;
    if (playingLengthIn === undefined || swingWeightPoints === undefined)
      return svg`<path class="target-line" d=${vertical + level} />`;
    const wide = Math.max(5, x(playingLengthIn + reach.lengthIn) - x(playingLengthIn));
    const high = Math.max(5, y(swingWeightPoints) - y(swingWeightPoints + reach.points));
    const [cx, cy] = [x(playingLengthIn), y(swingWeightPoints)];
    return svg`<path class="target-line" d=${vertical + level} />
      <rect class="target" x=${cx - wide} y=${cy - high} width=${2 * wide} height=${2 * high} />`;
  }

  #sentence(): string {
    const text = ({ lengthIn, points }: { lengthIn: number; points: number }) =>
      `${lengthLabel(lengthIn, this.unit)} and ${swingWeightText(points)}`;
    const { playingLengthIn, swingWeightPoints } = this.target;
    const wanted = [
      playingLengthIn !== undefined && lengthLabel(playingLengthIn, this.unit),
      swingWeightPoints !== undefined && swingWeightText(swingWeightPoints),
    ].filter(Boolean);
    return [
      `Swing weight against playing length. As it is: ${text(this.start)}, the swing weight between ${swingWeightText(this.start.lowPoints)} and ${swingWeightText(this.start.highPoints)}.`,
      this.#isTried() ? `As tried: ${text(this.now)}.` : "",
      wanted.length > 0 ? `The target: ${wanted.join(" and ")}.` : "",
      ...this.tunes.map(({ label, to }) => `${label} makes it ${text(to)}.`),
    ]
      .filter(Boolean)
      .join(" ");
  }
}

type Scale = ReturnType<typeof scaleLinear<number, number>>;

/** From one point to another, with a head on it; nothing where the two are one. */
function arrow(
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
): TemplateResult | string {
  const long = Math.hypot(x2 - x1, y2 - y1);
  if (long < 3) return "";
  const [ux, uy] = [(x2 - x1) / long, (y2 - y1) / long];
  const wing = (side: number) => `${x2 - 7 * ux + side * 3.2 * uy} ${y2 - 7 * uy - side * 3.2 * ux}`;
  return svg`<path class="tune" d="M${x1 + 6 * ux} ${y1 + 6 * uy}L${x2} ${y2}M${wing(1)}L${x2} ${y2}L${wing(-1)}" />`;
}

customElements.define("ferrule-swing-weight-drawing", SwingWeightDrawing);
