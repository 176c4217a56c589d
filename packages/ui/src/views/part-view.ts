import type { Part } from "@ferrule/core";
import { css, html, LitElement, type TemplateResult } from "lit";
import { api, type Bench, type GoesWith } from "../api.ts";
import { type BenchContext, contextOf } from "../bench-context.ts";
import { clubRow, clubRowStyles, nearMissRow } from "../components/club-row.ts";
import "../components/joint-editor.ts";
import { questionList } from "../components/question-list.ts";
import { whenReady } from "../components/state-notes.ts";
import { wantList, wantListStyles } from "../components/want-list.ts";
import type { DisplaySettings } from "../display-settings.ts";
import { type News, tell } from "../events.ts";
import { Fetched, failed } from "../fetched.ts";
import { factValueText } from "../format/fact-value.ts";
import { moneyText } from "../format/money.ts";
import { countText } from "../format/number.ts";
import { benchTables } from "../live/bench-tables.ts";
import { hrefs } from "../route.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { fieldText } from "../words/field-words.ts";
import { kindText, partTitle } from "../words/part-title.ts";
import { faultWords } from "../words/part-words.ts";
import { skillWords } from "../words/skill-words.ts";
import { verdictOrder } from "../words/verdict-words.ts";
import { partEntries } from "./part-entries.ts";

const mostRows = 20;

/** One part: what it is, and what it goes with. */
export class PartView extends LitElement {
  static override properties = { display: {}, partId: {}, trouble: { state: true } };
  static override styles = [
    baseStyles,
    clubRowStyles,
    wantListStyles,
    css`
      .facts {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(12rem, 100%), 1fr));
        gap: 0.5rem 1.25rem;
      }
    `,
  ];
  declare display: DisplaySettings;
  declare partId: string;
  declare private trouble: string | undefined;
  readonly #bench = new Fetched(this, api.bench, benchTables);
  readonly #answer = new Fetched(this, () => api.goesWith(this.partId), benchTables);

  override render() {
    const { state } = this.#bench;
    const part = state.is === "ready" ? state.value.parts.find(({ id }) => id === this.partId) : undefined;
    return html`<div class="stack" @ferrule-retry=${this.#again}>
      <div class="row between">
        <div>
          <h1 tabindex="-1">${part ? partTitle(part) : this.partId}</h1>
          <p class="mono soft">${this.partId}${part ? html` · ${kindText(part)}` : ""}</p>
        </div>
        ${part ? this.renderActions(part) : ""}
      </div>
      ${this.trouble ? html`<p class="ticket" role="alert">${this.trouble}</p>` : ""}
      ${part && part.soldOn === undefined ? this.renderBest() : ""}
      ${whenReady(state, "the part", (bench) => (part ? this.renderPart(part, bench) : html``))}
      ${whenReady(this.#answer.state, "what it goes with", (answer) => this.renderAnswer(answer))}
    </div>`;
  }

  private renderActions(part: Part) {
    return html`<div class="row">
      ${part.soldOn === undefined ? html`<a class="button" href=${hrefs.inspect(part.id)}>Look it over</a><a class="button" href=${hrefs.advert([part.id])}>Describe</a><a class="button" href=${hrefs.sell([part.id])}>Sell</a><a class="button" href=${hrefs.labels([part.id])}>Label</a>` : ""}
      <a class="button" href=${hrefs.editPart(part.id)}>Change</a>
      <a class="button" href=${hrefs.history("parts", part.id)}>What changed here</a>
      <button @click=${() => this.#delete(part)}>Delete</button>
    </div>`;
  }

