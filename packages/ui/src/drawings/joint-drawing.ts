import { css, html, svg, type TemplateResult } from "lit";
import { diameterText, type LengthUnit } from "../format/length.ts";
import { lengthLabel } from "../format/length-label.ts";
import { placeLines } from "./dimension-lines.ts";
import { drawingStyles } from "./drawing-styles.ts";
import type { Clash } from "./joint-clashes.ts";
import type { JointFacts } from "./joint-facts.ts";
import { bondLineIn, type JointSection, jointSection, taperPerIn } from "./joint-section.ts";
import { jointRows, jointSentence, thousandthsText } from "./joint-words.ts";
import { MeasuredDrawing } from "./measured-drawing.ts";
import { placeLabels } from "./place-labels.ts";

const mostWidePx = 620;
const aboveIn = 0.95;
const beyondIn = 0.42;
const rowPx = 20;
/** Of an adapter's own wall and of the head round it, as drawn: nobody measures them. */
const adapterWallIn = 0.055;
const receiverWallIn = 0.1;

/** A taper is widened with the gap, but never out of the hosel. */
const mostTaperWidened = 8;

interface Frame {
  readonly x: (alongIn: number) => number;
  readonly y: (halfIn: number) => number;
  readonly section: JointSection;
}

/** The joint of a tip and its bore cut open along the axis, with what clashes marked where it clashes. */
export class JointDrawing extends MeasuredDrawing {
  static override properties = { facts: {}, clashes: {}, unit: {} };
  static override styles = [
    drawingStyles,
    css`
      svg {
        max-width: 620px;
      }
      @media (min-width: 64rem) {
        figure {
          display: grid;
          grid-template-columns: 620px minmax(0, 1fr);
          gap: 0 2rem;
          align-items: start;
        }
      }
      .metal {
        fill: url(#metal);
        stroke: currentColor;
        stroke-width: 1.5;
      }
      .alloy {
        fill: url(#alloy);
        stroke: currentColor;
        stroke-width: 1.5;
      }
      .epoxy {
        fill: url(#dots);
      }
      .sleeve {
        fill: url(#sleeve);
        stroke: currentColor;
        stroke-width: 1;
      }
      .guess {
        stroke-dasharray: 4 3;
      }
      .overlap {
        fill: url(#cross);
        stroke: var(--refused);
        stroke-width: 1;
      }
      .mark {
        fill: var(--ticket);
        stroke: var(--refused);
        stroke-width: 1.5;
      }
      .strike {
        fill: none;
        stroke: var(--refused);
        stroke-width: 2;
        stroke-linecap: round;
      }
      .red {
        stroke: var(--refused);
        stroke-width: 1;
        fill: none;
      }
      dl {
        display: grid;
        grid-template-columns: minmax(0, 1fr) auto;
        gap: 0.15rem 1rem;
        margin: 0.4rem 0 0;
        max-width: 32rem;
        font-size: 0.875rem;
      }
      dt {
        color: var(--ink-soft);
      }
      dd {
        margin: 0;
        font-family: var(--mono);
        text-align: right;
      }
      .clashing {
        margin: 0.5rem 0 0;
        padding: 0;
        list-style: none;
        color: var(--refused);
        font-weight: 600;
        font-size: 0.9rem;
        overflow-wrap: anywhere;
      }
    `,
  ];
  declare facts: JointFacts;
  declare clashes: readonly Clash[];
  declare unit: LengthUnit;

  override render() {
    const section = jointSection(this.facts, this.clashes);
    return html`<figure>
      ${this.widthPx > 0 ? this.renderSection(section, Math.min(mostWidePx, this.widthPx)) : ""}
      <figcaption>
        ${section.clashes.length > 0 ? html`<ul class="clashing">${section.clashes.map(({ text }) => html`<li>✕ ${text}</li>`)}</ul>` : ""}
        ${section.widened > 1 ? `To scale, but the gap between tip and bore is drawn ${section.widened} times as wide as it is.` : "To scale."}
        ${section.guessed.length > 0 ? "A dashed edge is one that nobody has measured." : ""}
        <dl>${jointRows(this.facts, this.unit).map(([name, text]) => html`<dt>${name}</dt><dd>${text}</dd>`)}</dl>
      </figcaption>
    </figure>`;
  }

