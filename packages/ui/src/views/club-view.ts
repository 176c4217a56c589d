import type { Adapter, Club, Head, Shaft } from "@ferrule/core";
import { html, LitElement } from "lit";
import { api, type Bench } from "../api.ts";
import { type BenchContext, contextOf } from "../bench-context.ts";
import { factListStyles, jointText } from "../components/fact-list.ts";
import { findingList, findingListStyles } from "../components/finding-list.ts";
import { measureTable, measureTableStyles } from "../components/measure-table.ts";
import { questionList } from "../components/question-list.ts";
import { settingsTable, settingsTableStyles } from "../components/settings-table.ts";
import { emptyNote, whenReady } from "../components/state-notes.ts";
import "../components/tune-form.ts";
import type { TunePicture } from "../components/tune-picture.ts";
import "../components/tune-picture.ts";
import "../components/verdict-mark.ts";
import { workList, workListStyles } from "../components/work-list.ts";
import type { DisplaySettings } from "../display-settings.ts";
import { jointClashes } from "../drawings/joint-clashes.ts";
import "../drawings/joint-drawing.ts";
import { jointFacts } from "../drawings/joint-facts.ts";
import type { News } from "../events.ts";
import { Fetched } from "../fetched.ts";
import { minutesText } from "../format/duration.ts";
import { numberText } from "../format/number.ts";
import { pressureText } from "../format/pressure.ts";
import { benchTables } from "../live/bench-tables.ts";
import { hrefs } from "../route.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { clubTitle, titleById } from "../words/part-title.ts";
import { skillWords } from "../words/skill-words.ts";
import { verdictMeanings, verdictOrder } from "../words/verdict-words.ts";
import { clubStyles } from "./club-styles.ts";

/** One club: how it would measure and swing, the work it takes, and why it is judged as it is. */
export class ClubView extends LitElement {
  static override properties = { display: {}, headId: {}, clubId: {} };
  static override styles = [
    baseStyles,
    factListStyles,
    findingListStyles,
    workListStyles,
    measureTableStyles,
    settingsTableStyles,
    clubStyles,
  ];
  declare display: DisplaySettings;
  declare headId: string;
  declare clubId: string;
  readonly #all = new Fetched(this, () => Promise.all([api.bench(), api.goesWith(this.headId)]), benchTables);

  override render() {
    return html`<div class="stack" @ferrule-retry=${() => this.#all.again()} @ferrule-try-way=${this.#tryWay}>
      <h1 tabindex="-1">${this.renderTitle()}</h1>
      ${whenReady(this.#all.state, "the club", ([bench, { clubs }]) => {
        const club = clubs.find(({ id }) => id === this.clubId);
        return club
          ? this.renderClub(club, bench, contextOf(bench, this.display.lengthUnit))
          : this.renderGone();
      })}
    </div>`;
  }

