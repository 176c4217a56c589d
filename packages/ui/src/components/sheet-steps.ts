import type { WorkStep } from "@ferrule/core";
import { css, html, type TemplateResult } from "lit";
import { minutesText } from "../format/duration.ts";
import { skillWords } from "../words/skill-words.ts";
import { cautionBoxStyles } from "./caution-box.ts";
import { sentence } from "./sentence.ts";

export const sheetStepsStyles = css`
  ${cautionBoxStyles}
  .todo {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .todo > li {
    border-top: 1px solid var(--line);
    padding: 0.5rem 0;
  }
  .todo > li:first-child {
    border-top: 0;
  }
  .tickbox {
    display: inline-block;
    width: 0.9em;
    height: 0.9em;
    border: 1.5px solid var(--line-strong);
    border-radius: 2px;
    vertical-align: -0.1em;
    margin-right: 0.4em;
  }
`;

/** The steps of a sheet with a box to tick; a caution stands in full where it first matters, and is named again after that. */
export function sheetSteps(steps: readonly WorkStep[]): TemplateResult {
  const first = new Map<string, number>();
  steps.forEach(({ cautions }, at) => {
    for (const { code } of cautions) if (!first.has(code)) first.set(code, at);
  });
  return html`<ol class="todo">${steps.map((step, at) => html`<li>${stepRow(step, at, first)}</li>`)}</ol>`;
}

function stepRow(step: WorkStep, at: number, first: ReadonlyMap<string, number>): TemplateResult {
  const told = step.cautions.filter(({ code }) => first.get(code) === at);
  const firsts = new Set(step.cautions.map(({ code }) => first.get(code) ?? at));
  const again = [...firsts].filter((one) => one < at).sort((one, other) => one - other);
  const facts = [
    minutesText(step.minutes),
    skillWords[step.skill].toLowerCase(),
    step.waitMinutes > 0 && `then leave it ${minutesText(step.waitMinutes)}`,
  ];
  return html`<p><span class="tickbox" aria-hidden="true"></span><strong>${at + 1}.</strong> ${sentence(step.text)}
      <span class="soft">${facts.filter(Boolean).join(" · ")}</span></p>
    ${
      told.length + again.length === 0
        ? ""
        : html`<div class="caution small"><strong>Take care</strong><ul>
      ${told.map(({ text }) => html`<li>${sentence(text)}</li>`)}
      ${again.length > 0 ? html`<li>And as said at step ${again.map((one) => one + 1).join(", ")}.</li>` : ""}
    </ul></div>`
    }`;
}
