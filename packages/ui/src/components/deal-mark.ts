import type { DealVerdict } from "@ferrule/core";
import { css, html, LitElement, svg, type TemplateResult } from "lit";
import { dealVerdictWords } from "../words/deal-words.ts";
import { markStyles } from "./mark-styles.ts";

/** Each verdict has a shape of its own, so that neither colour nor size has to tell them apart. */
const shapes: Readonly<Record<DealVerdict, TemplateResult>> = {
  buy: svg`<circle cx="12" cy="12" r="10" fill="currentColor"/><path d="M7 12.5l3.5 3.5L17 8.5" class="cut"/>`,
  "offer-up-to": svg`<path d="M2 12L10 3h11a1 1 0 0 1 1 1v16a1 1 0 0 1-1 1H10z" fill="currentColor"/><path d="M15.5 16V8M12 11l3.5-3.5L19 11" class="cut"/>`,
  "ask-first": svg`<path d="M12 1.2L22.8 12 12 22.8 1.2 12z" fill="none" stroke="currentColor" stroke-width="2"/><path d="M9.4 9.8a2.7 2.7 0 1 1 3.9 2.4c-.9.5-1.3 1-1.3 1.9" class="line"/><circle cx="12" cy="16.8" r="1.2" fill="currentColor"/>`,
  leave: svg`<path d="M7.5 1.5h9l6 6v9l-6 6h-9l-6-6v-9z" fill="currentColor"/><path d="M7 12h10" class="cut"/>`,
};

/** What to do about a listing, by word and shape. `words` say it with its amount. */
export class DealMark extends LitElement {
  static override properties = { verdict: {}, words: {} };
  static override styles = [
    markStyles,
    css`
      .buy {
        color: var(--fits);
      }
      .offer-up-to {
        color: var(--work);
      }
      .ask-first {
        color: var(--unsettled);
      }
      .leave {
        color: var(--refused);
      }
    `,
  ];
  declare verdict: DealVerdict;
  declare words: string | undefined;

  override render() {
    return html`<span class=${this.verdict}>
      <svg viewBox="0 0 24 24" aria-hidden="true">${shapes[this.verdict]}</svg>${this.words ?? dealVerdictWords[this.verdict]}
    </span>`;
  }
}

customElements.define("ferrule-deal-mark", DealMark);
