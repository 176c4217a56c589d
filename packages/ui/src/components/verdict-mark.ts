import type { Verdict } from "@ferrule/core";
import { css, html, LitElement, svg, type TemplateResult } from "lit";
import { verdictWords } from "../words/verdict-words.ts";
import { markStyles } from "./mark-styles.ts";

/** Each verdict has a shape of its own, so that neither colour nor size has to tell them apart. */
const shapes: Readonly<Record<Verdict, TemplateResult>> = {
  fits: svg`<circle cx="12" cy="12" r="10" fill="currentColor"/><path d="M7 12.5l3.5 3.5L17 8.5" class="cut"/>`,
  "fits-with-work": svg`<rect x="2.5" y="2.5" width="19" height="19" rx="2" fill="currentColor"/><path d="M12 7v10M7 12h10" class="cut"/>`,
  unsettled: svg`<path d="M12 1.2L22.8 12 12 22.8 1.2 12z" fill="none" stroke="currentColor" stroke-width="2"/><path d="M9.4 9.8a2.7 2.7 0 1 1 3.9 2.4c-.9.5-1.3 1-1.3 1.9" class="line"/><circle cx="12" cy="16.8" r="1.2" fill="currentColor"/>`,
  "does-not-fit": svg`<path d="M7.5 1.5h9l6 6v9l-6 6h-9l-6-6v-9z" fill="currentColor"/><path d="M8 8l8 8M16 8l-8 8" class="cut"/>`,
};

/** A verdict by word and shape. */
export class VerdictMark extends LitElement {
  static override properties = { verdict: {} };
  static override styles = [
    markStyles,
    css`
      .fits {
        color: var(--fits);
      }
      .fits-with-work {
        color: var(--work);
      }
      .unsettled {
        color: var(--unsettled);
      }
      .does-not-fit {
        color: var(--refused);
      }
    `,
  ];
  declare verdict: Verdict;

  override render() {
    return html`<span class=${this.verdict}>
      <svg viewBox="0 0 24 24" aria-hidden="true">${shapes[this.verdict]}</svg>${verdictWords[this.verdict]}
    </span>`;
  }
}

customElements.define("ferrule-verdict", VerdictMark);
