import type { ClubDimensions, Head } from "@ferrule/core";
import { scaleLinear } from "d3-scale";
import { css, html, svg, type TemplateResult } from "lit";
import type { LengthUnit } from "../format/length.ts";
import { lengthLabel } from "../format/length-label.ts";
import type { AxisDimension, AxisPiece, ClubLayout } from "./club-layout.ts";
import { clubSentence, dimensionLabel } from "./club-words.ts";
import { placeLines } from "./dimension-lines.ts";
import { drawingStyles } from "./drawing-styles.ts";
import { headOutline, headPaths, inAxisFrame } from "./head-outline.ts";
import { letterPx } from "./letter-px.ts";
import { MeasuredDrawing } from "./measured-drawing.ts";

const rowPx = 21;
const edgePx = 4;
/** How far a head reaches beyond where the axis meets the ground, and off it; and half the widths of what lies on the axis. */
const headReachIn = 2.9;
const headDropIn = 4.4;
const halfIn = { cap: 0.52, gripMouth: 0.36, butt: 0.3, tip: 0.17, hosel: 0.27 } as const;

/** Above the axis, where the head does not hang, stand the measures that end at it. */
const isAbove = ({ name }: AxisDimension) =>
  ["playing-length", "cut-length", "insertion", "bbgm"].includes(name);
const nearFirst = (one: AxisDimension, other: AxisDimension) =>
  one.toIn - one.fromIn - (other.toIn - other.fromIn);

/** A club drawn to scale along its shaft, with its measures. */
export class ClubDrawing extends MeasuredDrawing {
  static override properties = { layout: {}, head: {}, typical: {}, unit: {} };
  static override styles = [
    drawingStyles,
    css`
      .ferrule {
        fill: currentColor;
      }
      .cut {
        fill: url(#hatch);
        stroke: currentColor;
        stroke-width: 1;
        stroke-dasharray: 3 2;
      }
    `,
  ];
  declare layout: ClubLayout;
  declare head: Head;
  declare typical: ClubDimensions["typical"];
  declare unit: LengthUnit;

  override render() {
    return this.widthPx > 0 ? this.renderDrawing() : html``;
  }

  private renderDrawing(): TemplateResult {
    const { layout, widthPx } = this;
    const x = scaleLinear()
      .domain([
        Math.min(0, layout.uncut?.fromIn ?? 0),
        Math.max(layout.groundIn + headReachIn, layout.uncut?.toIn ?? 0),
      ])
      .range([edgePx, widthPx - edgePx]);
    const pxPerIn = x(1) - x(0);
    const above = layout.dimensions.filter(isAbove).toSorted(nearFirst);
    const below = layout.dimensions.filter((one) => !isAbove(one)).toSorted(nearFirst);
    const upper = this.#places(above, x);
    const lower = this.#places(below, x);
    const nearPx = Math.max(18, halfIn.cap * pxPerIn + 8);
    const axisPx = 12 + upper.rows * rowPx + Math.max(nearPx, 1.1 * pxPerIn);
    const lowerPx = axisPx + nearPx + 12;
    const bottomPx = Math.max(lowerPx + lower.rows * rowPx, axisPx + headDropIn * pxPerIn);
    const stripPx = bottomPx + 22;
    const hasStrip = layout.buttCut ?? layout.tipCut ?? layout.extension;
    const heightPx = hasStrip ? stripPx + 34 : bottomPx;
    const at = { x, pxPerIn, axisPx };
    return html`<svg viewBox="0 0 ${widthPx} ${heightPx}" role="img" aria-label=${clubSentence(layout, this.typical, this.unit)}>
      <defs><pattern id="hatch" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0v5" class="fine" /></pattern></defs>
      ${above.map((one, i) => this.#measure(one, upper.of[i], at, axisPx - Math.max(nearPx, 1.1 * pxPerIn) - (upper.of[i]?.row ?? 0) * rowPx))}
      ${below.map((one, i) => this.#measure(one, lower.of[i], at, lowerPx + 8 + (lower.of[i]?.row ?? 0) * rowPx))}
      ${this.#ground(at)}${this.#club(at)}${this.#scale(at, nearPx)}
      ${hasStrip ? this.#strip(at, stripPx) : ""}
    </svg>`;
  }

