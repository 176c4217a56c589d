import type { ClubType, Goal, Refusal, Target } from "@ferrule/core";
import { html, LitElement, type TemplateResult } from "lit";
import { ApiError, api } from "../api.ts";
import "../components/settings-put-in.ts";
import { whenReady } from "../components/state-notes.ts";
import "../components/target-field.ts";
import type { DisplaySettings } from "../display-settings.ts";
import { tell } from "../events.ts";
import { Fetched, failed } from "../fetched.ts";
import { refusalText } from "../form/refusals-at.ts";
import { type RegionsReply, settingsApi } from "../settings-api.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { tradeApi } from "../trade-api.ts";
import { fieldText } from "../words/field-words.ts";
import { clubTypeWords, flexWords, handWords } from "../words/part-words.ts";
import { skillOrder, skillWords } from "../words/skill-words.ts";

const { either: _either, ...oneHand } = handWords;
const units = { in: "Inches", cm: "Centimetres" } as const;
const currencies = {
  EUR: "€ euro",
  GBP: "£ pound",
  USD: "$ US dollar",
  AUD: "$ Australian dollar",
  CAD: "$ Canadian dollar",
} as const;
const themes = { auto: "As the system says", light: "Light", dark: "Dark" } as const;
const skills = Object.fromEntries(skillOrder.map((skill) => [skill, skillWords[skill]]));

/** How things are shown, and what the bench is working towards. */
export class SettingsView extends LitElement {
  static override properties = { display: {}, trouble: { state: true }, refusals: { state: true } };
  static override styles = [baseStyles, formStyles];
  declare display: DisplaySettings;
  declare private trouble: string | undefined;
  declare private refusals: readonly Refusal[];
  readonly #goal = new Fetched(this, api.goal);
  readonly #regions = new Fetched(this, settingsApi.regions);
  readonly #costs = new Fetched(this, () => tradeApi.costs());

  constructor() {
    super();
    this.refusals = [];
  }

  override render() {
    return html`<div class="stack" @ferrule-retry=${this.#again} @ferrule-settings=${this.#putIn}>
      <h1 tabindex="-1">Settings</h1>
      ${this.trouble ? this.renderTrouble(this.trouble) : ""}
      <section class="ticket stack" aria-labelledby="show">
        <h2 id="show">How things are shown</h2>
        <div class="grid">
          ${this.renderChoice("lengthUnit", "Lengths in", units, this.display.lengthUnit, (value) => this.#show({ lengthUnit: value as DisplaySettings["lengthUnit"] }))}
          ${this.renderChoice("currency", "Money in", currencies, this.display.currency, (value) => this.#show({ currency: value as DisplaySettings["currency"] }))}
          ${this.renderChoice("theme", "Light or dark", themes, this.display.theme, (value) => this.#show({ theme: value as DisplaySettings["theme"] }))}
        </div>
        <p class="why">Tips, bores, butts and cores keep the trade's sizes in inches; with centimetres chosen, millimetres stand beside them.</p>
      </section>
      ${whenReady(this.#goal.state, "the goal", (goal) => this.renderGoal(goal))}
      <section class="ticket" aria-labelledby="money">
        <h2 id="money">Money</h2>
        <p>What an hour is worth, fees, postage, how low an offer goes and how long to wait for a part are under <a href="/costs">Costs</a>; paper for labels under <a href="/labels">Labels</a>.</p>
      </section>
      ${whenReady(this.#regions.state, "the regions", (regions) => this.renderAtOnce(regions))}
    </div>`;
  }

  private renderTrouble(trouble: string): TemplateResult {
    return html`<div class="ticket" role="alert">
      <p class="refusal">✕ ${trouble}</p>
      ${this.refusals.map((refusal) => html`<p>${fieldText(refusal.field)}: ${refusalText(refusal)}</p>`)}
    </div>`;
  }

