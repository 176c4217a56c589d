import type { Part, Plan, PlanAction, Sighting } from "@ferrule/core";
import { html, LitElement, type TemplateResult } from "lit";
import { api } from "../api.ts";
import { clubPicture, clubPictureStyles } from "../components/club-picture.ts";
import { clubTable } from "../components/club-table.ts";
import { planBoard, planBoardStyles } from "../components/plan-board.ts";
import {
  planBindings,
  planFigures,
  planLeftOut,
  planNextBest,
  planSumStyles,
} from "../components/plan-sum.ts";
import "../components/plan-wishes.ts";
import { settingsTableStyles } from "../components/settings-table.ts";
import { emptyNote, whenReady } from "../components/state-notes.ts";
import type { News } from "../events.ts";
import { Fetched } from "../fetched.ts";
import { moneyText } from "../format/money.ts";
import { type Ask, LatestAnswer } from "../latest-answer.ts";
import { benchTables } from "../live/bench-tables.ts";
import { boughtParts, clubRoles } from "../plan/club-roles.ts";
import { type PlanJob, type PlanWishes, planApi, searchForPlan } from "../plan-api.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { tradeApi } from "../trade-api.ts";
import { actionTitle } from "../words/action-title.ts";
import { listingTitle } from "../words/listing-title.ts";
import { planStyles } from "./plan-styles.ts";

/** A plan may take so long while the slider has moved on. */
const patienceMs = 600;
/** A plan for the eye that follows a slider; once that rests, what is next best too, and more time where that was too short. */
const quickSeconds = 0.15;
const restMs = 250;
const plainSeconds = 1;
const fairSeconds = 6;
const longSeconds = 60;
const clubsShown = 24;

interface Loaded {
  readonly parts: ReadonlyMap<string, Part>;
  readonly sightings: ReadonlyMap<string, Sighting>;
}