  #places(dimensions: readonly AxisDimension[], x: (valueIn: number) => number) {
    const lines = dimensions.map((one) => ({
      fromPx: x(one.fromIn),
      toPx: x(one.toIn),
      label: dimensionLabel(one, this.typical, this.unit),
    }));
    const of = placeLines(lines, this.widthPx);
    return { of, rows: Math.max(0, ...of.map(({ row }) => row + 1)) };
  }

  /** One measure: lines down to what it measures, arrows between them, and its words. */
  #measure(
    one: AxisDimension,
    place: ReturnType<typeof placeLines>[number] | undefined,
    { x, axisPx }: At,
    y: number,
  ) {
    if (!place) return "";
    const [from, to] = [x(one.fromIn), x(one.toIn)];
    const short = to - from < 14;
    const half = (dimensionLabel(one, this.typical, this.unit).length * letterPx) / 2 + 3;
    const arrows = short
      ? `M${from - 7} ${y}H${from}M${to} ${y}h7M${from - 4} ${y - 2.5}L${from} ${y}l-4 2.5M${to + 4} ${y - 2.5}L${to} ${y}l4 2.5`
      : `M${from} ${y}H${place.anchor === "middle" ? `${place.labelPx - half}M${place.labelPx + half} ${y}H` : ""}${to}M${from + 5} ${y - 3}L${from} ${y}l5 3M${to - 5} ${y - 3}L${to} ${y}l-5 3`;
    const outside = place.anchor === "end" ? -1 : 1;
    const labelPx = short && place.anchor !== "middle" ? place.labelPx + outside * 3 : place.labelPx;
    const reach = y < axisPx ? y - 4 : y + 4;
    return svg`<path class="fine" d="M${from} ${reach}V${axisPx}M${to} ${reach}V${axisPx}" />
      <path class="measure" d=${arrows} />
      <text x=${labelPx} y=${y + 4} text-anchor=${place.anchor}>${dimensionLabel(one, this.typical, this.unit)}</text>`;
  }

  #club({ x, pxPerIn, axisPx }: At): TemplateResult {
    const { layout } = this;
    const bar = (piece: AxisPiece, fromHalfIn: number, toHalfIn: number, kind: string) => {
      const [from, to] = [x(piece.fromIn), x(piece.toIn)];
      const [a, b] = [fromHalfIn * pxPerIn, toHalfIn * pxPerIn];
      return svg`<path class=${kind} d="M${from} ${axisPx - a}L${to} ${axisPx - b}V${axisPx + b}L${from} ${axisPx + a}Z" />`;
    };
    const mouthIn = layout.holder?.fromIn ?? layout.shaft.toIn;
    const { seatIn, hidden, grip } = layout;
    const neck = { fromIn: seatIn ?? mouthIn, toIn: layout.groundIn - 1.1 };
    const gripFromPx = x(0);
    const gripToPx = grip ? x(grip.toIn) : gripFromPx;
    const capPx = halfIn.cap * pxPerIn;
    const face = this.#headPaths({ x, pxPerIn, axisPx });
    return svg`
      <path class="axis" d="M${x(0) - edgePx} ${axisPx}H${x(layout.groundIn) + 12}" />
      ${bar({ fromIn: layout.shaft.fromIn, toIn: mouthIn }, halfIn.butt, halfIn.tip, "solid")}
      ${neck.toIn > neck.fromIn ? bar(neck, halfIn.hosel, halfIn.hosel + 0.04, "solid") : ""}
      ${seatIn === undefined ? "" : bar({ fromIn: Math.min(mouthIn, seatIn), toIn: seatIn }, 0.2, halfIn.hosel, "solid")}
      ${seatIn === undefined ? bar({ fromIn: mouthIn - 0.9, toIn: mouthIn }, 0.2, halfIn.hosel, "ferrule") : ""}
      <path class="solid" d=${face.outline} /><path class="fine" d=${face.scores} />
      ${hidden ? bar(hidden, halfIn.tip, halfIn.tip, "hidden") : ""}
      ${
        grip
          ? svg`<path class="solid" d="M${gripFromPx + capPx * 0.5} ${axisPx - capPx}L${gripToPx} ${axisPx - halfIn.gripMouth * pxPerIn}V${axisPx + halfIn.gripMouth * pxPerIn}L${gripFromPx + capPx * 0.5} ${axisPx + capPx}Q${gripFromPx} ${axisPx + capPx} ${gripFromPx} ${axisPx}Q${gripFromPx} ${axisPx - capPx} ${gripFromPx + capPx * 0.5} ${axisPx - capPx}Z" />
          ${this.#gripLines(gripFromPx, gripToPx, axisPx, capPx)}`
          : ""
      }`;
  }

  #gripLines(fromPx: number, toPx: number, axisPx: number, capPx: number): TemplateResult {
    const step = Math.max(6, capPx);
    const count = Math.max(0, Math.floor((toPx - fromPx - capPx * 2) / step));
    const lines = Array.from({ length: count }, (_, i) => {
      const at = fromPx + capPx + i * step;
      const half = capPx * (0.82 - (0.3 * i) / count);
      return `M${at} ${axisPx - half * 0.7}l${step * 0.4} ${half * 1.4}`;
    });
    return svg`<path class="fine" d=${lines.join("")} />`;
  }

  #headPaths({ x, pxPerIn, axisPx }: At) {
    return headPaths(headOutline(this.head, this.#lieDeg()), ({ alongIn, offIn }) => [
      x(this.layout.groundIn) + alongIn * pxPerIn,
      axisPx + offIn * pxPerIn,
    ]);
  }

  #lieDeg(): number {
    return this.layout.lieDeg ?? 60;
  }

  /** The ground, at the lie angle, with a little earth under it. */
  #ground({ x, pxPerIn, axisPx }: At): TemplateResult {
    const point = (toeIn: number, upIn: number) => {
      const { alongIn, offIn } = inAxisFrame([toeIn, upIn], this.#lieDeg());
      return `${(x(this.layout.groundIn) + alongIn * pxPerIn).toFixed(1)} ${(axisPx + offIn * pxPerIn).toFixed(1)}`;
    };
    const blades = Array.from({ length: 12 }, (_, i) => -1.2 + i * 0.52);
    return svg`<path class="edge" d="M${point(-1.2, 0)}L${point(4.9, 0)}" />
      <path class="fine" d=${blades.map((toeIn) => `M${point(toeIn, 0)}L${point(toeIn - 0.22, -0.34)}`).join("")} />`;
  }

  /** The scale's knife edge, and the balance point with where it may lie. */
  #scale({ x, axisPx }: At, nearPx: number): TemplateResult {
    const { balance, dimensions } = this.layout;
    const fulcrum = dimensions.find(({ name }) => name === "fulcrum");
    const edge = x(fulcrum?.toIn ?? 0);
    const mark = balance && x(balance.atIn);
    return svg`<path class="solid" d="M${edge} ${axisPx + nearPx - 8}l7 12h-14z" />
      ${
        balance && mark !== undefined
          ? svg`<path class="edge" d="M${x(balance.lowIn)} ${axisPx}H${x(balance.highIn)}M${x(balance.lowIn)} ${axisPx - 4}v8M${x(balance.highIn)} ${axisPx - 4}v8" />
          <circle class="solid" cx=${mark} cy=${axisPx} r="5.5" />
          <path class="full" d="M${mark} ${axisPx}v-5.5a5.5 5.5 0 0 1 5.5 5.5zM${mark} ${axisPx}v5.5a5.5 5.5 0 0 1 -5.5 -5.5z" />`
          : ""
      }`;
  }

  /** The shaft as it came, laid under the club, with what is cut from it. */
  #strip({ x, pxPerIn }: At, y: number): TemplateResult {
    const { uncut, buttCut, tipCut, extension, shaft } = this.layout;
    if (!uncut) return svg``;
    const half = Math.max(3, halfIn.butt * pxPerIn);
    const box = ({ fromIn, toIn }: AxisPiece, kind: string) =>
      svg`<rect class=${kind} x=${x(fromIn)} y=${y - half} width=${Math.max(1.5, x(toIn) - x(fromIn))} height=${half * 2} />`;
    const length = ({ fromIn, toIn }: AxisPiece) => lengthLabel(toIn - fromIn, this.unit);
    const butt = buttCut ? `cut ${length(buttCut)}` : extension ? `add ${length(extension)}` : undefined;
    return svg`${box({ fromIn: extension?.toIn ?? shaft.fromIn, toIn: shaft.toIn }, "solid")}
      ${buttCut ? box(buttCut, "cut") : ""}${tipCut ? box(tipCut, "cut") : ""}${extension ? box(extension, "cut") : ""}
      ${butt ? svg`<text x=${x(Math.min(uncut.fromIn, shaft.fromIn))} y=${y + half + 16}>${butt}</text>` : ""}
      ${tipCut ? svg`<text x=${x(tipCut.toIn)} y=${y + half + 16} text-anchor="end">tip: cut ${length(tipCut)}</text>` : ""}
      <text class="soft" x=${(x(shaft.fromIn) + x(shaft.toIn)) / 2} y=${y - half - 6} text-anchor="middle">the shaft as it came</text>`;
  }
}

interface At {
  readonly x: (valueIn: number) => number;
  readonly pxPerIn: number;
  readonly axisPx: number;
}

customElements.define("ferrule-club-drawing", ClubDrawing);
