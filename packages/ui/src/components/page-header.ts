import { css, html, LitElement } from "lit";
import { baseStyles } from "../styles/base-styles.ts";

const places = [
  ["/", "Bench"],
  ["/wants", "Wants"],
  ["/questions", "Questions"],
  ["/claims", "Fit claims"],
  ["/exchange", "Import, export"],
  ["/settings", "Settings"],
] as const;

/** The name of the place and the ways to the others. */
export class PageHeader extends LitElement {
  static override properties = { path: {} };
  static override styles = [
    baseStyles,
    css`
      header {
        background: var(--ticket);
        border-bottom: 2px dashed var(--line);
      }
      .inner {
        max-width: 80rem;
        margin: 0 auto;
        padding: 0.25rem 1rem;
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 0 1.25rem;
      }
      .name {
        font-family: var(--mono);
        font-weight: 700;
        font-size: 1.1rem;
        letter-spacing: 0.12em;
        text-transform: uppercase;
        text-decoration: none;
        display: inline-flex;
        align-items: center;
        gap: 0.5rem;
        min-height: 44px;
      }
      .name svg {
        width: 1.8rem;
        height: 1.8rem;
        color: var(--accent);
      }
      ul {
        display: flex;
        flex-wrap: wrap;
      }
      li a {
        display: inline-flex;
        align-items: center;
        min-height: 44px;
        padding: 0 0.7rem;
        text-decoration: none;
        border-bottom: 3px solid transparent;
      }
      li a:hover {
        border-color: var(--line-strong);
      }
      li a[aria-current="page"] {
        border-color: var(--accent);
      }
      .add {
        margin-left: auto;
      }
      @media (max-width: 40rem) {
        nav {
          order: 3;
          width: 100%;
          margin: 0 -0.7rem;
        }
      }
    `,
  ];
  declare path: string;

  override render() {
    return html`<header>
      <div class="inner">
        <a class="name" href="/">
          <svg viewBox="0 0 32 32" aria-hidden="true">
            <path d="M3 7h26v6a3 3 0 0 0 0 6v6H3v-6a3 3 0 0 0 0-6z" fill="none" stroke="currentColor" stroke-width="2.2" />
            <path d="M11 22l7-12 3 2-7 12z" fill="currentColor" />
          </svg>
          Ferrule
        </a>
        <nav aria-label="Places">
          <ul class="plain">
            ${places.map(([path, word]) => html`<li><a href=${path} aria-current=${path === this.path ? "page" : "false"}>${word}</a></li>`)}
          </ul>
        </nav>
        <a class="button main add" href="/add">Add a part</a>
      </div>
    </header>`;
  }
}

customElements.define("ferrule-header", PageHeader);
