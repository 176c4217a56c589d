import type { Club, Resolution, Skill, Verdict } from "@ferrule/core";
import { html, LitElement, type TemplateResult } from "lit";
import { api, type Bench } from "../api.ts";
import { type BenchContext, contextOf } from "../bench-context.ts";
import { clubRow, clubRowStyles, nearMissRow } from "../components/club-row.ts";
import "../components/part-list.ts";
import "../components/skill-choice.ts";
import { emptyNote, whenReady } from "../components/state-notes.ts";
import type { DisplaySettings } from "../display-settings.ts";
import { tell } from "../events.ts";
import { Fetched, failed } from "../fetched.ts";
import { countText } from "../format/number.ts";
import { benchTables } from "../live/bench-tables.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { twoColumns } from "../styles/two-columns.ts";
import { skillGerunds } from "../words/skill-words.ts";
import { verdictMeanings, verdictOrder, verdictWords } from "../words/verdict-words.ts";
import { benchStyles } from "./bench-styles.ts";
import { type VerdictCount, verdictCounts } from "./verdict-counts.ts";

const fewRows = 1;
const manyRows = 60;

/** The bench: what lies on it, and what comes of it. */
export class BenchView extends LitElement {
  static override properties = { display: {}, open: { state: true }, trouble: { state: true } };
  static override styles = [baseStyles, clubRowStyles, twoColumns, benchStyles];
  declare display: DisplaySettings;
  declare private open: Verdict | undefined;
  declare private trouble: string | undefined;
  readonly #bench = new Fetched(this, api.bench, benchTables);
  readonly #answer = new Fetched(this, api.resolve, benchTables);

  override render() {
    return html`<div class="stack" @ferrule-retry=${this.#again}>
      <h1 tabindex="-1">The bench</h1>
      ${this.trouble ? html`<p class="ticket" role="alert">${this.trouble}</p>` : ""}
      ${whenReady(this.#bench.state, "the bench", (bench) => this.renderBench(bench))}
    </div>`;
  }

