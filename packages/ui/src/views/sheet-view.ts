import type { Build, BuildSheet } from "@ferrule/core";
import { html, LitElement, type TemplateResult } from "lit";
import { api } from "../api.ts";
import "../components/measured-form.ts";
import { sheetSteps, sheetStepsStyles } from "../components/sheet-steps.ts";
import { whenReady } from "../components/state-notes.ts";
import "../components/verdict-mark.ts";
import type { DisplaySettings } from "../display-settings.ts";
import { type News, tell } from "../events.ts";
import { Fetched } from "../fetched.ts";
import { minutesText } from "../format/duration.ts";
import { diameterText } from "../format/length.ts";
import { countText, numberText } from "../format/number.ts";
import { quantityChangeText, quantitySpanText, quantityText, workshopText } from "../format/quantity.ts";
import { mmFromIn } from "../format/units.ts";
import { isJoined } from "../is-joined.ts";
import { hrefs } from "../route.ts";
import { type Compared, sheetApi } from "../sheet-api.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { quantityWords, sheetDimensionWords, sheetSourceWords } from "../words/sheet-words.ts";
import { skillWords } from "../words/skill-words.ts";
import { sheetStyles } from "./sheet-styles.ts";

/** Everything to take to the bench for one club, on one page; and what was read off it once it is finished. */
export class SheetView extends LitElement {
  static override properties = { display: {}, headId: {}, clubId: {}, choices: {} };
  static override styles = [baseStyles, sheetStepsStyles, sheetStyles];
  declare display: DisplaySettings;
  declare headId: string;
  declare clubId: string;
  declare choices: Build;
  readonly #all = new Fetched(this, () =>
    Promise.all([sheetApi.sheet(this.clubId, this.choices), api.bench()]),
  );

  override render() {
    return html`<div class="stack" @ferrule-retry=${() => this.#all.again()} @ferrule-measured=${this.#measured}>
      ${whenReady(this.#all.state, "the sheet", ([{ sheet, measured }, bench]) => {
        const stands =
          isJoined(bench.joints, sheet.parts.find(({ role }) => role === "shaft")?.id ?? "", "gripped") &&
          !sheet.steps.some(({ step }) => ["screw-in", "bond-tip", "grip-on"].includes(step));
        return this.renderSheet(sheet, measured, stands);
      })}
      ${this.#all.state.is === "failed" && this.#all.state.code === "unsafe" ? this.renderStopped() : ""}
    </div>`;
  }

  protected override updated(): void {
    const columns = this.renderRoot.querySelector(".columns");
    if (columns) this.style.setProperty("--print-size", `${printSizePt(columns.textContent ?? "")}pt`);
  }

  private renderSheet(sheet: BuildSheet, measured: readonly Compared[], stands: boolean): TemplateResult {
    return html`<div class="row between">
        <div><h1 tabindex="-1">Build sheet: ${sheet.title}</h1><p class="mono soft">${sheet.club}</p></div>
        <div class="row screen">
          <button class="main" @click=${() => window.print()}>Print it, one page</button>
          <button @click=${this.#typeMeasured}>It is built: type what it measures</button>
          <a class="button" href=${hrefs.club({ head: this.headId, id: this.clubId })}>The club</a>
          ${measured.length === 0 ? this.renderDescribe(sheet) : ""}
        </div>
      </div>
      <p><ferrule-verdict .verdict=${sheet.verdict}></ferrule-verdict> ${minutesText(sheet.minutes)} of work, ${skillWords[sheet.skill].toLowerCase()}.
        ${sheet.cureMinutes > 0 ? html`<strong>Longest wait: ${minutesText(sheet.cureMinutes)}. Nobody swings it before.</strong>` : ""}
        <span class="paper">Date <span class="line"></span> Built by <span class="line"></span></span></p>
      <div class="stack columns">
        ${this.renderParts(sheet)}${this.renderDimensions(sheet)}
        <section class="ticket" aria-labelledby="steps"><h2 id="steps">Steps in order</h2>${sheetSteps(sheet.steps)}
          <p class="small soft">Where a step is new to you, have somebody practised do it. Local rules and the makers' own instructions come first.</p></section>
        ${this.renderBlanks(sheet)}
      </div>
      <section class="ticket stack screen" aria-labelledby="measured"><h2 id="measured" tabindex="-1">Measured</h2>
        ${measured.length > 0 ? html`<div class="row"><a class="button main" href=${hrefs.sell(sheet.parts.map(({ id }) => id))}>It is sold</a>${this.renderDescribe(sheet)}</div>` : ""}
        ${measured.map((one) => this.renderCompared(one))}
        <ferrule-measured-form .sheet=${sheet} .lengthUnit=${this.display.lengthUnit} .isJoined=${stands}></ferrule-measured-form>
      </section>`;
  }

  private renderDescribe({ parts }: BuildSheet): TemplateResult {
    return html`<a class="button" href=${hrefs.advert(parts.map(({ id }) => id))}>Describe it for sale</a>`;
  }

  private renderParts(sheet: BuildSheet): TemplateResult {
    return html`<section class="ticket" aria-labelledby="parts"><h2 id="parts">Parts, and what to look at first</h2>
      ${sheet.parts.map(
        ({ id, title, checks }) => html`<p><strong>${title}</strong> <span class="mono soft">${id}</span>
          <a class="screen small" href=${hrefs.inspect(id)}>Look it over</a></p>
        <ul class="checks">${checks.map(
          ({ question, state }) =>
            html`<li class=${state}><span class="tickbox" aria-hidden="true"></span>${question}${
              state === "found"
                ? " Found."
                : state === "not-there"
                  ? html` <span class="soft">Said to be not so.</span>`
                  : ""
            }</li>`,
        )}</ul>`,
      )}</section>`;
  }

  private renderDimensions({ dimensions }: BuildSheet): TemplateResult {
    return html`<section class="ticket" aria-labelledby="figures"><h2 id="figures">Figures to work to</h2>
      <table><thead><tr><th scope="col">What</th><th scope="col">Inches · millimetres</th><th scope="col">Where from</th></tr></thead>
      <tbody>${dimensions.map(
        ({
          name,
          valueIn,
          workshop,
          plusMinusIn,
          source,
        }) => html`<tr><th scope="row">${sheetDimensionWords[name]}</th>
          <td class="figure">${workshop ? workshopText(workshop) : diameterText(valueIn, "cm")}</td>
          <td class="small">${sheetSourceWords[source]}${plusMinusIn ? ` ±${numberText(plusMinusIn, 2)} in (${numberText(mmFromIn(plusMinusIn), 0)} mm)` : ""}</td></tr>`,
      )}</tbody></table>
      <p class="small soft">Lengths to the nearest 1/32 in and 0.5 mm. Measure again with the head seated before any cut.</p></section>`;
  }

  private renderBlanks({ blanks, parts }: BuildSheet): TemplateResult {
    const { lengthUnit } = this.display;
    return html`<section class="ticket blanks" aria-labelledby="blanks"><h2 id="blanks">When it is finished</h2>
      <table><thead><tr><th scope="col">Figure</th><th scope="col">Estimate, 95 in 100</th><th scope="col"><span class="paper">Read</span><span class="screen">What this bench expects</span></th></tr></thead>
      <tbody>${blanks.map(
        ({ quantity, estimate, experience }) => html`<tr><th scope="row">${quantityWords[quantity]}</th>
          <td>${estimate ? quantitySpanText(quantity, estimate, lengthUnit) : "not known"}${
            experience
              ? html`<span class="paper"> This bench: ${quantitySpanText(quantity, experience.expected, lengthUnit)}, by ${countText(experience.clubsOfAll, "club")}</span>`
              : ""
          }</td>
          <td><span class="paper line"></span><span class="screen">${
            experience
              ? html`${quantitySpanText(quantity, experience.expected, lengthUnit)}<br /><span class="small soft">${experienceText(quantity, experience, lengthUnit)}</span>`
              : html`<span class="soft">No club measured yet</span>`
          }</span></td></tr>`,
      )}</tbody></table>
      <p class="small soft screen">The estimate itself is not changed: what the bench expects stands beside it. ${parts.length} parts.</p></section>`;
  }

  private renderCompared({ measurement, comparisons }: Compared): TemplateResult {
    const { lengthUnit } = this.display;
    return html`<div><h3>On ${measurement.on}${measurement.by ? `, by ${measurement.by}` : ""}</h3>
      <table><thead><tr><th scope="col">Figure</th><th scope="col">Measured</th><th scope="col">Estimated</th><th scope="col">Difference</th></tr></thead>
      <tbody>${comparisons.map(
        ({ quantity, measured, estimated, difference, isSurprising }) => html`<tr>
          <th scope="row">${quantityWords[quantity]}</th>
          <td class="figure">${quantityText(quantity, measured.value, lengthUnit)}</td>
          <td>${estimated ? quantityText(quantity, estimated.value, lengthUnit) : "–"}</td>
          <td>${difference === null ? "–" : quantityChangeText(quantity, difference, lengthUnit)}${
            isSurprising
              ? html`<br /><strong>More than it should be: measure again, or see which part is not as it was said.</strong>`
              : ""
          }</td></tr>`,
      )}</tbody></table>
      ${measurement.note ? html`<p class="small">${measurement.note}</p>` : ""}</div>`;
  }

  private renderStopped(): TemplateResult {
    const ids = this.clubId.split("+").filter((id) => id !== "-");
    return html`<section class="ticket stack" aria-labelledby="stopped"><h2 id="stopped">Stopped for safety</h2>
      <p>Look the parts over, or have the fault cleared by a person with a note.</p>
      <div class="row">${ids.map((id) => html`<a class="button" href=${hrefs.inspect(id)}>Look over ${id}</a>`)}</div></section>`;
  }

  readonly #measured = async (event: CustomEvent<News["ferrule-measured"]>): Promise<void> => {
    const { joints } = event.detail;
    const text = `Kept what was measured.${joints.length > 0 ? " The club's joints are made on the bench." : ""}`;
    tell(this, "ferrule-done", { text, undoable: true, undone: "What was measured is taken back." });
    await this.#all.again();
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>("#measured")?.focus();
  };

  readonly #typeMeasured = (): void => {
    this.renderRoot.querySelector<HTMLElement>("ferrule-measured-form")?.focus();
  };
}

type Known = NonNullable<BuildSheet["blanks"][number]["experience"]>;

function experienceText(
  quantity: BuildSheet["blanks"][number]["quantity"],
  { bias, clubs, clubsOfAll }: Known,
  unit: DisplaySettings["lengthUnit"],
): string {
  const change = quantityChangeText(quantity, bias.value, unit);
  return `${change} against the estimate, drawn towards nothing while clubs are few: ${countText(clubs, "club")} of this type, ${clubsOfAll} in all`;
}

/** So many characters fill two columns of A4 in type of 6.1 points, told by printing the sheet with the most work in the demo. */
const fullPage = { characters: 7850, sizePt: 6.1 };

/** The type gets smaller with what there is to say, so that it stays one page. */
function printSizePt(text: string): number {
  const { length } = text.replace(/\s+/g, " ");
  const fitting = fullPage.sizePt * Math.sqrt(fullPage.characters / Math.max(1, length));
  return Math.round(10 * Math.min(7.5, Math.max(4.5, fitting))) / 10;
}

customElements.define("ferrule-sheet-view", SheetView);