  private renderTitle() {
    if (this.#all.state.is !== "ready") return `A club of ${this.headId}`;
    const [bench] = this.#all.state.value;
    return clubTitle(contextOf(bench, "in").parts, this.headId);
  }

  private renderClub(club: Club, bench: Bench, context: BenchContext) {
    return html`
      ${this.renderSummary(club, context)}
      <section class="ticket" aria-labelledby="drawn"><h2 id="drawn">Drawn to scale</h2><ferrule-tune-picture .club=${club} .context=${context} .goal=${bench.goal}></ferrule-tune-picture></section>
      <section class="ticket" aria-labelledby="joint"><h2 id="joint">The joint, cut open</h2>${this.renderJoint(club, context)}</section>
      <section class="ticket" aria-labelledby="measures"><h2 id="measures">Measures</h2>
        <p class="small soft">In brackets: where it lies 95 times in 100.</p>
        ${measureTable(club.estimates, context)}${this.renderBond(club)}
      </section>
      ${club.questions.length > 0 ? html`<section class="ticket stack" aria-labelledby="ask"><h2 id="ask">What would settle it</h2>${questionList(club.questions, context)}</section>` : ""}
      <section class="ticket" aria-labelledby="work"><h2 id="work">Work</h2>${this.renderWork(club)}</section>
      ${club.estimates.settings.length > 0 ? html`<section class="ticket" aria-labelledby="settings"><h2 id="settings">Adapter settings</h2>${settingsTable(club.estimates.settings)}</section>` : ""}
      <ferrule-tune-form .club=${club} .context=${context} .goal=${bench.goal}></ferrule-tune-form>
      <section class="ticket" aria-labelledby="reasons"><h2 id="reasons">Reasons</h2>${this.renderFindings(club, context)}</section>
    `;
  }

  private renderSummary(club: Club, { parts }: BenchContext) {
    const members = [club.head, club.adapter, club.shaft, club.grip].filter(
      (id): id is string => id !== null,
    );
    return html`<section class="ticket summary" aria-label="In short">
      <div>
        <ferrule-verdict class="large" .verdict=${club.verdict}></ferrule-verdict>
        <p class="small soft">${verdictMeanings[club.verdict]}</p>
        <p>${club.work.length === 0 ? "No work" : `${minutesText(club.minutes)} of work, ${skillWords[club.skill].toLowerCase()}`}</p>
        <div class="row"><a class="button main" href=${hrefs.sheet(club)}>Build sheet</a><a class="button" href=${hrefs.advert(members)}>Describe it</a><a class="button" href=${hrefs.sell(members)}>Sell it</a></div>
      </div>
      <ul class="plain">
        ${members.map((id) => html`<li><a href=${hrefs.part(id)}>${titleById(parts, id)}</a> <span class="mono soft">${id}</span></li>`)}
      </ul>
    </section>`;
  }

  private renderJoint({ head, adapter, shaft, work, findings }: Club, { parts, lengthUnit }: BenchContext) {
    const members = {
      head: parts.get(head) as Head,
      adapter: adapter === null ? undefined : (parts.get(adapter) as Adapter),
      shaft: parts.get(shaft) as Shaft,
    };
    return html`<ferrule-joint-drawing .facts=${jointFacts(members, work)} .clashes=${jointClashes(findings)} .unit=${lengthUnit}></ferrule-joint-drawing>`;
  }

  private renderWork(club: Club) {
    if (club.work.length === 0)
      return html`<p>Nothing to do. Look it over and check every screw and bond before anybody swings it.</p>`;
    return html`${club.undoes.length > 0 ? html`<p class="small soft">Takes apart first: ${club.undoes.map(jointText).join(", ")}.</p>` : ""}
      ${workList(club.work, this.display.currency)}
      <p class="small soft">Where a step is new to you, have somebody practised do it. A shaft or bond that fails in a swing can hurt a person.</p>`;
  }

  private renderBond({ estimates: { bond } }: Club) {
    if (!bond) return "";
    return html`<p class="small"><strong>Bond, for information only:</strong> mean shear ${pressureText(bond.shearPa)} at a pull of
      ${numberText(bond.pullN, 0)} N, against ${pressureText(bond.strengthPa)} that the epoxy bears. ${bond.caution}</p>`;
  }

  private renderFindings({ findings }: Club, context: BenchContext) {
    if (findings.length === 0) return html`<p>Every rule is content, and none has anything to add.</p>`;
    const worstFirst = [...findings].sort(
      (a, b) => verdictOrder.indexOf(b.verdict) - verdictOrder.indexOf(a.verdict),
    );
    return findingList(worstFirst, context);
  }

  /** Draws a way of tuning, and brings the drawing into sight. */
  readonly #tryWay = ({ detail }: CustomEvent<News["ferrule-try-way"]>) => {
    const picture = this.renderRoot.querySelector<TunePicture>("ferrule-tune-picture");
    picture?.tryWay(detail);
  };

  private renderGone() {
    return emptyNote(
      "This club is not among the answers",
      "A part, a joint or the skill allowed has changed since.",
      html`<a class="button" href=${hrefs.part(this.headId)}>See what ${this.headId} goes with</a>`,
    );
  }
}

customElements.define("ferrule-club-view", ClubView);
