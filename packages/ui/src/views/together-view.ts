import type { Resolution } from "@ferrule/core";
import { css, html, LitElement, type TemplateResult } from "lit";
import { guard } from "lit/directives/guard.js";
import { afterPaint } from "../after-paint.ts";
import { api, type Bench } from "../api.ts";
import { settingsTableStyles } from "../components/settings-table.ts";
import { emptyNote, whenReady } from "../components/state-notes.ts";
import "../components/verdict-mark.ts";
import type { PartKindGroup } from "../drawings/part-kinds.ts";
import "../drawings/together-drawing.ts";
import { mostRows } from "../drawings/together-layout.ts";
import { linksOfWays, type Together, throughKind, together, type Way } from "../drawings/together-links.ts";
import { Fetched } from "../fetched.ts";
import { countText } from "../format/number.ts";
import { hrefs } from "../route.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";

const mostTableRows = 60;

/** What of the bench goes with what, as a picture and as a table. */
export class TogetherView extends LitElement {
  static override properties = { chosen: { state: true }, listed: { state: true } };
  static override styles = [
    baseStyles,
    formStyles,
    settingsTableStyles,
    css`
      .stacked td {
        font-family: var(--sans);
        white-space: normal;
      }
      .kinds {
        margin: 0;
        padding-left: 1.1rem;
      }
      .kinds li {
        padding: 0.2rem 0;
        overflow-wrap: anywhere;
      }
    `,
  ];
  declare private chosen: string | undefined;
  /** The kind whose lines the table has: the picture changes first. */
  declare private listed: string | undefined;
  readonly #all = new Fetched(this, async () => {
    const [bench, answer] = await Promise.all([api.bench(), api.resolve()]);
    return {
      bench,
      answer,
      whole: together(bench.parts, bench.joints, [...answer.clubs, ...answer.nearMisses]),
    };
  });

  override render() {
    return html`<div class="stack" @ferrule-retry=${() => this.#all.again()}>
      <h1 tabindex="-1">What goes with what</h1>
      ${whenReady(this.#all.state, "the answers", ({ bench, answer, whole }) => (whole.ways.length > 0 ? this.renderAll(bench, answer, whole) : this.renderEmpty()))}
    </div>`;
  }

  private renderAll(bench: Bench, answer: Resolution, whole: Together): TemplateResult {
    const ways = throughKind(whole, this.chosen);
    const drawn = this.chosen === undefined ? ways.filter(({ verdict }) => verdict !== "does-not-fit") : ways;
    return html`
      <p class="soft">Parts that join alike share a box. A line is the best club that goes along it; choose a kind to see its lines alone, and what it does not go with.</p>
      <section class="ticket stack" aria-label="Picture">
        ${this.renderChoice(whole)}
        <ferrule-together-drawing .whole=${whole} .links=${linksOfWays(whole, drawn)} .chosen=${this.chosen} @choose=${(event: CustomEvent<string>) => this.#choose(event.detail)}></ferrule-together-drawing>
        ${this.renderLeftOut(answer, whole)}
      </section>
      <section class="ticket" aria-labelledby="table"><h2 id="table">The same as a table</h2>${guard([whole, this.listed], () => this.renderTable(throughKind(whole, this.listed)))}</section>
      <section class="ticket" aria-labelledby="kinds"><h2 id="kinds">The kinds and their parts</h2>
        ${guard([whole], () => html`<ul class="kinds">${whole.groups.filter(({ parts }) => parts.length > 0).map((group) => this.renderKind(group))}</ul>`)}
        ${bench.parts.length === 0 ? "" : html`<p class="small soft">Sizes are rounded to five thousandths of an inch, so that what is read a little apart stands together.</p>`}
      </section>`;
  }

  private renderChoice({ groups, ways }: Together): TemplateResult {
    const linked = new Set(ways.flatMap(({ head, between, shaft }) => [head.key, between.key, shaft.key]));
    const choices = groups.filter(({ key }) => linked.has(key));
    return html`<div><label for="kind">Show</label>
      <select id="kind" @change=${(event: Event) => this.#choose((event.target as HTMLSelectElement).value || undefined)}>
        <option value="" ?selected=${this.chosen === undefined}>Everything that goes together</option>
        ${choices.map(({ key, title }) => html`<option value=${key} ?selected=${key === this.chosen}>${capital(title)}</option>`)}
      </select></div>`;
  }

  private renderLeftOut(
    { clubs, nearMisses, counts }: Resolution,
    { groups }: Together,
  ): TemplateResult | string {
    const isCut = clubs.length < counts.clubs || nearMisses.length < counts.nearMisses;
    const isTall = (["head", "between", "shaft"] as const).some(
      (column) => groups.filter((group) => group.column === column).length > mostRows,
    );
    if (!isCut && !isTall) return "";
    return html`<p class="small">
      ${isCut ? `Drawn from the first ${countText(clubs.length, "club")} of ${counts.clubs.toLocaleString("en-GB")} and ${countText(nearMisses.length, "refusal")} of ${counts.nearMisses.toLocaleString("en-GB")}.` : ""}
      ${isTall ? `A column shows the ${mostRows} kinds with most lines; the table has more.` : ""}</p>`;
  }

  private renderTable(ways: readonly Way[]): TemplateResult {
    const shown = ways.slice(0, mostTableRows);
    return html`<table class="stacked" role="table">
        <thead role="rowgroup"><tr role="row">${["Head", "Joined by", "Shaft", "At best", "How many"].map((word) => html`<th scope="col" role="columnheader">${word}</th>`)}</tr></thead>
        <tbody role="rowgroup">${shown.map(
          ({ head, between, shaft, verdict, count }) => html`<tr role="row">
            <th scope="row" role="rowheader">${head.title}</th>
            <td role="cell" data-label="Joined by">${between.title}</td>
            <td role="cell" data-label="Shaft">${shaft.title}</td>
            <td role="cell" data-label="At best"><ferrule-verdict class="small" .verdict=${verdict}></ferrule-verdict></td>
            <td role="cell" data-label="How many">${verdict === "does-not-fit" ? countText(count, "pair") : countText(count, "club")}</td>
          </tr>`,
        )}</tbody>
      </table>
      ${ways.length > mostTableRows ? html`<p class="small soft">The first ${mostTableRows} of ${ways.length.toLocaleString("en-GB")}; choose a kind above to see the rest of it.</p>` : ""}`;
  }

  private renderKind({ title, parts }: PartKindGroup): TemplateResult {
    return html`<li>${capital(title)}: ${parts.map((id, at) => html`${at > 0 ? ", " : ""}<a class="mono" href=${hrefs.part(id)}>${id}</a>`)}</li>`;
  }

  private renderEmpty(): TemplateResult {
    return emptyNote(
      "Nothing to join yet",
      "With a head, a shaft and a grip on the bench there is something to draw.",
      html`<a class="button main" href="/add">Add a part</a>`,
    );
  }

  #choose(key: string | undefined): void {
    afterPaint(() => {
      this.chosen = key === this.chosen ? undefined : key;
      afterPaint(() => {
        this.listed = this.chosen;
      });
    });
  }
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

customElements.define("ferrule-together-view", TogetherView);
