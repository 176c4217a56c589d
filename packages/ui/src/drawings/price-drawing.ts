import type { Evidence, Resale } from "@ferrule/core";
import { scaleLog } from "d3-scale";
import { symbol, symbolCircle, symbolSquare, symbolTriangle } from "d3-shape";
import { css, html, svg, type TemplateResult } from "lit";
import { moneyIntervalText, moneyText, roundMoneyText } from "../format/money.ts";
import { countText } from "../format/number.ts";
import { closenessWords } from "../words/deal-words.ts";
import { drawingStyles } from "./drawing-styles.ts";
import { letterPx, middleWithin } from "./letter-px.ts";
import { MeasuredDrawing } from "./measured-drawing.ts";
import { type PricePoint, priceDomain, pricePoints, priceTicks, sizePx, swarm } from "./price-plot.ts";

const edgePx = 8;
const laneLabelPx = 18;
const axisPx = 26;
const lanes = ["same-model-and-condition", "same-model", "same-class-and-age", "same-class"] as const;
const shapes = { own: symbolSquare, sold: symbolCircle, asked: symbolTriangle } as const;
const shapeWords = { own: "own sale", sold: "sold", asked: "asked" } as const;

type Known = Extract<Resale, { known: true }>;

/** The prices behind an estimate as points, the closest kind on top, with the estimate and its interval through them all. */
export class PriceDrawing extends MeasuredDrawing {
  static override properties = { resale: {}, evidence: {}, today: {} };
  static override styles = [
    drawingStyles,
    css`
      svg {
        max-width: 44rem;
      }
      .band {
        fill: var(--ticket-2);
        stroke: var(--line-strong);
        stroke-width: 1;
        stroke-dasharray: 5 3;
      }
      .value {
        fill: none;
        stroke: currentColor;
        stroke-width: 2;
      }
      .sold,
      .own {
        fill: currentColor;
        stroke: var(--ticket);
        stroke-width: 0.75;
      }
      .asked {
        fill: var(--ticket);
        stroke: currentColor;
        stroke-width: 1.5;
      }
      .own {
        fill: var(--accent);
      }
      .key {
        display: flex;
        flex-wrap: wrap;
        gap: 0.1rem 1rem;
        margin: 0.25rem 0 0;
        padding: 0;
        list-style: none;
      }
      .key li {
        display: inline-flex;
        align-items: center;
        gap: 0.35rem;
      }
      .key svg {
        width: 14px;
        height: 14px;
      }
    `,
  ];
  declare resale: Known;
  declare evidence: ReadonlyMap<string, Evidence>;
  /** As "2026-11-25". */
  declare today: string;

  override render() {
    const points = pricePoints(this.resale, this.evidence, this.today);
    const kinds = [...new Set(points.map(({ priced }) => priced))];
    return html`<figure>
      ${this.widthPx > 0 ? this.renderPlot(points, Math.min(704, this.widthPx)) : ""}
      <figcaption><ul class="key">${kinds.map((kind) => html`<li><svg viewBox="-7 -7 14 14" aria-hidden="true"><path class=${kind} d=${symbol(shapes[kind], 90)()} /></svg>${shapeWords[kind]}</li>`)}<li>the newer, the larger</li></ul></figcaption>
    </figure>`;
  }