  private renderBench(bench: Bench) {
    const context = contextOf(bench, this.display.lengthUnit);
    return html`
      ${bench.example ? this.renderExampleBanner() : ""}
      ${
        bench.parts.length === 0
          ? this.renderEmpty()
          : html`<div class="two">
            <section class="ticket answers" aria-labelledby="answers">
              <h2 id="answers">What it makes</h2>
              ${this.renderSkill(bench.goal.skill ?? "screw")}
              <p class="small"><a href="/together">What goes with what, as a picture</a></p>
              ${whenReady(this.#answer.state, "the answers", (answer) => this.renderAnswer(answer, context))}
            </section>
            <ferrule-part-list .context=${context}></ferrule-part-list>
          </div>`
      }
    `;
  }

  private renderExampleBanner() {
    return html`<aside class="banner" aria-label="Example">
      <p><strong>This is an example.</strong> The repair bench of a nine-hole course; every maker is invented.</p>
      <button class="main" @click=${this.#startOwn}>Start my own bench</button>
    </aside>`;
  }

  private renderEmpty() {
    return emptyNote(
      "Nothing on the bench yet",
      "Add a head, a shaft and a grip, and Ferrule says whether they make a club. Add an adapter if the head takes one.",
      html`<div class="row">
        <a class="button main" href="/add">Add the first part</a>
        <a class="button" href="/listings">Paste a listing: is it worth buying?</a>
        <a class="button" href="/exchange">Import a file</a>
        <button @click=${this.#showExample}>Show the example</button>
      </div>`,
    );
  }

  private renderSkill(skill: Skill) {
    const more = this.#answer.state.is === "ready" ? this.#answer.state.value.skillOpens : [];
    return html`<ferrule-skill-choice .skill=${skill} .opens=${more} @ferrule-answered=${this.#chooseSkill}></ferrule-skill-choice>`;
  }

  private renderAnswer(answer: Resolution, context: BenchContext) {
    const counts = verdictCounts(answer);
    return html`
      <ul class="plain tally" aria-live="polite" aria-label="Answers by verdict">
        ${verdictOrder.map((verdict) => html`<li>${this.renderTally(verdict, counts[verdict])}</li>`)}
      </ul>
      ${verdictOrder.filter((verdict) => this.open === undefined || this.open === verdict).map((verdict) => this.renderGroup(verdict, answer, context))}
      ${answer.notices.length > 0 ? html`<details><summary>Not understood</summary><ul>${answer.notices.map((text) => html`<li>${text}</li>`)}</ul></details>` : ""}
    `;
  }

  private renderTally(verdict: Verdict, { count, atLeast }: VerdictCount) {
    const pressed = this.open === verdict;
    return html`<button aria-pressed=${pressed} @click=${() => (this.open = pressed ? undefined : verdict)}>
      <span class="number">${count.toLocaleString("en-GB")}${atLeast ? "+" : ""}</span><ferrule-verdict .verdict=${verdict}></ferrule-verdict>
    </button>`;
  }

  private renderGroup(verdict: Verdict, answer: Resolution, context: BenchContext) {
    const rows = this.rowsOf(verdict, answer, context);
    return html`<section class="group" aria-label=${verdictWords[verdict]}>
      <div class="row"><h3><ferrule-verdict .verdict=${verdict}></ferrule-verdict></h3><p class="small soft">${verdictMeanings[verdict]}</p></div>
      ${rows.length === 0 ? this.renderNone(verdict, answer) : html`<ul class="plain">${rows.map((row) => html`<li>${row}</li>`)}</ul>`}
      ${this.open === verdict ? html`<button @click=${() => (this.open = undefined)}>Show all verdicts</button>` : ""}
    </section>`;
  }

  /** Says what a little more skill would bring, where that is why there is nothing. */
  private renderNone(verdict: Verdict, { skillOpens }: Resolution) {
    const next = skillOpens.find(({ moreClubs }) => moreClubs > 0);
    if (verdict !== "fits-with-work" || !next)
      return html`<p class="small">None, with what is on the bench and the skill allowed.</p>`;
    return html`<p class="small">None at this skill.</p>
      <button @click=${() => this.#allow(next.skill)}>Allow ${skillGerunds[next.skill]}: ${countText(next.moreClubs, "more club")}</button>`;
  }

  /** When one verdict is open: many rows. When all are shown: a few, each of another head, so that they tell more. */
  private rowsOf(verdict: Verdict, answer: Resolution, context: BenchContext): TemplateResult[] {
    const most = this.open === verdict ? manyRows : fewRows;
    if (verdict === "does-not-fit")
      return this.pick(answer.nearMisses, most).map((miss) => nearMissRow(miss, context));
    return this.pick(
      answer.clubs.filter((club: Club) => club.verdict === verdict),
      most,
    ).map((club) => clubRow(club, context));
  }

  private pick<T extends { head: string }>(all: readonly T[], most: number): readonly T[] {
    if (most === manyRows) return all.slice(0, most);
    return [...new Map([...all].reverse().map((one) => [one.head, one])).values()].reverse().slice(0, most);
  }

  readonly #again = () => {
    void this.#bench.again();
    void this.#answer.again();
  };

  readonly #chooseSkill = (event: CustomEvent<{ value: string }>) => this.#allow(event.detail.value as Skill);

  #allow(skill: Skill): Promise<void> {
    const { state } = this.#bench;
    return this.#try(async () =>
      api.changeGoal({ skill }, state.is === "ready" ? state.value.goal : await api.goal()),
    );
  }

  readonly #startOwn = () =>
    this.#try(async () => {
      await api.startOwn();
      tell(this, "ferrule-done", { text: "The bench is yours, and empty.", undoable: true });
    });

  readonly #showExample = () => this.#try(() => api.showExample(false));

  async #try(work: () => Promise<unknown>): Promise<void> {
    this.trouble = await work().then(
      () => undefined,
      (error: unknown) => `${failed(error).message}.`,
    );
    this.#again();
  }
}

customElements.define("ferrule-bench-view", BenchView);
