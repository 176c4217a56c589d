import { css, html, LitElement, type TemplateResult } from "lit";
import { keyed } from "lit/directives/keyed.js";
import { api } from "./api.ts";
import type { Clash, Settled } from "./clash/clash.ts";
import { clashDesk } from "./clash/clash-desk.ts";
import type { ClashDialog } from "./components/clash-dialog.ts";
import { deviceApi } from "./device-api.ts";
import { type DisplaySettings, defaultDisplay } from "./display-settings.ts";
import type { News } from "./events.ts";
import { failed } from "./fetched.ts";
import { countText } from "./format/number.ts";
import { type Elsewhere, live } from "./live/live.ts";
import type { Renamed } from "./offline/send-waiting.ts";
import { signal } from "./offline/signal.ts";
import { type Route, routeFrom } from "./route.ts";
import { baseStyles } from "./styles/base-styles.ts";
import { isHere, loadView } from "./views/load-view.ts";
import "./components/live-line.ts";
import "./components/page-header.ts";
import "./views/bench-view.ts";
import "./views/claims-view.ts";
import "./views/exchange-view.ts";
import "./views/part-form-view.ts";
import "./views/part-view.ts";
import "./views/questions-view.ts";
import "./views/wants-view.ts";

/** The page: its header, one view at a time, and the line that says what was done. */
export class FerruleApp extends LitElement {
  static override properties = {
    path: { state: true },
    display: { state: true },
    done: { state: true },
    turn: { state: true },
    missing: { state: true },
    judged: { state: true },
    shared: { state: true },
    pasted: { state: true },
  };
  static override styles = [
    baseStyles,
    css`
      :host {
        min-height: 100vh;
        color: var(--ink);
      }
      main {
        max-width: 80rem;
        margin: 0 auto;
        padding: 1rem 1rem 6rem;
      }
      .skip {
        position: absolute;
        left: -999rem;
      }
      .skip:focus {
        left: 1rem;
        top: 0.5rem;
        z-index: 2;
      }
      .done {
        position: fixed;
        inset: auto 0 0 0;
        padding: 0 1rem;
        pointer-events: none;
        z-index: 3;
      }
      .done > div {
        pointer-events: auto;
        max-width: 40rem;
        margin: 0 auto 1rem;
        padding: 0.6rem 1rem;
        background: var(--ink);
        color: var(--ticket);
        border-radius: 4px;
        display: flex;
        flex-wrap: wrap;
        gap: 0.5rem 1rem;
        align-items: center;
        justify-content: space-between;
      }
      @media print {
        nav,
        ferrule-header,
        .done {
          display: none;
        }
        main {
          max-width: none;
          padding: 0;
        }
      }
    `,
  ];
  declare private path: string;
  declare private display: DisplaySettings;
  declare private done: News["ferrule-done"] | undefined;
  declare private turn: number;
  /** The view whose code could not be fetched. */
  declare private missing: string | undefined;
  /** The judgement of the listing that was gone to, until something else is. */
  declare private judged: News["ferrule-go"]["judged"];
  /** Text that another app has shared, until something else is gone to. */
  declare private shared: string | undefined;
  /** A listing that was pasted where nothing was being typed, until something else is gone to. */
  declare private pasted: string | undefined;
  /** Done when the code of the view that is gone to has come. */
  #arrived: Promise<void> | undefined;

