import { css, html, type TemplateResult } from "lit";
import type { BenchContext } from "../bench-context.ts";
import type { Finding } from "../findings.ts";
import { factList } from "./fact-list.ts";
import { sentence } from "./sentence.ts";
import "./verdict-mark.ts";

export const findingListStyles = css`
  .finding {
    padding: 0.6rem 0;
    border-top: 1px solid var(--line);
  }
  .finding p {
    margin: 0.2rem 0;
  }
  .hint {
    border-left: 3px solid var(--line-strong);
    padding-left: 0.75rem;
  }
`;

const strengthWords = { must: "has to be so", should: "better so", note: "worth knowing" } as const;

/** What the rules found, worst first, each with its rule and the facts it read. */
export function findingList(findings: readonly Finding[], context: BenchContext): TemplateResult {
  return html`<ul class="plain">${findings.map((finding) => html`<li class="finding">${findingRow(finding, context)}</li>`)}</ul>`;
}

function findingRow(finding: Finding, context: BenchContext): TemplateResult {
  return html`${heading(finding)}
    <p>${sentence(finding.text)}</p>
    ${finding.hint ? html`<p class="hint">Try ${finding.hint}.</p>` : ""}
    <details class="small">
      <summary>Rule ${finding.rule}, and what it read</summary>
      <p class="soft">Strength: ${strengthWords[finding.strength]}. Source: ${finding.source}.</p>
      ${factList(finding.facts, context)}
    </details>`;
}

/** A rule that must hold says its verdict; advice and notes are named as such, for they decide nothing. */
function heading({ strength, verdict }: Finding): TemplateResult {
  if (strength === "must" && verdict !== "fits")
    return html`<ferrule-verdict class="small" .verdict=${verdict}></ferrule-verdict>`;
  return html`<strong class="small soft">${verdict === "fits" ? "Look at this" : "Could be better"}</strong>`;
}
