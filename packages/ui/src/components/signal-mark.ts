import { css, html, LitElement } from "lit";
import { countText } from "../format/number.ts";
import { signal } from "../offline/signal.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { momentText } from "../words/moment-text.ts";

/** Says in the header when there is no signal, and what waits or is to be settled; nothing while all is well. */
export class SignalMark extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host([hidden]) {
        display: none;
      }
      a {
        display: inline-flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 0 0.3rem;
        min-height: 44px;
        padding: 0 0.6rem;
        border: 1.5px dashed var(--line-strong);
        border-radius: 4px;
        font-size: 0.875rem;
        text-decoration: none;
      }
      span + span::before {
        content: "· ";
      }
      @media (max-width: 40rem) {
        a {
          display: flex;
        }
      }
      .settle {
        color: var(--refused);
        font-weight: 700;
      }
    `,
  ];

  override connectedCallback(): void {
    super.connectedCallback();
    signal.addEventListener("change", this.#changed);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    signal.removeEventListener("change", this.#changed);
  }

  override render() {
    const { isLost, asOf, waiting, toSettle } = signal.state;
    this.hidden = !isLost && waiting === 0 && toSettle === 0;
    if (this.hidden) return html``;
    return html`<a href="/waiting">
      ${isLost ? html`<span>○ No signal${asOf ? `, as of ${momentText(asOf)}` : ""}</span>` : ""}
      ${waiting > 0 ? html`<span>${waiting} waiting</span>` : ""}
      ${toSettle > 0 ? html`<span class="settle">! ${countText(toSettle, "thing")} to settle</span>` : ""}
    </a>`;
  }

  readonly #changed = (): void => this.requestUpdate();
}

customElements.define("ferrule-signal-mark", SignalMark);
