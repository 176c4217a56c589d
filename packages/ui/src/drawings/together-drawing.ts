import type { Verdict } from "@ferrule/core";
import { linkHorizontal } from "d3-shape";
import { css, html, svg, type TemplateResult } from "lit";
import { countText } from "../format/number.ts";
import { verdictOrder, verdictWords } from "../words/verdict-words.ts";
import { drawingStyles } from "./drawing-styles.ts";
import { letterPx } from "./letter-px.ts";
import { MeasuredDrawing } from "./measured-drawing.ts";
import type { Column } from "./part-kinds.ts";
import { columns, type PlacedGroup, placeGroups } from "./together-layout.ts";
import type { Link, Together } from "./together-links.ts";

const boxPx = 40;
const gapPx = 12;
const topPx = 24;
const columnWords: Readonly<Record<Column, string>> = {
  head: "heads",
  between: "joined by",
  shaft: "shafts",
};

interface Frame {
  readonly left: Readonly<Record<Column, number>>;
  readonly widePx: number;
  readonly rows: ReadonlyMap<string, { readonly column: Column; readonly middlePx: number }>;
}

/** Kinds of heads, of what joins them, and of shafts, with a line for every joint between them; its stroke says the verdict. */
export class TogetherDrawing extends MeasuredDrawing {
  static override properties = { whole: {}, links: {}, chosen: {} };
  static override styles = [
    drawingStyles,
    css`
      svg {
        max-width: 60rem;
      }
      .box {
        fill: var(--ticket-2);
        stroke: var(--line-strong);
        stroke-width: 1;
      }
      .chosen .box {
        stroke: currentColor;
        stroke-width: 2.5;
      }
      .group {
        cursor: pointer;
      }
      .group text {
        stroke: none;
        pointer-events: none;
      }
      .link {
        fill: none;
        stroke: currentColor;
      }
      .fits {
        color: var(--fits);
        stroke-width: 2.5;
      }
      .fits-with-work {
        color: var(--work);
        stroke-width: 2;
        stroke-dasharray: 9 4;
      }
      .unsettled {
        color: var(--unsettled);
        stroke-width: 2;
        stroke-dasharray: 1.5 4;
        stroke-linecap: round;
      }
      .does-not-fit {
        color: var(--refused);
        stroke-width: 0.8;
      }
      .cross {
        fill: none;
        stroke: var(--refused);
        stroke-width: 1.6;
        stroke-linecap: round;
      }
      .joined {
        fill: var(--ticket);
        stroke: currentColor;
        stroke-width: 1.5;
      }
      .key {
        display: flex;
        flex-wrap: wrap;
        gap: 0.1rem 1rem;
        margin: 0.4rem 0 0;
        padding: 0;
        list-style: none;
      }
      .key li {
        display: inline-flex;
        align-items: center;
        gap: 0.35rem;
      }
      .key svg {
        width: 34px;
        height: 12px;
      }
    `,
  ];
  declare whole: Together;
  declare links: readonly Link[];
  /** The kind whose lines are shown alone. */
  declare chosen: string | undefined;

  override render() {
    const shown = verdictOrder.filter((verdict) => this.links.some((link) => link.verdict === verdict));
    return html`<figure>
      ${this.widthPx > 0 ? this.renderMap(Math.min(960, this.widthPx)) : ""}
      <figcaption><ul class="key">
        ${shown.map((verdict) => html`<li><svg viewBox="0 0 34 12" aria-hidden="true"><path class="link ${verdict}" d="M1 6H33" />${verdict === "does-not-fit" ? cross(17, 6) : ""}</svg>${verdictWords[verdict].toLowerCase()}</li>`)}
        <li><svg viewBox="0 0 34 12" aria-hidden="true"><circle class="joined" cx="17" cy="6" r="4" /></svg>some joined already</li>
      </ul></figcaption>
    </figure>`;
  }

