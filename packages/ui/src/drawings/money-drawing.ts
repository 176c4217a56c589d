import { scaleLinear, scalePoint } from "d3-scale";
import { area, curveStepAfter, line } from "d3-shape";
import { css, html, svg, type TemplateResult } from "lit";
import { moneyText, roundMoneyText } from "../format/money.ts";
import { drawingStyles } from "./drawing-styles.ts";
import { letterPx } from "./letter-px.ts";
import { MeasuredDrawing } from "./measured-drawing.ts";
import type { MoneyMonth } from "./money-months.ts";

const topPx = 10;
const bottomPx = 26;
const heightPx = 260;

/** Money over time: what came in, what went out, and the stock at what it cost. Each line has a stroke of its own and its name at its end. */
export class MoneyDrawing extends MeasuredDrawing {
  static override properties = { months: {}, currency: {} };
  static override styles = [
    drawingStyles,
    css`
      svg {
        max-width: 900px;
      }
      .in {
        fill: none;
        stroke: currentColor;
        stroke-width: 2.5;
      }
      .out {
        fill: none;
        stroke: currentColor;
        stroke-width: 2;
        stroke-dasharray: 7 4;
      }
      .stock {
        fill: url(#stock);
        stroke: currentColor;
        stroke-width: 1;
        stroke-dasharray: 1.5 3;
      }
    `,
  ];
  declare months: readonly MoneyMonth[];
  declare currency: string;

  override render() {
    return this.widthPx > 0 && this.months.length > 0 ? this.renderPlot(Math.min(900, this.widthPx)) : html``;
  }

  private renderPlot(widthPx: number): TemplateResult {
    const { months } = this;
    const top = Math.max(1, ...months.flatMap((one) => [one.inMinor, -one.outMinor, one.stockMinor]));
    const y = scaleLinear()
      .domain([0, top])
      .nice(4)
      .range([heightPx - bottomPx, topPx]);
    const ticks = y.ticks(4);
    const leftPx =
      Math.max(...ticks.map((value) => roundMoneyText(value, this.currency).length)) * letterPx + 8;
    const rightPx = widthPx - 5 * letterPx - 10;
    const x = scalePoint<string>()
      .domain(months.map(({ month }) => month))
      .range([leftPx, rightPx]);
    const at = (one: MoneyMonth) => x(one.month) ?? leftPx;
    const series = (of: (one: MoneyMonth) => number) =>
      line<MoneyMonth>()
        .x(at)
        .y((one) => y(of(one)))
        .curve(curveStepAfter)(months) ?? "";
    const stock =
      area<MoneyMonth>()
        .x(at)
        .y0(y(0))
        .y1((one) => y(one.stockMinor))
        .curve(curveStepAfter)(months) ?? "";
    return html`<svg viewBox="0 0 ${widthPx} ${heightPx}" role="img" aria-label=${this.#sentence()}>
      <defs><pattern id="stock" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0v6" class="fine" /></pattern></defs>
      ${ticks.map((value) => svg`<path class="fine" d="M${leftPx} ${y(value)}H${rightPx}" stroke-dasharray=${value === 0 ? "none" : "1 5"} /><text x=${leftPx - 6} y=${y(value) + 4} text-anchor="end">${roundMoneyText(value, this.currency)}</text>`)}
      ${this.#monthTicks(widthPx).map((one) => svg`<path class="measure" d="M${at(one)} ${heightPx - bottomPx}v4" /><text x=${at(one)} y=${heightPx - 8} text-anchor="middle">${one.month}</text>`)}
      <path class="stock" d=${stock} />
      <path class="out" d=${series((one) => -one.outMinor)} />
      <path class="in" d=${series((one) => one.inMinor)} />
      ${this.#names(y, rightPx)}
    </svg>`;
  }

  /** The names at the ends of the lines, pushed apart where they would meet. */
  #names(y: (value: number) => number, rightPx: number): TemplateResult {
    const last = this.months.at(-1);
    if (!last) return svg``;
    const ends = [
      { name: "in", at: y(last.inMinor) },
      { name: "out", at: y(-last.outMinor) },
      { name: "stock", at: y(last.stockMinor) },
    ].toSorted((one, other) => one.at - other.at);
    let nearest = 0;
    return svg`${ends.map(({ name, at }) => {
      nearest = Math.max(at, nearest + 14);
      return svg`<text class="strong" x=${rightPx + 6} y=${nearest + 4}>${name}</text>`;
    })}`;
  }

  /** As many months as have room for their names, evenly from the last one back. */
  #monthTicks(widthPx: number): readonly MoneyMonth[] {
    const room = Math.max(2, Math.floor(widthPx / 95));
    const step = Math.max(1, Math.ceil(this.months.length / room));
    return this.months.filter((_, at) => (this.months.length - 1 - at) % step === 0);
  }

  #sentence(): string {
    const [first, last] = [this.months[0], this.months.at(-1)];
    if (!first || !last) return "";
    const money = (valueMinor: number) => moneyText(valueMinor, this.currency);
    return `Money over time, from ${first.month} to ${last.month}. By the end ${money(last.inMinor)} had come in and ${money(-last.outMinor)} had gone out, which leaves ${money(last.netMinor)}; the stock had cost ${money(last.stockMinor)}.`;
  }
}

customElements.define("ferrule-money-drawing", MoneyDrawing);