/** What to do with the whole bench and everything on offer, and what would change if more or less were allowed. */
export class PlanView extends LitElement {
  static override properties = {
    wishes: { state: true },
    search: { state: true },
    topBudgetMinor: { state: true },
    topMinutes: { state: true },
    allClubs: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    settingsTableStyles,
    planBoardStyles,
    planSumStyles,
    clubPictureStyles,
    planStyles,
  ];
  declare private wishes: PlanWishes | undefined;
  /** The long search that is under way, and how far it is. */
  declare private search: { readonly id: string; readonly sofar: PlanJob } | undefined;
  /** The plan before anything was asked of it. */
  #first: { readonly wishes: PlanWishes; readonly plan: Plan } | undefined;
  declare private topBudgetMinor: number;
  declare private topMinutes: number;
  declare private allClubs: boolean;
  readonly #all: Fetched<Loaded> = new Fetched<Loaded>(this, () => this.#load(), [
    ...benchTables,
    "sightings",
    "models",
    "evidence",
    "costs",
  ]);
  readonly #plan = new LatestAnswer<Plan>(this, patienceMs);

  constructor() {
    super();
    this.topBudgetMinor = 0;
    this.topMinutes = 0;
    this.allClubs = false;
  }

  override render() {
    return html`<div class="stack" @ferrule-retry=${() => this.#all.again()} @ferrule-wishes=${(event: CustomEvent<News["ferrule-wishes"]>) => this.#wish(event.detail)}>
      <h1 tabindex="-1">The plan</h1>
      <p class="soft">What to buy, build, sell and keep waiting, with everything on the bench and every open listing. All of it is an estimate.</p>
      ${whenReady(this.#all.state, "the bench", (loaded) => (loaded.parts.size === 0 && loaded.sightings.size === 0 ? this.renderEmpty() : this.renderAll(loaded)))}
    </div>`;
  }

  private renderEmpty(): TemplateResult {
    return emptyNote(
      "Nothing to plan with",
      "Put some parts on the bench or paste a listing, and what to do with them stands here.",
      html`<div class="row"><a class="button main" href="/add">Add a part</a><a class="button" href="/listings">Paste a listing</a></div>`,
    );
  }

  private renderAll(loaded: Loaded): TemplateResult {
    const { value: plan, trouble, isAsking } = this.#plan;
    return html`
      <div class="top">
        <section class="ticket sum ${isAsking ? "asking" : ""}" aria-labelledby="sum" aria-busy=${isAsking}>
          <h2 id="sum">In sum</h2>
          ${trouble ? html`<p class="refusal" role="alert">✕ ${trouble} <button @click=${this.#askNow}>Try again</button></p>` : ""}
          <p class="small soft" role="status">${isAsking ? (plan ? "Looking for a better plan …" : "Working out the plan …") : plan ? `This plan brings ${moneyText(plan.netMinor, plan.currency)}.` : ""}</p>
          ${plan ? planFigures(plan) : ""}
          ${plan && this.wishes ? this.renderAgainstFirst(plan, this.wishes) : ""}
          ${plan?.stopped && !isAsking ? html`<button @click=${this.#searchLonger}>Search for longer</button>` : ""}
          ${this.search ? this.renderSearch(this.search, plan?.currency ?? "EUR") : ""}
        </section>
        <section class="ticket" aria-labelledby="what-if">
          <h2 id="what-if">What if</h2>
          ${plan && this.wishes ? html`<ferrule-plan-wishes .wishes=${this.wishes} .currency=${plan.currency} .topBudgetMinor=${this.topBudgetMinor} .topMinutes=${this.topMinutes}></ferrule-plan-wishes>` : html`<p class="soft">Once there is a plan, sliders stand here that ask for others.</p>`}
        </section>
      </div>
      ${plan ? this.renderPlan(plan, loaded) : ""}
    `;
  }

  private renderAgainstFirst(plan: Plan, wishes: PlanWishes): TemplateResult | string {
    if (!this.#first || wishes === this.#first.wishes || this.#plan.isAsking) return "";
    const moreMinor = plan.netMinor - this.#first.plan.netMinor;
    const than = "than the plan you began with";
    const words =
      moreMinor === 0
        ? "As much as the plan you began with."
        : `${moneyText(Math.abs(moreMinor), plan.currency)} ${moreMinor > 0 ? "more" : "less"} ${than}.`;
    return html`<div class="row between"><p><strong>${words}</strong></p><button @click=${this.#backToFirst}>Back to it</button></div>`;
  }

  private renderSearch({ id, sofar }: { id: string; sofar: PlanJob }, currency: string): TemplateResult {
    const { netMinor, boundMinor } = sofar;
    const money = (minor: number) => moneyText(Math.round(minor), currency);
    return html`<div class="row between">
      <p class="small">${netMinor === null ? "Searching …" : `So far ${money(netMinor)}`}${boundMinor === null ? "" : `; no plan can bring more than ${money(boundMinor)}`}</p>
      <button @click=${() => planApi.stopJob(id)}>Stop, and take the best so far</button>
    </div>`;
  }

  private renderPlan(plan: Plan, { parts, sightings }: Loaded): TemplateResult {
    const titleOf = (id: string) => {
      const sighting = sightings.get(id);
      return sighting ? listingTitle(sighting.listing, sighting.text) : id;
    };
    return html`
      ${plan.actions.length === 0 ? html`<p class="ticket">Nothing is known to bring money within these limits. <a href="/prices">Prices</a> tell what things go for; without them there is little to plan with.</p>` : planBoard(plan.actions, { parts, boughtWith: boughtParts(plan.actions), currency: plan.currency })}
      ${this.renderPicture(plan, parts)}
      <div class="three sum">
        <section class="ticket" aria-labelledby="binds"><h2 id="binds">What is short</h2>${planBindings(plan)}</section>
        <section class="ticket" aria-labelledby="next"><h2 id="next">The next best plan</h2>${planNextBest(plan, parts, this.#plan.isAsking)}</section>
        <section class="ticket" aria-labelledby="left"><h2 id="left">What was left out</h2>${planLeftOut(plan, parts, titleOf)}</section>
      </div>`;
  }

  private renderPicture({ actions }: Plan, parts: Loaded["parts"]): TemplateResult | string {
    const bought = boughtParts(actions);
    const clubs = actions.filter((action) => action.do === "build" || action.do === "wait");
    if (clubs.length === 0) return "";
    const shown = this.allClubs ? clubs : clubs.slice(0, clubsShown);
    const rows = clubs.map((club) => ({
      title: actionTitle(club, parts),
      parts: clubRoles(club, parts, bought),
    }));
    return html`<section class="ticket stack" aria-labelledby="picture">
      <h2 id="picture">Which parts go where</h2>
      <div class="clubs">${shown.map((club) => clubPicture(clubRoles(club, parts, bought), this.renderCaption(club, parts)))}</div>
      ${shown.length < clubs.length ? html`<button @click=${() => (this.allClubs = true)}>Show all ${clubs.length} clubs</button>` : ""}
      <p class="small soft">Solid: on the bench. Dashed: bought with a listing. Dotted: still to be found.</p>
      <details><summary>The same as a table</summary>${clubTable(rows, parts)}</details>
    </section>`;
  }

  private renderCaption(club: PlanAction, parts: Loaded["parts"]): TemplateResult {
    const { waitsFor } = club;
    return html`${actionTitle(club, parts)}${waitsFor ? html`, waiting for ${waitsFor.text}` : ""}`;
  }

  async #load(): Promise<Loaded> {
    const [bench, { sightings }] = await Promise.all([api.bench(), tradeApi.sightings.all()]);
    this.wishes ??= {
      budgetMinor: null,
      minutes: null,
      mostOfType: {},
      hours: "at-own-rate",
      leastPerHourMinor: null,
      skill: bench.goal.skill ?? "screw",
    };
    if (bench.parts.length > 0 || sightings.length > 0) void this.#askNow();
    return {
      parts: new Map(bench.parts.map((part) => [part.id, part])),
      sightings: new Map(sightings.map((sighting) => [sighting.id, sighting])),
    };
  }

  #wish(wishes: PlanWishes): void {
    this.wishes = wishes;
    this.#plan.askSoon(this.#question(wishes));
  }

  readonly #askNow = async (): Promise<void> => {
    if (this.wishes) await this.#plan.ask(this.#question(this.wishes));
  };

  readonly #backToFirst = (): void => {
    const first = this.#first;
    if (!first) return;
    this.wishes = first.wishes;
    void this.#plan.ask(async () => first.plan);
  };

  readonly #searchLonger = async (): Promise<void> => {
    const { wishes } = this;
    if (!wishes) return;
    await this.#plan.ask((signal) =>
      searchForPlan(wishes, longSeconds, signal, (id, sofar) => {
        this.search = signal.aborted ? undefined : { id, sofar };
      }).finally(() => (this.search = undefined)),
    );
  };

  /** The quick plan is shown at once; where no slider moves meanwhile, it is looked at again. */
  #question(wishes: PlanWishes): Ask<Plan> {
    return async (signal, show) => {
      const quick = await planApi.plan(wishes, quickSeconds, signal, false);
      this.#note(wishes, quick);
      show(quick);
      await new Promise((resolve) => setTimeout(resolve, restMs));
      if (signal.aborted) return quick;
      const plan = await planApi.plan(wishes, quick.stopped ? fairSeconds : plainSeconds, signal);
      this.#note(wishes, plan);
      return plan;
    };
  }

  /** A plan without limits says how far the sliders have to reach. */
  #note(wishes: PlanWishes, plan: Plan): void {
    if (!this.#first || this.#first.wishes === wishes) this.#first = { wishes, plan };
    if (wishes.budgetMinor === null) this.topBudgetMinor = Math.max(this.topBudgetMinor, plan.outlayMinor);
    if (wishes.minutes === null) this.topMinutes = Math.max(this.topMinutes, plan.minutes);
  }
}

customElements.define("ferrule-plan-view", PlanView);
