import type { Resolution, Skill } from "@ferrule/core";
import { css, html, LitElement } from "lit";
import { tell } from "../events.ts";
import { countText } from "../format/number.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { skillGerunds, skillMeanings, skillOrder, skillWords } from "../words/skill-words.ts";

/** The most work somebody will do, and what the next steps up would open. */
export class SkillChoice extends LitElement {
  static override properties = { skill: {}, opens: {} };
  static override styles = [
    baseStyles,
    formStyles,
    css`
      .choices {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(8.5rem, 1fr));
        gap: 0 0.5rem;
      }
    `,
  ];
  declare skill: Skill;
  declare opens: Resolution["skillOpens"];

  override render() {
    return html`<fieldset>
        <legend>How far will you go?</legend>
        <div class="choices">
          ${skillOrder.map(
            (skill) => html`<label class="tick">
              <input type="radio" name="skill" .checked=${skill === this.skill} @change=${() => tell(this, "ferrule-answered", { name: "skill", value: skill })} />
              ${skillWords[skill]}
            </label>`,
          )}
        </div>
      </fieldset>
      <p class="small soft" aria-live="polite">${skillMeanings[this.skill]} ${this.renderOpens()}</p>`;
  }

  private renderOpens() {
    const opening = this.opens.filter(({ moreClubs }) => moreClubs > 0);
    if (opening.length === 0) return "";
    const words = opening.map(
      ({ skill, moreClubs }) => `${countText(moreClubs, "more club")} with ${skillGerunds[skill]}`,
    );
    return html`<strong>${words.join(", ")}.</strong>`;
  }
}

customElements.define("ferrule-skill-choice", SkillChoice);