  private renderSection(section: JointSection, widthPx: number): TemplateResult {
    const spanIn = aboveIn + section.depthIn + beyondIn;
    const pxPerIn = (widthPx - 8) / spanIn;
    const labels = this.#labels(section);
    const x = (alongIn: number) => 4 + (alongIn + aboveIn) * pxPerIn;
    const places = placeLabels(
      labels.map(({ alongIn, label }) => ({ atPx: x(alongIn), label })),
      widthPx,
    );
    const rows = Math.max(0, ...places.map(({ row }) => row + 1));
    const halfPx =
      (section.outsideHalfIn + (this.facts.holder === "adapter" ? receiverWallIn : 0.02)) * pxPerIn;
    const middlePx = rows * rowPx + 14 + halfPx;
    const y = (halfIn: number) => middlePx + halfIn * pxPerIn;
    const frame = { x, y, section };
    const measures = this.#measures(section, x, widthPx);
    const belowPx = middlePx + halfPx + 22;
    const heightPx = belowPx + measures.rows * rowPx;
    return html`<svg viewBox="0 0 ${widthPx} ${heightPx}" role="img" aria-label=${jointSentence(this.facts, section, this.unit)}>
      ${patterns}
      ${this.facts.holder === "adapter" ? this.#receiver(frame) : ""}${this.#holder(frame)}
      ${this.#glue(frame)}${this.#shaft(frame)}${this.#overlap(frame)}
      <path class="axis" d="M${x(-aboveIn)} ${middlePx}H${x(section.depthIn + beyondIn)}" />
      ${labels.map(({ alongIn, halfIn, label }, at) => {
        const place = places[at];
        if (!place) return "";
        const lineY = (rows - 1 - place.row) * rowPx + 12;
        return svg`<path class="fine" d="M${place.xPx} ${lineY + 4}L${x(alongIn)} ${y(-halfIn)}" /><circle class="full" cx=${x(alongIn)} cy=${y(-halfIn)} r="1.8" />
          <text x=${place.xPx} y=${lineY} text-anchor="middle">${label}</text>`;
      })}
      ${measures.of.map(({ fromIn, toIn, label, place }) => {
        const lineY = belowPx + place.row * rowPx;
        const [from, to] = [x(fromIn), x(toIn)];
        const half = place.anchor === "middle" ? label.length * 3.65 + 3 : 0;
        return svg`<path class="fine" d="M${from} ${lineY + 4}V${y(section.tipHalfIn)}M${to} ${lineY + 4}V${y(section.tipHalfIn)}" />
          <path class="measure" d="M${from} ${lineY}H${half ? `${place.labelPx - half}M${place.labelPx + half} ${lineY}H` : ""}${to}M${from + 5} ${lineY - 3}L${from} ${lineY}l5 3M${to - 5} ${lineY - 3}L${to} ${lineY}l-5 3" />
          <text x=${place.labelPx} y=${lineY + 4} text-anchor=${place.anchor}>${label}</text>`;
      })}
      ${section.clashes.map((clash) => this.#mark(clash, frame))}
    </svg>`;
  }