  constructor() {
    super();
    this.shared = takeShared();
    this.path = location.pathname;
    this.display = defaultDisplay;
    this.turn = 0;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener("popstate", this.#moved);
    window.addEventListener("paste", this.#pasted);
    signal.addEventListener("caught-up", this.#caughtUp);
    // A browser that keeps nothing shows the page all the same.
    void signal.start().catch(() => undefined);
    clashDesk.ask = (clash) => this.#askAbout(clash);
    live.addEventListener("elsewhere", this.#changedElsewhere);
    live.addEventListener("open", this.#reached);
    void this.#listen();
    void api.settings().then((display) => this.#show(display), failed);
  }

  protected override updated(): void {
    const { view } = routeFrom(this.path);
    if (!isHere(view) && this.missing !== view) this.#arrived ??= this.#fetch(view);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener("popstate", this.#moved);
    window.removeEventListener("paste", this.#pasted);
    signal.removeEventListener("caught-up", this.#caughtUp);
    live.removeEventListener("elsewhere", this.#changedElsewhere);
    live.removeEventListener("open", this.#reached);
  }

  override render() {
    return html`
      <nav aria-label="Short cut"><a class="skip button" href="#content" @click=${this.#skip}>Skip to the content</a></nav>
      <ferrule-header .path=${this.path}></ferrule-header>
      <main
        id="content"
        @ferrule-go=${(event: CustomEvent<News["ferrule-go"]>) => this.#go(event.detail.path, event.detail.judged)}
        @ferrule-done=${(event: CustomEvent<News["ferrule-done"]>) => this.#say(event.detail)}
        @ferrule-display=${(event: CustomEvent<DisplaySettings>) => this.#show(event.detail)}
      >
        ${keyed(`${this.path} ${this.turn}`, this.renderRoute(routeFrom(this.path)))}
      </main>
      <ferrule-live-line></ferrule-live-line>
      <div class="done" role="status">${this.renderDone()}</div>
    `;
  }

  /** Most views are fetched when they are first gone to, so that the bench opens quickly. */
  private renderRoute(route: Route): TemplateResult {
    if (isHere(route.view)) return this.renderView(route);
    if (this.missing !== route.view) return html`<p class="view soft" role="status">Getting the page …</p>`;
    return html`<div class="view stack"><h1 tabindex="-1">This page could not be fetched</h1>
      <p>Is Ferrule still running?</p>
      <button class="main" @click=${() => location.reload()}>Try again</button></div>`;
  }

  private renderView(route: Route): TemplateResult {
    const { display } = this;
    switch (route.view) {
      case "bench":
        return html`<ferrule-bench-view class="view" .display=${display}></ferrule-bench-view>`;
      case "part-form":
        return html`<ferrule-part-form-view class="view" .display=${display} .partId=${route.id}></ferrule-part-form-view>`;
      case "part":
        return html`<ferrule-part-view class="view" .display=${display} .partId=${route.id}></ferrule-part-view>`;
      case "club":
        return html`<ferrule-club-view class="view" .display=${display} .headId=${route.head} .clubId=${route.id}></ferrule-club-view>`;
      case "refusal":
        return html`<ferrule-refusal-view class="view" .display=${display} .pair=${route}></ferrule-refusal-view>`;
      case "wants":
        return html`<ferrule-wants-view class="view" .display=${display}></ferrule-wants-view>`;
      case "questions":
        return html`<ferrule-questions-view class="view" .display=${display}></ferrule-questions-view>`;
      case "exchange":
        return html`<ferrule-exchange-view class="view"></ferrule-exchange-view>`;
      case "claims":
        return html`<ferrule-claims-view class="view"></ferrule-claims-view>`;
      case "settings":
        return html`<ferrule-settings-view class="view" .display=${display}></ferrule-settings-view>`;
      case "listings":
        return html`<ferrule-listings-view class="view" .display=${display} .shared=${this.shared} .pasted=${this.pasted}></ferrule-listings-view>`;
      case "listing":
        return html`<ferrule-listing-view class="view" .display=${display} .sightingId=${route.id} .judged=${this.judged}></ferrule-listing-view>`;
      case "plan":
        return html`<ferrule-plan-view class="view"></ferrule-plan-view>`;
      case "watch":
        return html`<ferrule-watch-view class="view"></ferrule-watch-view>`;
      case "batch":
        return html`<ferrule-batch-view class="view" .batchId=${route.id}></ferrule-batch-view>`;
      case "books":
        return html`<ferrule-books-view class="view"></ferrule-books-view>`;
      case "sell":
        return html`<ferrule-sell-view class="view" .chosen=${route.parts}></ferrule-sell-view>`;
      case "sheet":
        return html`<ferrule-sheet-view class="view" .display=${display} .headId=${route.head} .clubId=${route.id} .choices=${route.build}></ferrule-sheet-view>`;
      case "inspection":
        return html`<ferrule-inspection-view class="view" .partId=${route.id}></ferrule-inspection-view>`;
      case "advert":
        return html`<ferrule-advert-view class="view" .parts=${route.parts}></ferrule-advert-view>`;
      case "prices":
        return html`<ferrule-prices-view class="view"></ferrule-prices-view>`;
      case "costs":
        return html`<ferrule-costs-view class="view"></ferrule-costs-view>`;
      case "models":
        return html`<ferrule-models-view class="view"></ferrule-models-view>`;
      case "together":
        return html`<ferrule-together-view class="view"></ferrule-together-view>`;
      case "labels":
        return html`<ferrule-labels-view class="view" .display=${display} .chosen=${route.parts}></ferrule-labels-view>`;
      case "code":
        return html`<ferrule-code-view class="view" .code=${route.code}></ferrule-code-view>`;
      case "history":
        return html`<ferrule-history-view class="view" .display=${display} .of=${route.of}></ferrule-history-view>`;
      case "devices":
        return html`<ferrule-devices-view class="view"></ferrule-devices-view>`;
      case "waiting":
        return html`<ferrule-waiting-view class="view"></ferrule-waiting-view>`;
      case "nowhere":
        return html`<div class="view stack"><h1 tabindex="-1">There is no such page</h1><a class="button" href="/">Back to the bench</a></div>`;
    }
  }

  private renderDone() {
    if (!this.done) return "";
    return html`<div>
      <span>${this.done.text}</span>
      <span class="row">
        ${this.done.undoable || this.done.undo ? html`<button @click=${this.#undo}>Undo</button>` : ""}
        <button @click=${() => this.#say(undefined)}>Close</button>
      </span>
    </div>`;
  }

  protected override firstUpdated(): void {
    this.addEventListener("click", this.#followed);
  }

  /** Links inside the page change the view; everything else is the browser's. */
  readonly #followed = (event: MouseEvent): void => {
    const link = event.composedPath().find((at): at is HTMLAnchorElement => at instanceof HTMLAnchorElement);
    const isPlain =
      !event.defaultPrevented &&
      event.button === 0 &&
      !event.metaKey &&
      !event.ctrlKey &&
      !event.shiftKey &&
      !event.altKey;
    if (
      !link ||
      !isPlain ||
      link.origin !== location.origin ||
      /^\/(api\/|pair$|trust$)/.test(link.pathname) ||
      link.hasAttribute("download")
    )
      return;
    event.preventDefault();
    this.#say(undefined);
    this.#go(link.pathname);
  };

  /** Words pasted where nothing is being typed are a listing that somebody wonders about. */
  readonly #pasted = (event: ClipboardEvent): void => {
    const text = event.clipboardData?.getData("text/plain") ?? "";
    if (event.defaultPrevented || isTyping() || !/\S\s+\S/.test(text)) return;
    event.preventDefault();
    this.#go("/listings");
    this.pasted = text;
  };

  readonly #moved = (): void => {
    this.path = location.pathname;
    this.judged = undefined;
    void this.#focusHeading();
  };

  /** What was entered without a signal has arrived: what is shown follows, also where the bench has another name for it. */
  readonly #caughtUp = (event: Event): void => {
    const { sent, renamed } = (event as CustomEvent<{ sent: number; renamed: readonly Renamed[] }>).detail;
    const here = renamed.reduce(
      (path, { from, to }) => path.replace(`/${encodeURIComponent(from)}`, `/${encodeURIComponent(to)}`),
      location.pathname,
    );
    if (here !== location.pathname) history.replaceState(null, "", here);
    this.path = here;
    this.judged = undefined;
    this.pasted = undefined;
    if (!isTyping()) this.turn += 1;
    this.#say({
      text: `${countText(sent, "thing")} entered without a signal ${sent === 1 ? "has" : "have"} reached the bench.`,
    });
  };

  /** What is kept for when there is no signal follows, and so does how things are shown. */
  readonly #changedElsewhere = (event: Event): void => {
    signal.changed();
    const { changes, isAll } = (event as CustomEvent<Elsewhere>).detail;
    if (isAll || changes.some(({ ids }) => ids["settings"]))
      void api.settings().then((display) => this.#show(display), failed);
  };

  readonly #reached = (): void => void signal.look();

  /** Which of the changes are this page's own, the bench tells by the device; at the machine that serves there is none. */
  async #listen(): Promise<void> {
    const isAtTheBench = /^(localhost|127\.0\.0\.1|\[::1\])$/.test(location.hostname);
    if (!isAtTheBench) live.device = await deviceApi.devices().then(({ here }) => here, failedToNull);
    live.start();
  }

  /** What two changed at once is shown in a dialog that few ever need. */
  async #askAbout(clash: Clash): Promise<Settled> {
    await import("./components/clash-dialog.ts");
    const dialog = document.createElement("ferrule-clash-dialog") as ClashDialog;
    dialog.clash = clash;
    dialog.display = this.display;
    return dialog.ask();
  }

  readonly #skip = (event: Event): void => {
    event.preventDefault();
    this.#heading()?.focus();
  };

  readonly #undo = async (): Promise<void> => {
    const { undo = broughtBack, undone } = this.done ?? {};
    const text = await undo().then(
      (back) => undone ?? (typeof back === "string" ? back : "It is back."),
      (error: unknown) => `${failed(error).message}.`,
    );
    this.judged = undefined;
    this.turn += 1;
    this.#say({ text });
    await this.#focusHeading();
  };

  async #fetch(view: Route["view"]): Promise<void> {
    await loadView(view).catch(() => {
      this.missing = view;
    });
    this.#arrived = undefined;
    this.requestUpdate();
  }

  #go(path: string, judged?: News["ferrule-go"]["judged"]): void {
    if (path !== location.pathname) history.pushState(null, "", path);
    this.path = path;
    this.shared = undefined;
    this.pasted = undefined;
    this.judged = judged;
    this.turn += 1;
    window.scrollTo(0, 0);
    void this.#focusHeading();
  }

  #say(done: News["ferrule-done"] | undefined): void {
    this.done = done;
  }

  #show(display: DisplaySettings): void {
    this.display = display;
    document.documentElement.dataset["theme"] = display.theme;
  }

  #heading(): HTMLElement | null | undefined {
    const view = this.renderRoot.querySelector<HTMLElement>(".view");
    return view?.shadowRoot?.querySelector("h1") ?? view?.querySelector("h1");
  }

  /** Where typing begins, in a view that is there to be typed into. */
  #begin(): HTMLElement | null | undefined {
    return this.renderRoot.querySelector(".view")?.shadowRoot?.querySelector<HTMLElement>("[data-begin]");
  }

  async #focusHeading(): Promise<void> {
    await this.updateComplete;
    await this.#arrived;
    await this.updateComplete;
    await (this.renderRoot.querySelector(".view") as LitElement | null)?.updateComplete;
    (this.#begin() ?? this.#heading())?.focus({ preventScroll: true });
    document.title = `${this.#heading()?.textContent?.trim() ?? "Bench"} · Ferrule`;
  }
}

/** Undoes the bench's last delete, and says what came back. */
async function broughtBack(): Promise<string> {
  const { restored } = await api.undo();
  const [first] = [...restored.parts, ...restored.claims, ...restored.joints];
  return `Brought back ${first?.id ?? "what was there"}.`;
}

const failedToNull = (): null => null;

/** Text that another app shared is in the address only until the page is open. */
function takeShared(): string | undefined {
  if (location.pathname !== "/share") return undefined;
  const given = new URLSearchParams(location.search);
  history.replaceState(null, "", "/listings");
  const words = ["title", "text", "url"].map((name) => given.get(name)?.trim()).filter((each) => each);
  return [...new Set(words)].join("\n");
}

/** Whether something is being typed, which would be lost if the view were drawn anew. */
function isTyping(): boolean {
  let at: Element | null | undefined = document.activeElement;
  while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
  return at?.matches("input, textarea, select") ?? false;
}

customElements.define("ferrule-app", FerruleApp);