  private renderMap(widthPx: number): TemplateResult {
    const placed = placeGroups(this.whole.groups, this.links);
    const most = Math.max(1, ...columns.map((column) => placed[column].length));
    const heightPx = topPx + most * (boxPx + gapPx);
    const widePx = Math.min(230, widthPx * 0.285);
    const left = { head: 1, between: (widthPx - widePx) / 2, shaft: widthPx - widePx - 1 };
    const rows = new Map(
      columns.flatMap((column) => {
        const step = (heightPx - topPx) / Math.max(1, placed[column].length);
        return placed[column].map(
          ({ group, row }) => [group.key, { column, middlePx: topPx + step * (row + 0.5) }] as const,
        );
      }),
    );
    const frame = { left, widePx, rows };
    const behind = this.links.toSorted(
      (one, other) => verdictOrder.indexOf(other.verdict) - verdictOrder.indexOf(one.verdict),
    );
    return html`<svg viewBox="0 0 ${widthPx} ${heightPx}" role="img" aria-label=${this.#sentence()}>
      ${columns.map((column) => svg`<text class="soft" x=${left[column] + widePx / 2} y="12" text-anchor="middle">${columnWords[column]}</text>`)}
      ${behind.map((link) => this.#link(link, frame))}
      ${columns.flatMap((column) => placed[column].map((one) => this.#box(one, frame)))}
    </svg>`;
  }

  #link({ from, to, verdict, isJoined }: Link, { left, widePx, rows }: Frame): TemplateResult | string {
    const [start, end] = [rows.get(from), rows.get(to)];
    if (!start || !end) return "";
    const source: [number, number] = [left[start.column] + widePx, start.middlePx];
    const target: [number, number] = [left[end.column], end.middlePx];
    const path = linkHorizontal()({ source, target }) ?? "";
    const [middleX, middleY] = [(source[0] + target[0]) / 2, (source[1] + target[1]) / 2];
    return svg`<path class="link ${verdict}" d=${path} />
      ${verdict === "does-not-fit" ? cross(middleX, middleY) : ""}
      ${isJoined ? svg`<circle class="joined" cx=${middleX} cy=${middleY} r="4" />` : ""}`;
  }

  #box({ group }: PlacedGroup, { left, widePx, rows }: Frame): TemplateResult | string {
    const place = rows.get(group.key);
    if (!place) return "";
    const x = left[group.column];
    const y = place.middlePx - boxPx / 2;
    const [first, second] = group.lines;
    const count = group.parts.length > 1 ? `×${group.parts.length}` : "";
    const room = Math.floor((widePx - 10) / letterPx);
    return svg`<g class="group ${group.key === this.chosen ? "chosen" : ""}" @click=${() => this.#choose(group.key)}>
      <rect class="box" x=${x} y=${y} width=${widePx} height=${boxPx} rx="3" />
      <text x=${x + 6} y=${y + 16}>${shortened(first, room)}</text>
      <text class="soft" x=${x + 6} y=${y + 32}>${shortened(second, room - (count ? count.length + 1 : 0))}</text>
      <text class="strong" x=${x + widePx - 5} y=${y + 32} text-anchor="end">${count}</text>
    </g>`;
  }

  /** The picture is only a quicker way to what the list above it does. */
  #choose(key: string): void {
    this.dispatchEvent(new CustomEvent("choose", { detail: key }));
  }

  #sentence(): string {
    const count = (verdict: Verdict) => this.links.filter((link) => link.verdict === verdict).length;
    const kinds = (column: Column) =>
      this.whole.groups.filter((group) => group.column === column && group.parts.length > 0).length;
    const verdicts = verdictOrder
      .filter((verdict) => count(verdict) > 0)
      .map((verdict) => `${count(verdict)} ${verdictWords[verdict].toLowerCase()}`);
    return `What goes with what: ${countText(kinds("head"), "kind")} of head on the left, ${countText(kinds("between"), "kind")} of adapter in the middle, ${countText(kinds("shaft"), "kind")} of shaft on the right. Lines between them by the best club that goes along each: ${verdicts.join(", ")}.`;
  }
}

function cross(x: number, y: number): TemplateResult {
  return svg`<path class="cross" d="M${x - 3} ${y - 3}l6 6m0 -6l-6 6" />`;
}

const shortened = (text: string, most: number) =>
  text.length > most ? `${text.slice(0, Math.max(1, most - 1))}…` : text;

customElements.define("ferrule-together-drawing", TogetherDrawing);
