import type { WorkStep } from "@ferrule/core";
import { css, html, type TemplateResult } from "lit";
import { minutesText } from "../format/duration.ts";
import { moneyText } from "../format/money.ts";
import { skillWords } from "../words/skill-words.ts";
import { cautionBox, cautionBoxStyles } from "./caution-box.ts";
import { sentence } from "./sentence.ts";

export const workListStyles = css`
  .steps {
    counter-reset: step;
  }
  .steps > li {
    counter-increment: step;
    display: grid;
    grid-template-columns: 2.2rem minmax(0, 1fr);
    gap: 0 0.6rem;
    padding: 0.6rem 0;
    border-top: 1px solid var(--line);
  }
  .steps > li::before {
    content: counter(step);
    font-family: var(--mono);
    font-weight: 700;
    width: 2rem;
    height: 2rem;
    line-height: 1.85rem;
    text-align: center;
    border: 1.5px solid var(--line-strong);
    border-radius: 50%;
  }
  .steps p {
    margin: 0 0 0.2rem;
  }
  ${cautionBoxStyles}
`;

/** The steps at the bench in order; each caution stands at the step it belongs to. */
export function workList(work: readonly WorkStep[], currency: string): TemplateResult {
  return html`<ol class="plain steps">${work.map((step) => html`<li><div>${stepRow(step, currency)}</div></li>`)}</ol>`;
}

function stepRow(step: WorkStep, currency: string): TemplateResult {
  const facts = [
    minutesText(step.minutes),
    step.waitMinutes > 0 && `then leave it ${minutesText(step.waitMinutes)}`,
    skillWords[step.skill].toLowerCase(),
    step.costMinor > 0 && `about ${moneyText(step.costMinor, currency)} of materials`,
  ];
  return html`<p>${sentence(step.text)}</p>
    <p class="small soft">${facts.filter(Boolean).join(" · ")}${step.parts.length > 0 ? html` · <span class="mono">${step.parts.join(", ")}</span>` : ""}</p>
    ${step.cautions.length > 0 ? cautionBox(step.cautions) : ""}`;
}
