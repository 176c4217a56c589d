import type { InspectionAnswer, InspectionRow } from "@ferrule/core";
import { html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import "../components/clear-form.ts";
import { sentence } from "../components/sentence.ts";
import { whenReady } from "../components/state-notes.ts";
import { type News, tell } from "../events.ts";
import { Fetched, failed } from "../fetched.ts";
import { keepInTab, readFromTab } from "../form/kept-in-tab.ts";
import { countText } from "../format/number.ts";
import { hrefs } from "../route.ts";
import { type InspectionReply, sheetApi } from "../sheet-api.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { partTitle } from "../words/part-title.ts";
import { faultWords } from "../words/part-words.ts";
import { inspectionStyles } from "./inspection-styles.ts";

const answerWords = { yes: "Yes", no: "No", unsure: "I cannot tell" } as const;
type Answer = keyof typeof answerWords;

/** An inspection that is not written down yet, kept in the tab so that a reload or another page loses nothing. */
interface Unfinished {
  readonly at: number;
  readonly answers: readonly (readonly [row: string, answer: Answer])[];
  readonly by: string;
  readonly note: string;
}

/** Looking over one part, a question at a time, and what that came to. */
export class InspectionView extends LitElement {
  static override properties = {
    partId: {},
    at: { state: true },
    answers: { state: true },
    by: { state: true },
    note: { state: true },
    isGoneOn: { state: true },
    trouble: { state: true },
    busy: { state: true },
    isDone: { state: true },
  };
  static override styles = [baseStyles, formStyles, inspectionStyles];
  declare partId: string;
  /** Which question; past the last one is what it came to. */
  declare private at: number;
  declare private answers: ReadonlyMap<string, Answer>;
  declare private by: string;
  declare private note: string;
  /** Whether it goes on with what was kept. */
  declare private isGoneOn: boolean;
  declare private trouble: string | undefined;
  declare private busy: boolean;
  declare private isDone: boolean;
  readonly #reply = new Fetched(this, () => sheetApi.inspection(this.partId));

  constructor() {
    super();
    this.at = 0;
    this.answers = new Map();
    this.by = "";
    this.note = "";
    this.isGoneOn = false;
    this.busy = false;
    this.isDone = false;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has("partId")) return;
    const kept = readFromTab<Unfinished>(this.#keptName());
    this.isGoneOn = kept !== undefined;
    this.at = kept?.at ?? 0;
    this.answers = new Map(kept?.answers);
    this.by = kept?.by ?? "";
    this.note = kept?.note ?? "";
  }

  override render() {
    const { state } = this.#reply;
    const title = state.is === "ready" ? partTitle(state.value.part) : this.partId;
    return html`<div class="stack" @ferrule-retry=${() => this.#reply.again()} @ferrule-cleared=${this.#cleared}>
      <h1 tabindex="-1">Look over: ${title}</h1>
      <p class="mono soft">${this.partId} · <a href=${hrefs.part(this.partId)}>the part</a></p>
      ${whenReady(state, "what to look at", (reply) => html`${this.renderStops(reply)}${this.renderMiddle(reply)}${this.renderPast(reply)}`)}
    </div>`;
  }

  private renderMiddle(reply: InspectionReply): TemplateResult {
    const row = reply.rows[this.at];
    if (this.isDone) return this.renderDone();
    return html`${this.renderGoneOn()}${row ? this.renderQuestion(row, reply.rows.length) : this.renderSummary(reply)}`;
  }

  private renderGoneOn(): TemplateResult | string {
    if (!this.isGoneOn) return "";
    return html`<p class="row" role="status"><span>Begun before and not written down: ${countText(this.answers.size, "answer")} kept.</span> <button @click=${this.#anew}>Begin again</button></p>`;
  }

  private renderQuestion(row: InspectionRow, count: number): TemplateResult {
    const given = this.answers.get(row.id);
    return html`<section class="ticket stack" aria-labelledby="question">
      <p class="small soft" id="where">Question ${this.at + 1} of ${count}</p>
      <progress max=${count} value=${this.at} aria-labelledby="where"></progress>
      <h2 id="question" class="question" tabindex="-1">${row.question}</h2>
      <p><strong>How:</strong> ${row.look}</p>
      <div class="answers" role="group" aria-labelledby="question">
        ${(["yes", "no", "unsure"] as const).map(
          (answer) =>
            html`<button class=${answer} aria-pressed=${given === answer ? "true" : "false"} @click=${() => this.#answer(row, answer)}>${answerWords[answer]}</button>`,
        )}
      </div>
      <details><summary>What it means, and where that is from</summary>
        <p>${row.meaning}</p>
        ${row.limits ? html`<p><strong>What it cannot show:</strong> ${row.limits}</p>` : ""}
        <p class="small soft">Source: ${row.source}.</p>
      </details>
      ${this.at > 0 ? html`<button class="back" @click=${() => this.#go(this.at - 1)}>← Back</button>` : ""}
    </section>`;
  }

  private renderSummary({ rows }: InspectionReply): TemplateResult {
    const said = (answer: Answer) => rows.filter(({ id }) => this.answers.get(id) === answer);
    const list = (words: string, found: readonly InspectionRow[]) =>
      found.length === 0
        ? ""
        : html`<h3>${words}: ${found.length}</h3><ul>${found.map((row) => html`<li>${row.question} <button class="small" @click=${() => this.#go(rows.indexOf(row))}>Change<span hidden> ${row.question}</span></button></li>`)}</ul>`;
    return html`<section class="ticket stack" aria-labelledby="question">
      <h2 id="question" tabindex="-1">What you found</h2>
      ${list("Yes", said("yes"))}${list("No", said("no"))}${list("Cannot tell", said("unsure"))}
      <div class="grid">
        <div><label for="by">Who looked (may be left empty)</label><input id="by" autocomplete="name" maxlength="200" .value=${this.by} @input=${this.#typed} /></div>
        <div><label for="note">Note (may be left empty)</label><input id="note" maxlength="2000" autocomplete="off" .value=${this.note} @input=${this.#typed} /></div>
      </div>
      ${this.trouble ? html`<p class="refusal" role="alert">✕ ${this.trouble}</p>` : ""}
      <div class="row">
        <button class="back" @click=${() => this.#go(rows.length - 1)}>← Back</button>
        <button class="main" ?disabled=${this.busy || this.answers.size === 0} @click=${this.#send}>Write it down</button>
      </div>
    </section>`;
  }

  private renderDone(): TemplateResult {
    return html`<section class="ticket stack" aria-labelledby="question">
      <h2 id="question" tabindex="-1">Written down</h2>
      <p>No look and no tap shows everything: damage inside a composite can leave no mark. Where you doubt, do not use the part.</p>
      <div class="row"><a class="button main" href=${hrefs.part(this.partId)}>To the part</a><button @click=${this.#anew}>Look it over again</button></div>
    </section>`;
  }

  private renderStops({ stops }: InspectionReply): TemplateResult | string {
    if (stops.length === 0) return "";
    return html`<section class="ticket stop stack" aria-labelledby="stopped"><h2 id="stopped">Stopped for safety</h2>
      <p>Nothing with this part is built, described or sold as a club until a person clears this with a note.</p>
      ${stops.map(
        ({ fault, canBePutRight }) => html`<details><summary>${faultWords[fault]}: clear it</summary>
        <ferrule-clear-form .partId=${this.partId} .fault=${fault} ?canBePutRight=${canBePutRight}></ferrule-clear-form></details>`,
      )}</section>`;
  }

  private renderPast({ inspections, clearances }: InspectionReply): TemplateResult | string {
    if (inspections.length + clearances.length === 0) return "";
    return html`<section class="ticket" aria-labelledby="past"><h2 id="past">Before</h2><ul>
      ${clearances.map(({ on, by, fault, because, note }) => html`<li>${on}: ${faultWords[fault]} cleared by ${by}, ${because === "put-right" ? "put right" : "not there"}. ${sentence(note)}</li>`)}
      ${inspections.map(
        ({ on, by, asserted, denied, note }) =>
          html`<li>${on}: looked over${by ? ` by ${by}` : ""}. ${
            asserted.length > 0
              ? `Found: ${asserted.map((fault) => faultWords[fault].toLowerCase()).join(", ")}.`
              : "Nothing found."
          } ${denied.length > 0 ? `Not there: ${denied.map((fault) => faultWords[fault].toLowerCase()).join(", ")}.` : ""} ${note ? sentence(note) : ""}</li>`,
      )}
    </ul></section>`;
  }

  #answer({ id }: InspectionRow, answer: Answer): void {
    this.answers = new Map([...this.answers, [id, answer]]);
    this.#go(this.at + 1);
  }

  #go(at: number): void {
    this.at = at;
    this.#keep();
    void this.#focus();
  }

  readonly #typed = ({ target }: Event): void => {
    const { id, value } = target as HTMLInputElement;
    if (id === "by") this.by = value;
    else this.note = value;
    this.#keep();
  };

  #keptName(): string {
    return `inspection.${this.partId}`;
  }

  #keep(): void {
    const { at, answers, by, note } = this;
    const unfinished: Unfinished = { at, answers: [...answers], by, note };
    keepInTab(this.#keptName(), answers.size > 0 ? unfinished : undefined);
  }

  #forget(): void {
    this.answers = new Map();
    this.by = "";
    this.note = "";
    this.isGoneOn = false;
    keepInTab(this.#keptName(), undefined);
  }

  async #focus(): Promise<void> {
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>("#question")?.focus({ preventScroll: true });
    window.scrollTo(0, 0);
  }

  readonly #anew = (): void => {
    this.#forget();
    this.isDone = false;
    this.#go(0);
  };

  readonly #send = async (): Promise<void> => {
    this.busy = true;
    const [by, note] = [this.by.trim(), this.note.trim()];
    const answers = [...this.answers].map(([row, answer]): InspectionAnswer => ({ row, answer }));
    const request = { part: this.partId, answers, ...(by ? { by } : {}), ...(note ? { note } : {}) };
    this.trouble = await sheetApi.inspect(request).then(
      ({ inspection, toClear }) => {
        const found = countText(inspection.asserted.length, "fault");
        const still =
          toClear.length > 0 ? " What was said for safety before stands until it is cleared." : "";
        tell(this, "ferrule-done", {
          text: `Written down: ${found} found.${still}`,
          undoable: true,
          undone: "The inspection is taken back.",
        });
        this.#forget();
        this.isDone = true;
        return undefined;
      },
      (error: unknown) => `${failed(error).message}.`,
    );
    this.busy = false;
    await this.#reply.again();
    await this.#focus();
  };

  readonly #cleared = async (event: CustomEvent<News["ferrule-cleared"]>): Promise<void> => {
    tell(this, "ferrule-done", {
      text: `Cleared: ${faultWords[event.detail.fault].toLowerCase()}.`,
      undoable: true,
      undone: "The clearing is taken back: the fault stands again.",
    });
    await this.#reply.again();
  };
}

customElements.define("ferrule-inspection-view", InspectionView);
