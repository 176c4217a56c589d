import type { Joint } from "@ferrule/core";
import { css, html, type TemplateResult } from "lit";
import type { BenchContext } from "../bench-context.ts";
import type { CitedFact } from "../findings.ts";
import { valueAt } from "../form/path.ts";
import { factValueText } from "../format/fact-value.ts";
import { hrefs } from "../route.ts";
import { fieldText } from "../words/field-words.ts";
import { titleById } from "../words/part-title.ts";
import { jointWords, sourceWords } from "../words/part-words.ts";
import { verdictWords } from "../words/verdict-words.ts";

export const factListStyles = css`
  .facts {
    margin: 0.4rem 0 0;
    padding: 0;
    list-style: none;
  }
  .facts li {
    padding: 0.3rem 0;
    border-top: 1px solid var(--line);
    overflow-wrap: anywhere;
  }
`;

/** The facts something rests on, each with its value and where it came from. */
export function factList(facts: readonly CitedFact[], context: BenchContext): TemplateResult {
  if (facts.length === 0)
    return html`<p class="small soft">No single fact: this follows from what was asked.</p>`;
  return html`<ul class="facts small">${facts.map((fact) => html`<li>${factRow(fact, context)}</li>`)}</ul>`;
}

function factRow(fact: CitedFact, context: BenchContext): TemplateResult {
  switch (fact.of) {
    case "part":
      return partFactRow(fact, context);
    case "claim":
      return claimRow(fact.index, context);
    case "goal":
      return html`What you asked for: ${fieldText(fact.field)} <strong>${factValueText(fact.field, fact.value, context.lengthUnit)}</strong>`;
  }
}

function partFactRow(
  { part, field, value }: CitedFact & { of: "part" },
  context: BenchContext,
): TemplateResult {
  return html`<a href=${hrefs.part(part)}>${titleById(context.parts, part)}</a> <span class="mono">${part}</span>: ${fieldText(field)}
    <strong>${factValueText(field, value, context.lengthUnit)}</strong>${sourceText(valueAt(context.parts.get(part), field))}`;
}

/** Where a reading came from; a bare number counts as stated, and what is no reading has no source. */
function sourceText(written: unknown): string {
  if (typeof written === "number") return ` (${sourceWords.stated})`;
  if (typeof written !== "object" || written === null || !("value" in written)) return "";
  const { source = "stated" } = written as { source?: keyof typeof sourceWords };
  return ` (${sourceWords[source]})`;
}

function claimRow(index: number, { claims }: BenchContext): TemplateResult {
  const claim = claims[index];
  if (!claim) return html`Fit claim ${index + 1}`;
  return html`<a href="/claims">Fit claim</a>: ${claim.adapter} in ${claim.receiver}, <strong>${verdictWords[claim.verdict].toLowerCase()}</strong> (${claim.evidence.replaceAll("-", " ")})`;
}

/** "S3 glued to A2". */
export function jointText(joint: Joint): string {
  return `${joint.parts[0]} ${jointWords[joint.type]} ${joint.parts[1]}`;
}