  private renderPlot(points: readonly PricePoint[], widthPx: number): TemplateResult {
    const domain = priceDomain(this.resale, points);
    const x = scaleLog()
      .domain(domain)
      .range([edgePx, widthPx - edgePx]);
    const rows = this.#lanes(points, x);
    const basePx = rows.reduce((sum, { highPx }) => sum + highPx, laneLabelPx + 6);
    const { lowMinor, highMinor, valueMinor } = this.resale;
    const ticks = priceTicks(domain, x, 6 * letterPx);
    return html`<svg viewBox="0 0 ${widthPx} ${basePx + axisPx}" role="img" aria-label=${this.#sentence(points)}>
      <rect class="band" x=${x(lowMinor)} y=${laneLabelPx} width=${Math.max(1, x(highMinor) - x(lowMinor))} height=${basePx - laneLabelPx} />
      <path class="value" d="M${x(valueMinor)} ${laneLabelPx - 4}V${basePx}" />
      ${this.#estimateLabel(x(valueMinor), widthPx)}
      <path class="edge" d="M${edgePx} ${basePx}H${widthPx - edgePx}" />
      ${ticks.map((amount) => svg`<path class="measure" d="M${x(amount)} ${basePx}v5" />${this.#tickLabel(amount, x(amount), basePx, widthPx)}`)}
      ${rows.map(
        ({ label, topPx, middlePx, of }) =>
          svg`<text class="soft" x=${edgePx} y=${topPx + 13}>${label}</text>${of.map(
            ({ point, xPx, offPx }) =>
              svg`<path class=${point.priced} transform="translate(${xPx} ${middlePx + offPx})" opacity=${opacityOf(point.ageMonths)} d=${symbol(shapes[point.priced], areaOf(point.ageMonths))()}><title>${this.#pointWords(point)}</title></path>`,
          )}`,
      )}
    </svg>`;
  }

  #lanes(points: readonly PricePoint[], x: (amountMinor: number) => number) {
    let topPx = laneLabelPx + 4;
    return lanes.flatMap((closeness) => {
      const own = points.filter((point) => point.closeness === closeness && point.amountMinor > 0);
      if (own.length === 0) return [];
      const offsets = swarm(
        own.map((point) => ({ xPx: x(point.amountMinor), sizePx: sizePx(point.ageMonths) })),
      );
      const reachPx = Math.max(...offsets.map(Math.abs)) + 9;
      const highPx = laneLabelPx + 2 * reachPx;
      const lane = {
        label: closenessWords[closeness].toLowerCase(),
        topPx,
        highPx,
        middlePx: topPx + laneLabelPx + reachPx,
        of: own.map((point, at) => ({ point, xPx: x(point.amountMinor), offPx: offsets[at] ?? 0 })),
      };
      topPx += highPx;
      return [lane];
    });
  }

  #estimateLabel(atPx: number, widthPx: number): TemplateResult {
    const label = moneyIntervalText(this.resale, this.resale.currency);
    return svg`<text class="strong" x=${middleWithin(label, atPx, widthPx)} y="11" text-anchor="middle">${label}</text>`;
  }

  #tickLabel(amountMinor: number, atPx: number, basePx: number, widthPx: number): TemplateResult {
    const label = roundMoneyText(amountMinor, this.resale.currency);
    return svg`<text x=${middleWithin(label, atPx, widthPx)} y=${basePx + 18} text-anchor="middle">${label}</text>`;
  }

  #pointWords({ id, priced, amountMinor }: PricePoint): string {
    const row = this.evidence.get(id);
    const said = row ? `${moneyText(row.price.amountMinor, row.price.currency)} on ${row.on}, ` : "";
    return `${shapeWords[priced]}: ${said}counted as ${moneyText(amountMinor, this.resale.currency)}`;
  }

  #sentence(points: readonly PricePoint[]): string {
    const count = (kind: PricePoint["priced"]) => points.filter(({ priced }) => priced === kind).length;
    const kinds = (["own", "sold", "asked"] as const)
      .filter((kind) => count(kind) > 0)
      .map((kind) => `${count(kind)} ${shapeWords[kind]}`);
    const amounts = points.map(({ amountMinor }) => amountMinor);
    const money = (amount: number) => moneyText(amount, this.resale.currency);
    return `${countText(points.length, "price")} as points along the money they count for, from ${money(Math.min(...amounts))} to ${money(Math.max(...amounts))}: ${kinds.join(", ")}. The estimate is ${moneyIntervalText(this.resale, this.resale.currency)}.`;
  }
}

/** A triangle or square of the same area as a disc of that size. */
function areaOf(ageMonths: number | undefined): number {
  return Math.PI * sizePx(ageMonths) ** 2;
}

function opacityOf(ageMonths: number | undefined): string {
  return (0.55 + 0.45 * 0.5 ** ((ageMonths ?? 12) / 9)).toFixed(2);
}

customElements.define("ferrule-price-drawing", PriceDrawing);