  private renderGoal(goal: Goal): TemplateResult {
    return html`<section class="ticket stack" aria-labelledby="goal">
      <h2 id="goal">What the bench works towards</h2>
      <div class="grid">
        ${this.renderChoice("hand", "Hand", { "": "Either", ...oneHand }, goal.hand ?? "", (hand) => this.#want({ hand: (hand || undefined) as Goal["hand"] }))}
        ${this.renderChoice("flex", "Flex", { "": "Any", ...flexWords }, goal.flex ?? "", (flex) => this.#want({ flex: (flex || undefined) as Goal["flex"] }))}
        ${this.renderChoice("skill", "Skill allowed", skills, goal.skill ?? "screw", (skill) => this.#want({ skill: skill as Goal["skill"] }))}
      </div>
      <label class="tick"><input type="checkbox" .checked=${goal.localRule46 ?? false} @change=${() => this.#want({ localRule46: !goal.localRule46 })} />Our competitions cap length at 46 in (model local rule)</label>
      <h3>Targets by club type</h3>
      <p class="why">What a finished club should measure. Left empty, anything within the Rules will do. Local rules and your committee have the last word.</p>
      <div class="grid" @ferrule-target=${this.#targeted}>
        ${(Object.keys(clubTypeWords) as ClubType[]).map((clubType) => html`<ferrule-target-field .clubType=${clubType} .target=${goal.targets?.[clubType] ?? {}} .lengthUnit=${this.display.lengthUnit}></ferrule-target-field>`)}
      </div>
    </section>`;
  }

  private renderAtOnce({ regions, canTakeBack }: RegionsReply): TemplateResult {
    const currency = this.#costs.state.is === "ready" ? this.#costs.state.value.currency : "EUR";
    return html`<section class="ticket stack" aria-labelledby="once">
      <h2 id="once">Many settings at once</h2>
      <p class="soft">To start with what is usual where you are, or to bring settings from another bench. You see what would change first, and the last change can be taken back.</p>
      <ferrule-settings-put-in .regions=${regions} .currency=${currency}></ferrule-settings-put-in>
      <div class="row">
        <a class="button" href="/api/settings/file" download>All settings as a file</a>
        ${canTakeBack ? html`<button @click=${this.#takeBack}>Take back the last change at once</button>` : ""}
      </div>
    </section>`;
  }

  private renderChoice(
    name: string,
    label: string,
    choices: Readonly<Record<string, string>>,
    value: string,
    chosen: (value: string) => void,
  ) {
    return html`<div>
      <label for=${name}>${label}</label>
      <select id=${name} @change=${(event: Event) => chosen((event.target as HTMLSelectElement).value)}>
        ${Object.entries(choices).map(([key, word]) => html`<option value=${key} ?selected=${key === value}>${word}</option>`)}
      </select>
    </div>`;
  }

  readonly #targeted = (event: CustomEvent<{ clubType: ClubType; target: Target }>) => {
    const { clubType, target } = event.detail;
    const goal = this.#goal.state.is === "ready" ? this.#goal.state.value : {};
    void this.#want({ targets: { ...goal.targets, [clubType]: target } });
  };

  readonly #again = () => {
    void this.#goal.again();
    void this.#regions.again();
    void this.#costs.again();
  };

  /** Settings were put in, or taken back. */
  readonly #putIn = async () => {
    this.#again();
    await api.settings().then((display) => tell(this, "ferrule-display", display), failed);
  };

  readonly #takeBack = async () => {
    await settingsApi.takeBack().then(
      () => tell(this, "ferrule-done", { text: "The settings are as they were." }),
      (error: unknown) => (this.trouble = `${failed(error).message}.`),
    );
    await this.#putIn();
  };

  async #show(change: Partial<DisplaySettings>): Promise<void> {
    await api.changeSettings(change, this.display).then((display) => {
      this.#fine();
      tell(this, "ferrule-display", display);
    }, this.#refused);
  }

  async #want(change: Partial<Goal>): Promise<void> {
    const goal = this.#goal.state.is === "ready" ? this.#goal.state.value : await api.goal();
    await api.changeGoal(change, goal).then(() => this.#fine(), this.#refused);
    await this.#goal.again();
  }

  #fine(): void {
    this.trouble = undefined;
    this.refusals = [];
    tell(this, "ferrule-done", { text: "Kept." });
  }

  readonly #refused = (error: unknown) => {
    this.trouble = `${failed(error).message}.`;
    this.refusals = error instanceof ApiError ? error.refusals : [];
  };
}

customElements.define("ferrule-settings-view", SettingsView);
