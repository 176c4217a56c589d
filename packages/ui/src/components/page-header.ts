import { css, html, LitElement } from "lit";
import "./signal-mark.ts";
import { baseStyles } from "../styles/base-styles.ts";

type Place = readonly [path: string, word: string];

const places: readonly Place[] = [
  ["/", "Bench"],
  ["/plan", "Plan"],
  ["/listings", "Listings"],
  ["/watch", "Watchlist"],
  ["/books", "Books"],
];

const morePlaces: readonly Place[] = [
  ["/together", "What goes with what"],
  ["/questions", "Questions"],
  ["/claims", "Fit claims"],
  ["/prices", "Prices"],
  ["/costs", "Costs"],
  ["/models", "Models"],
  ["/labels", "Labels"],
  ["/code", "Find by code"],
  ["/history", "History"],
  ["/exchange", "Import, export"],
  ["/devices", "Devices"],
  ["/settings", "Settings"],
];

/** The name of the place and the ways to the others. */
export class PageHeader extends LitElement {
  static override properties = { path: {}, open: { state: true } };
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
      li a,
      .toggle {
        display: inline-flex;
        align-items: center;
        min-height: 44px;
        padding: 0 0.7rem;
        border: 0;
        border-bottom: 3px solid transparent;
        border-radius: 0;
        background: none;
        font-weight: 400;
        text-decoration: none;
      }
      li a:hover,
      .toggle:hover {
        border-color: var(--line-strong);
      }
      li a[aria-current="page"],
      .toggle.here {
        border-color: var(--accent);
      }
      .toggle::after {
        content: "";
        margin-left: 0.4rem;
        border: 0.3rem solid transparent;
        border-top-color: currentColor;
        transform: translateY(0.15rem);
      }
      .toggle[aria-expanded="true"]::after {
        transform: translateY(-0.15rem) rotate(180deg);
      }
      .more {
        position: relative;
      }
      .more ul {
        display: block;
        position: absolute;
        right: 0;
        top: 100%;
        z-index: 4;
        min-width: 11rem;
        padding: 0.25rem 0;
        background: var(--ticket);
        border: 1.5px solid var(--line-strong);
        border-radius: 4px;
        box-shadow: 0 4px 12px rgb(0 0 0 / 25%);
      }
      .more li a {
        display: flex;
        border-bottom: 0;
        border-left: 3px solid transparent;
      }
      .add {
        margin-left: auto;
      }
      @media (max-width: 40rem) {
        ferrule-signal-mark {
          order: 4;
          width: 100%;
          margin: 0.25rem 0;
        }
        nav {
          order: 3;
          width: calc(100% + 1.4rem);
          margin: 0 -0.7rem;
        }
        nav > ul {
          justify-content: space-between;
        }
        li a,
        .toggle {
          padding: 0 0.3rem;
          font-size: 0.9rem;
        }
      }
    `,
  ];
  declare path: string;
  declare private open: boolean;

  constructor() {
    super();
    this.open = false;
  }

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
            ${places.map((place) => this.renderPlace(place))}
            <li class="more" @keydown=${this.#escape} @focusout=${this.#left}>${this.renderMore()}</li>
          </ul>
        </nav>
        <ferrule-signal-mark></ferrule-signal-mark>
        <a class="button main add" href="/add">Add a part</a>
      </div>
    </header>`;
  }

  private renderPlace([path, word]: Place) {
    const isHere = path === this.path || (path !== "/" && this.path.startsWith(`${path}/`));
    return html`<li><a href=${path} aria-current=${isHere ? "page" : "false"}>${word}</a></li>`;
  }

  private renderMore() {
    const isHere = morePlaces.some(([path]) => path === this.path);
    return html`<button class="toggle ${isHere ? "here" : ""}" aria-expanded=${this.open} @click=${() => (this.open = !this.open)}>More</button>
      ${this.open ? html`<ul class="plain" @click=${this.#close}>${morePlaces.map((place) => this.renderPlace(place))}</ul>` : ""}`;
  }

  /** A link closes what it was in only after it has been followed. */
  readonly #close = () => {
    setTimeout(() => (this.open = false));
  };

  readonly #escape = (event: KeyboardEvent) => {
    if (event.key !== "Escape" || !this.open) return;
    this.open = false;
    this.renderRoot.querySelector<HTMLElement>(".toggle")?.focus();
  };

  readonly #left = (event: FocusEvent) => {
    const to = event.relatedTarget as Node | null;
    if (to && !(event.currentTarget as HTMLElement).contains(to)) this.open = false;
  };
}

customElements.define("ferrule-header", PageHeader);