  /** The way on: one press to the club that comes first. */
  private renderBest(): TemplateResult | string {
    if (this.#answer.state.is !== "ready" || this.#bench.state.is !== "ready") return "";
    const { clubs } = this.#answer.state.value;
    const best = verdictOrder.flatMap((verdict) => clubs.filter((club) => club.verdict === verdict))[0];
    if (!best) return "";
    return html`<section class="ticket" aria-labelledby="best">
      <h2 id="best">The first club with it</h2>
      <ferrule-verdict .verdict=${best.verdict}></ferrule-verdict>
      ${clubRow(best, contextOf(this.#bench.state.value, this.display.lengthUnit))}
    </section>`;
  }

  private renderPart(part: Part, bench: Bench): TemplateResult {
    return html`<section class="ticket stack" aria-labelledby="what">
      <h2 id="what">What it is</h2>
      <dl class="facts">
        ${partEntries(part).map(([field, value]) => html`<div><dt>${fieldText(field)}</dt><dd>${this.valueText(field, value)}</dd></div>`)}
      </dl>
      <p><strong>Faults:</strong> ${part.faults?.map((fault) => faultWords[fault]).join(", ") || "none named"}${
        part.deniedFaults?.length
          ? html`. Looked for and not there: ${part.deniedFaults.map((fault) => faultWords[fault]).join(", ")}`
          : ""
      }.</p>
      ${part.note ? html`<p><strong>Note:</strong> ${part.note}</p>` : ""}
      <ferrule-joint-editor
        .member=${part}
        .context=${contextOf(bench, this.display.lengthUnit)}
        @ferrule-join=${(event: CustomEvent<News["ferrule-join"]>) => this.#change(() => api.addJoint(event.detail), "Joined.")}
        @ferrule-unjoin=${(event: CustomEvent<News["ferrule-unjoin"]>) =>
          this.#change(
            () =>
              api.deleteJoint(
                event.detail.id,
                bench.joints.find(({ id }) => id === event.detail.id),
              ),
            "Taken apart.",
            true,
          )}
      ></ferrule-joint-editor>
    </section>`;
  }

  private valueText(field: string, value: unknown): string {
    const money = value as { amountMinor?: number; currency?: string } | null;
    if (money?.amountMinor !== undefined && money.currency)
      return moneyText(money.amountMinor, money.currency);
    if (field === "year") return String(value);
    return factValueText(field, value, this.display.lengthUnit);
  }

  private renderAnswer(answer: GoesWith): TemplateResult {
    if (this.#bench.state.is !== "ready") return html``;
    const context = contextOf(this.#bench.state.value, this.display.lengthUnit);
    const skill = this.#bench.state.value.goal.skill ?? "screw";
    return html`<section class="ticket stack" aria-labelledby="goes" aria-live="polite">
        <h2 id="goes">What does this go with?</h2>
        <p class="small soft">Skill allowed: ${skillWords[skill].toLowerCase()}. <a href="/">Choose another on the bench</a>.</p>
        ${answer.counts.clubs === 0 ? html`<p>No club with what is on the bench and the skill allowed.</p>` : this.renderClubs(answer, context)}
      </section>
      ${this.renderRefused(answer, context)}
      ${answer.wants.length > 0 ? html`<section class="ticket" aria-labelledby="wants"><h2 id="wants">What is missing for it</h2>${wantList(answer.wants.slice(0, mostRows), context)}</section>` : ""}
      ${answer.questions.length > 0 ? html`<section class="ticket stack" aria-labelledby="ask"><h2 id="ask">What to find out</h2>${questionList(answer.questions.slice(0, mostRows), context)}</section>` : ""}`;
  }

  private renderClubs({ clubs, counts }: GoesWith, context: BenchContext) {
    const groups = verdictOrder.map((verdict) => ({
      verdict,
      found: clubs.filter((club) => club.verdict === verdict),
    }));
    return html`${groups
      .filter(({ found }) => found.length > 0)
      .map(
        ({ verdict, found }) => html`<section>
        <h3 class="row"><ferrule-verdict .verdict=${verdict}></ferrule-verdict> <span class="mono">${found.length}</span></h3>
        <ul class="plain">${found.slice(0, mostRows).map((club) => html`<li>${clubRow(club, context)}</li>`)}</ul>
        ${found.length > mostRows ? html`<p class="small soft">The best ${mostRows} of ${found.length}.</p>` : ""}
      </section>`,
      )}
    ${counts.clubs > clubs.length ? html`<p class="small soft">${countText(counts.clubs, "club")} in all.</p>` : ""}`;
  }

  private renderRefused({ nearMisses, counts }: GoesWith, context: BenchContext) {
    if (nearMisses.length === 0) return "";
    return html`<section class="ticket" aria-labelledby="refused">
      <h2 id="refused">Does not fit: ${counts.nearMisses}</h2>
      <p class="small soft">Each with the reason that weighs most; open one for its proof.</p>
      <ul class="plain">${nearMisses.slice(0, mostRows).map((miss) => html`<li>${nearMissRow(miss, context)}</li>`)}</ul>
    </section>`;
  }

  readonly #again = () => {
    void this.#bench.again();
    void this.#answer.again();
  };

  async #change(work: () => Promise<unknown>, text: string, undoable = false): Promise<void> {
    this.trouble = await work().then(
      () => undefined,
      (error: unknown) => `${failed(error).message}.`,
    );
    if (!this.trouble) tell(this, "ferrule-done", { text, undoable });
    this.#again();
  }

  async #delete(part: Part): Promise<void> {
    await api.deletePart(part.id, part).then(
      () => {
        tell(this, "ferrule-done", { text: `${this.partId} is deleted.`, undoable: true });
        tell(this, "ferrule-go", { path: "/" });
      },
      (error: unknown) => (this.trouble = `${failed(error).message}.`),
    );
    if (this.trouble) this.#again();
  }
}

customElements.define("ferrule-part-view", PartView);