  #labels({ boreHalfIn, tipHalfIn, depthIn, seatIn, tipEndIn, clashes: [clash] }: JointSection) {
    const { tipIn, boreIn, sleeveWallIn, reamedToIn, outsideIn } = this.facts;
    const gapIn = bondLineIn(this.facts);
    const bore = reamedToIn ?? boreIn;
    const between = (tipHalfIn + boreHalfIn) / 2;
    const all = [
      {
        alongIn: -0.62,
        halfIn: tipHalfIn,
        label: `tip ${tipIn === undefined ? "?" : diameterText(tipIn, "in")}`,
      },
      sleeveWallIn !== undefined && {
        alongIn: tipEndIn * 0.3,
        halfIn: between,
        label: `sleeve ${thousandthsText(sleeveWallIn, "in")}`,
      },
      sleeveWallIn === undefined &&
        gapIn !== undefined && {
          alongIn: tipEndIn * 0.3,
          halfIn: between,
          label:
            gapIn < 0 ? `overlap ${thousandthsText(-gapIn, "in")}` : `epoxy ${thousandthsText(gapIn, "in")}`,
        },
      clash?.place === "wall" &&
        outsideIn !== undefined &&
        bore !== undefined && {
          alongIn: clash.alongIn,
          halfIn: clash.halfIn + 0.05,
          label: `wall ${thousandthsText((outsideIn - bore) / 2, "in")}`,
        },
      {
        alongIn: depthIn * 0.82,
        halfIn: boreHalfIn,
        label: `bore ${bore === undefined ? "?" : diameterText(bore, "in")}`,
      },
      seatIn !== undefined && { alongIn: seatIn, halfIn: boreHalfIn + adapterWallIn, label: "seat" },
    ];
    return all.filter((one) => one !== false).toSorted((one, other) => one.alongIn - other.alongIn);
  }

  #measures(
    { depthIn, tipEndIn, widensAboveIn, guessed }: JointSection,
    x: (alongIn: number) => number,
    widthPx: number,
  ) {
    const short = depthIn - tipEndIn;
    const all = [
      !guessed.includes("depth") && {
        fromIn: 0,
        toIn: depthIn,
        label: `deep ${lengthLabel(depthIn, this.unit)}`,
      },
      widensAboveIn > -aboveIn &&
        this.facts.tipForm !== "taper" && {
          fromIn: widensAboveIn,
          toIn: tipEndIn,
          label: `parallel ${lengthLabel(tipEndIn - widensAboveIn, this.unit)}`,
        },
      short > 0.01 && { fromIn: tipEndIn, toIn: depthIn, label: `empty ${lengthLabel(short, this.unit)}` },
    ].filter((one) => one !== false);
    const places = placeLines(
      all.map(({ fromIn, toIn, label }) => ({ fromPx: x(fromIn), toPx: x(toIn), label })),
      widthPx,
    );
    const of = all.flatMap((one, at) => {
      const place = places[at];
      return place ? [{ ...one, place }] : [];
    });
    return { of, rows: Math.max(0, ...places.map(({ row }) => row + 1)) };
  }

  /** The head's own metal round an adapter, on either side of it, from the seat on. */
  #receiver({ x, y, section }: Frame): TemplateResult {
    const inner = section.boreHalfIn + adapterWallIn + 0.012;
    const outer = inner + receiverWallIn;
    const from = x(section.seatIn ?? 0);
    return svg`<path class="metal" d="M${from} ${y(-inner)}H${x(section.depthIn + 0.14)}V${y(inner)}H${from}V${y(outer)}H${x(section.depthIn + beyondIn)}V${y(-outer)}H${from}Z" />`;
  }

  #holder(frame: Frame): TemplateResult {
    const { x, y, section } = frame;
    const { boreHalfIn, outsideHalfIn, depthIn, seatIn, guessed } = section;
    const bore = (alongIn: number) => boreHalfIn + this.#boreTaper(alongIn, section);
    const inside = `M${x(0)} ${y(-bore(0))}L${x(depthIn)} ${y(-bore(depthIn))}V${y(bore(depthIn))}L${x(0)} ${y(bore(0))}`;
    if (seatIn !== undefined) return this.#adapter(frame, inside, seatIn);
    const kind = guessed.includes("outside") ? "metal guess" : "metal";
    if (this.facts.isThrough)
      return this.#sides(
        (side) =>
          `M${x(0)} ${y(side * bore(0))}L${x(depthIn)} ${y(side * bore(depthIn))}V${y(side * outsideHalfIn)}H${x(0)}Z`,
        kind,
      );
    return svg`<path class=${kind} d="${inside}V${y(outsideHalfIn)}H${x(depthIn + beyondIn)}V${y(-outsideHalfIn)}H${x(0)}Z" />`;
  }

  /** Its shoulder above the seat, its sleeve below it. */
  #adapter({ x, y, section }: Frame, inside: string, seatIn: number): TemplateResult {
    const wall = section.boreHalfIn + adapterWallIn;
    const collar = wall + receiverWallIn;
    const chamfer = x(Math.min(0.12, seatIn / 2));
    const end = x(section.depthIn + 0.12);
    return svg`<path class="alloy" d="${inside}V${y(wall + 0.02)}L${chamfer} ${y(collar)}H${x(seatIn)}V${y(wall)}H${end}V${y(-wall)}H${x(seatIn)}V${y(-collar)}H${chamfer}L${x(0)} ${y(-wall - 0.02)}Z" />`;
  }

  #boreTaper(alongIn: number, { depthIn, widened }: JointSection): number {
    const isTaper = this.facts.boreForm === "taper" && this.facts.reamedToIn === undefined;
    return isTaper ? ((depthIn - alongIn) * taperPerIn * Math.min(mostTaperWidened, widened)) / 2 : 0;
  }

  #sides(path: (side: 1 | -1) => string, kind: string): TemplateResult {
    return svg`<path class=${kind} d=${path(-1)} /><path class=${kind} d=${path(1)} />`;
  }

  /** Epoxy, or a sleeve in epoxy, wherever the tip leaves room for it. */
  #glue({ x, y, section }: Frame): TemplateResult | string {
    const { boreHalfIn, tipHalfIn, tipEndIn } = section;
    if (boreHalfIn <= tipHalfIn) return "";
    const kind = this.facts.sleeveWallIn === undefined ? "epoxy" : "sleeve";
    const slack = (boreHalfIn - tipHalfIn) * 0.12;
    const inset = kind === "sleeve" ? slack : 0;
    return this.#sides(
      (side) =>
        `M${x(0)} ${y(side * (tipHalfIn + inset))}H${x(tipEndIn)}V${y(side * (boreHalfIn - inset))}H${x(0)}Z`,
      kind,
    );
  }

  #shaft({ x, y, section }: Frame): TemplateResult {
    const { tipEndIn, tipHalfIn, guessed } = section;
    const half = (alongIn: number) => tipHalfIn + this.#shaftGain(alongIn, section);
    const from = -aboveIn;
    const turn = Math.max(from, Math.min(tipEndIn, section.widensAboveIn));
    const outline = `M${x(from)} ${y(-half(from))}L${x(turn)} ${y(-half(turn))}H${x(tipEndIn)}V${y(tipHalfIn)}H${x(turn)}L${x(from)} ${y(half(from))}`;
    const inner = tipHalfIn * 0.62;
    return svg`<path class=${guessed.includes("tip") ? "solid guess" : "solid"} d=${outline} />
      <path class="hidden" d="M${x(from)} ${y(-inner)}H${x(tipEndIn)}M${x(from)} ${y(inner)}H${x(tipEndIn)}" />
      <path class="fine" d="M${x(from)} ${y(-half(from))}q4 ${(y(half(from)) - y(-half(from))) / 4} 0 ${(y(half(from)) - y(-half(from))) / 2}t0 ${(y(half(from)) - y(-half(from))) / 2}" />`;
  }

  /** How much wider the shaft is here than at its tip, as drawn. */
  #shaftGain(alongIn: number, { widensAboveIn, widened }: JointSection): number {
    return (Math.max(0, widensAboveIn - alongIn) * taperPerIn * Math.min(mostTaperWidened, widened)) / 2;
  }

  /** Where the tip would have to be inside the metal. */
  #overlap({ x, y, section }: Frame): TemplateResult | string {
    const { boreHalfIn, tipHalfIn, tipEndIn } = section;
    if (boreHalfIn >= tipHalfIn) return "";
    return this.#sides(
      (side) => `M${x(0)} ${y(side * boreHalfIn)}H${x(tipEndIn)}V${y(side * tipHalfIn)}H${x(0)}Z`,
      "overlap",
    );
  }

  #mark({ alongIn, halfIn, place }: JointSection["clashes"][number], { x, y }: Frame): TemplateResult {
    const at = (side: number) => {
      const [cx, cy] = [x(alongIn), y(side * halfIn)];
      return svg`<circle class="mark" cx=${cx} cy=${cy} r="8" /><path class="strike" d="M${cx - 3.5} ${cy - 3.5}l7 7m0 -7l-7 7" />`;
    };
    return place === "bottom" ? at(0) : svg`${at(-1)}${at(1)}`;
  }
}

const patterns = svg`<defs>
  <pattern id="metal" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0v6" class="fine" /></pattern>
  <pattern id="alloy" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)"><path d="M0 0v6M3 0v6" class="fine" /></pattern>
  <pattern id="dots" width="5" height="5" patternUnits="userSpaceOnUse"><circle cx="1.3" cy="1.3" r="0.9" class="full" /><circle cx="3.8" cy="3.8" r="0.9" class="full" /></pattern>
  <pattern id="sleeve" width="4" height="4" patternUnits="userSpaceOnUse"><path d="M0 2h4M2 0v4" class="edge" stroke-width="0.8" /></pattern>
  <pattern id="cross" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 2.5h5M2.5 0v5" class="red" /></pattern>
</defs>`;

customElements.define("ferrule-joint-drawing", JointDrawing);
