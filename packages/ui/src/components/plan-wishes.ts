import type { ClubType } from "@ferrule/core";
import { css, html, LitElement, type TemplateResult } from "lit";
import { tell } from "../events.ts";
import { minutesText } from "../format/duration.ts";
import { moneyInput, moneyText, parseMoney } from "../format/money.ts";
import { type LimitScale, limitAt, limitScale, positionOf } from "../plan/limit-scale.ts";
import type { PlanWishes } from "../plan-api.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { clubTypeWords } from "../words/part-words.ts";
import { skillMeanings, skillOrder, skillWords } from "../words/skill-words.ts";

const budgetUnitMinor = 100;
const hoursUnitMinutes = 15;
const clubTypes = Object.keys(clubTypeWords) as ClubType[];

/** What the user allows a plan: by slider what is tried most, by field the rest. Sends `ferrule-wishes` with every move. */
export class PlanWishesBox extends LitElement {
  static override properties = {
    wishes: {},
    currency: {},
    topBudgetMinor: {},
    topMinutes: {},
    leastText: { state: true },
    mostTexts: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    css`
      .sliders {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(15rem, 100%), 1fr));
        gap: 0.75rem 2rem;
      }
      .sliders label {
        display: flex;
        flex-wrap: wrap;
        justify-content: space-between;
        gap: 0 1rem;
      }
      output {
        font-family: var(--mono);
      }
      input[type="range"]:not([type="checkbox"]):not([type="radio"]) {
        padding: 0;
        margin: 0;
        border: 0;
        background: none;
        accent-color: var(--accent);
        cursor: pointer;
      }
    `,
  ];
  declare wishes: PlanWishes;
  declare currency: string;
  /** The most that a plan without limits lays out, and the time that it takes: more limits nothing. */
  declare topBudgetMinor: number;
  declare topMinutes: number;
  declare private leastText: string | undefined;
  declare private mostTexts: Readonly<Partial<Record<ClubType, string>>>;

  constructor() {
    super();
    this.mostTexts = {};
  }

  override render() {
    const { budgetMinor, minutes } = this.wishes;
    const budget = limitScale(this.topBudgetMinor, budgetUnitMinor);
    const hours = limitScale(this.topMinutes, hoursUnitMinutes);
    const money = (minor: number) => moneyText(minor, this.currency);
    return html`<div class="sliders">
        ${this.renderLimit("budgetMinor", "To spend", budgetMinor, budget, money)}
        ${this.renderLimit("minutes", "Your hours", minutes, hours, minutesText)}
        ${this.renderSkill()}
      </div>
      <details>
        <summary>More limits</summary>
        <div class="grid">${this.renderHours()}${this.renderLeast()}${clubTypes.map((type) => this.renderMost(type))}</div>
      </details>`;
  }

  private renderLimit(
    name: "budgetMinor" | "minutes",
    label: string,
    limit: number | null,
    scale: LimitScale,
    say: (limit: number) => string,
  ): TemplateResult {
    const words = limit === null ? "no limit" : `at most ${say(limit)}`;
    return html`<div>
      <label for=${name}>${label} <output for=${name}>${words}</output></label>
      <input id=${name} type="range" min="0" max=${scale.end} .value=${String(positionOf(limit, scale))} aria-valuetext=${words}
        @input=${(event: Event) => this.#wish({ [name]: limitAt(Number((event.target as HTMLInputElement).value), scale) })} />
    </div>`;
  }

  private renderSkill(): TemplateResult {
    const { skill } = this.wishes;
    const choose = (event: Event) => {
      const chosen = skillOrder[Number((event.target as HTMLInputElement).value)];
      if (chosen) this.#wish({ skill: chosen });
    };
    return html`<div>
      <label for="skill">How far you go <output for="skill">${skillWords[skill].toLowerCase()}</output></label>
      <input id="skill" type="range" min="0" max=${skillOrder.length - 1} .value=${String(skillOrder.indexOf(skill))} aria-valuetext=${skillWords[skill]} aria-describedby="skill-means" @input=${choose} />
      <p class="why" id="skill-means">${skillMeanings[skill]}</p>
    </div>`;
  }

  private renderHours(): TemplateResult {
    const choices = { "at-own-rate": "At your rate", "for-nothing": "For nothing" } as const;
    const choose = (event: Event) =>
      this.#wish({ hours: (event.target as HTMLSelectElement).value as PlanWishes["hours"] });
    return html`<div><label for="hours">Your hours count</label>
      <select id="hours" @change=${choose}>${Object.entries(choices).map(([value, word]) => html`<option value=${value} ?selected=${value === this.wishes.hours}>${word}</option>`)}</select></div>`;
  }

  private renderLeast(): TemplateResult {
    const { leastPerHourMinor } = this.wishes;
    const text =
      this.leastText ?? (leastPerHourMinor === null ? "" : moneyInput(leastPerHourMinor, this.currency));
    const isWrong = text.trim() !== "" && parseMoney(text, this.currency) === undefined;
    const typed = (event: Event) => {
      this.leastText = (event.target as HTMLInputElement).value;
      const minor = parseMoney(this.leastText, this.currency);
      if (this.leastText.trim() === "" || minor !== undefined)
        this.#wish({ leastPerHourMinor: minor ?? null });
    };
    return html`<div><label for="least">At least for an hour (${this.currency})</label>
      <input id="least" inputmode="decimal" autocomplete="off" placeholder="Whatever it brings" aria-invalid=${isWrong} aria-describedby="least-refused" .value=${text} @input=${typed} />
      <div id="least-refused">${isWrong ? html`<p class="refusal">✕ An amount is expected, such as 12.50.</p>` : ""}</div></div>`;
  }

  private renderMost(type: ClubType): TemplateResult {
    const text = this.mostTexts[type] ?? String(this.wishes.mostOfType[type] ?? "");
    const isWrong = text.trim() !== "" && !/^\d{1,4}$/.test(text.trim());
    const typed = (event: Event) => {
      const now = (event.target as HTMLInputElement).value;
      this.mostTexts = { ...this.mostTexts, [type]: now };
      const { [type]: _before, ...others } = this.wishes.mostOfType;
      if (now.trim() === "") this.#wish({ mostOfType: others });
      else if (/^\d{1,4}$/.test(now.trim())) this.#wish({ mostOfType: { ...others, [type]: Number(now) } });
    };
    return html`<div><label for="most-${type}">${clubTypeWords[type]}: at most</label>
      <input id="most-${type}" inputmode="numeric" autocomplete="off" placeholder="Any number" aria-invalid=${isWrong} aria-describedby="most-${type}-refused" .value=${text} @input=${typed} />
      <div id="most-${type}-refused">${isWrong ? html`<p class="refusal">✕ A whole number of clubs is expected.</p>` : ""}</div></div>`;
  }

  #wish(change: Partial<PlanWishes>): void {
    tell(this, "ferrule-wishes", { ...this.wishes, ...change });
  }
}

customElements.define("ferrule-plan-wishes", PlanWishesBox);
