import type { WorkStep } from "@ferrule/core";
import { css, html, type TemplateResult } from "lit";
import { sentence } from "./sentence.ts";

export const cautionBoxStyles = css`
  .caution {
    border: 1.5px solid var(--work);
    border-left-width: 6px;
    border-radius: 0 4px 4px 0;
    padding: 0.4rem 0.75rem;
    margin: 0.4rem 0;
  }
  .caution strong {
    color: var(--work);
  }
  .caution ul {
    margin: 0.2rem 0 0;
    padding-left: 1.1rem;
    max-width: 75ch;
  }
  .caution li {
    margin: 0.25rem 0;
  }
`;

/** What to take care of in a piece of work. */
export function cautionBox(cautions: WorkStep["cautions"]): TemplateResult {
  return html`<div class="caution small">
    <strong>Take care</strong>
    <ul>${cautions.map(({ text }) => html`<li>${sentence(text)}</li>`)}</ul>
  </div>`;
}
