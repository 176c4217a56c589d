import { css, html, LitElement } from "lit";
import { countText } from "../format/number.ts";
import { type Elsewhere, live } from "../live/live.ts";
import { baseStyles } from "../styles/base-styles.ts";

const shownMs = 10_000;

/** A small line that tells what somebody else has just changed, and goes by itself. */
export class LiveLine extends LitElement {
  static override properties = { text: { state: true } };
  static override styles = [
    baseStyles,
    css`
      :host {
        position: fixed;
        left: 1rem;
        bottom: 0.5rem;
        z-index: 2;
        max-width: calc(100vw - 2rem);
      }
      a {
        display: inline-flex;
        align-items: center;
        min-height: 44px;
        padding: 0.2rem 0.7rem;
        background: var(--ticket);
        border: 1px solid var(--line-strong);
        border-radius: 4px;
        font-size: 0.875rem;
        text-decoration: none;
        overflow-wrap: anywhere;
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];
  declare private text: string;
  #gone: ReturnType<typeof setTimeout> | undefined;

  constructor() {
    super();
    this.text = "";
  }

  override connectedCallback(): void {
    super.connectedCallback();
    live.addEventListener("elsewhere", this.#heard);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    live.removeEventListener("elsewhere", this.#heard);
    clearTimeout(this.#gone);
  }

  override render() {
    return html`<div role="status" aria-live="polite">${this.text ? html`<a href="/history">${this.text}</a>` : ""}</div>`;
  }

  readonly #heard = (event: Event): void => {
    const { changes } = (event as CustomEvent<Elsewhere>).detail;
    const last = changes.at(-1);
    if (!last) return;
    const { name, means } = last.who;
    const who = name ?? (means === "command-line" ? "The command line" : "Another page");
    const more = changes.length > 1 ? ` (and ${countText(changes.length - 1, "more change")})` : "";
    this.text = `${who}: ${last.words}${more}`;
    clearTimeout(this.#gone);
    this.#gone = setTimeout(() => (this.text = ""), shownMs);
  };
}

customElements.define("ferrule-live-line", LiveLine);
