import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from "lit";
import { ApiError } from "../api.ts";
import { bothVersionsStyles } from "../components/both-versions.ts";
import { changeEntries } from "../components/change-entries.ts";
import { emptyNote, whenReady } from "../components/state-notes.ts";
import { undoRefusalBox } from "../components/undo-refusal.ts";
import type { DisplaySettings } from "../display-settings.ts";
import { tell } from "../events.ts";
import { Fetched, failed } from "../fetched.ts";
import {
  type Change,
  type HistoryEntry,
  type HistoryOf,
  type HistoryPage,
  historyApi,
  type UndoRefusal,
  undoRefusal,
} from "../history-api.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { moreText, thingHref, thingText, whoText } from "../words/history-words.ts";
import { momentText } from "../words/moment-text.ts";

const pageSize = 30;
/** Most that are brought at once when a change is looked for further down. */
const mostSought = 600;
const linksShown = 3;

/** Who changed what and when, the newest first, of the bench or of one thing; each change can be undone by itself. */
export class HistoryView extends LitElement {
  static override properties = {
    display: {},
    of: {},
    open: { state: true },
    refused: { state: true },
    busy: { state: true },
    whole: { state: true },
  };
  static override styles = [
    baseStyles,
    bothVersionsStyles,
    css`
      ol > li {
        padding: 0.75rem 0;
        border-top: 1px solid var(--line);
      }
      ol > li:first-child {
        border-top: 0;
      }
      li.undone .said {
        text-decoration: line-through;
      }
      .fields {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(16rem, 100%), 1fr));
        gap: 0.4rem 1.25rem;
        margin: 0 0 0.75rem;
      }
      dt {
        font-size: 0.875rem;
        color: var(--ink-soft);
      }
      dd {
        margin: 0;
        overflow-wrap: anywhere;
        white-space: pre-line;
      }
      ins {
        text-decoration: none;
        font-weight: 700;
      }
      .refused {
        border-left: 3px solid var(--refused);
        padding-left: 0.75rem;
      }
      li:focus {
        outline: 3px solid var(--focus);
        outline-offset: 2px;
      }
    `,
  ];
  declare display: DisplaySettings;
  /** The thing whose history it is; all of the bench without one. */
  declare of: HistoryOf | undefined;
  /** Changes that are opened, to see what each did. */
  declare private open: ReadonlySet<number>;
  declare private refused: { readonly number: number; readonly why: UndoRefusal } | undefined;
  declare private busy: boolean;
  /** All that a change touched, where more of it was asked for than comes with the list. */
  declare private whole: ReadonlyMap<
    number,
    { readonly entries: readonly HistoryEntry[]; readonly next: number | null }
  >;
  #count = pageSize;
  readonly #page: Fetched<HistoryPage> = new Fetched<HistoryPage>(this, () => this.#ask());

  constructor() {
    super();
    this.open = new Set();
    this.busy = false;
    this.whole = new Map();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("of") && this.hasUpdated) void this.#page.again();
  }

  override render() {
    return html`<div class="stack" @ferrule-retry=${() => this.#page.again()}>
      <h1 tabindex="-1">${this.of ? `What changed: ${thingText(this.of)}` : "History"}</h1>
      ${this.of ? html`<p><a href=${thingHref({ ...this.of, before: null, after: null })}>Back to ${thingText(this.of)}</a> · <a href="/history">All of the bench</a></p>` : html`<p class="soft">Who changed what, the newest first. Each change can be undone by itself, and so can the undoing.</p>`}
      ${whenReady(this.#page.state, "the history", (page) => this.renderPage(page))}
    </div>`;
  }

  private renderPage({ changes, next }: HistoryPage): TemplateResult {
    if (changes.length === 0)
      return emptyNote("Nothing yet", "What is added, changed or deleted from now on stands here.");
    return html`<section class="ticket" aria-label="Changes">
      <ol class="plain" role="list">${changes.map((change) => this.renderChange(change))}</ol>
      ${next === null ? html`<p class="small soft">That is all that is kept.</p>` : html`<button ?disabled=${this.busy} @click=${this.#older}>Show older</button>`}
    </section>`;
  }

  private renderChange(change: Change): TemplateResult {
    const { number, at, who, words, undoneBy } = change;
    const isOpen = this.open.has(number);
    return html`<li id="change-${number}" tabindex="-1" class=${undoneBy === null ? "" : "undone"}>
      <div class="row between">
        <div>
          <strong class="said">${words}</strong>
          <p class="small soft"><span class="mono">${number}</span> · ${whoText(who)} · <time datetime=${at}>${momentText(at)}</time>${undoneBy === null ? "" : html` · <strong>undone by change ${undoneBy}</strong>`}</p>
        </div>
        ${undoneBy === null ? html`<button aria-label="Undo change ${number}: ${words}" ?disabled=${this.busy} @click=${() => this.#undo(change)}>Undo</button>` : ""}
      </div>
      ${this.renderLinks(change)}
      <details @toggle=${(event: Event) => this.#toggled(number, event)}><summary>What changed</summary>${isOpen ? this.renderWhole(change) : ""}</details>
      ${this.refused?.number === number ? undoRefusalBox(this.refused.why, this.display, (later) => void this.#see(later)) : nothing}
    </li>`;
  }

  private renderLinks({ entries, things }: Change): TemplateResult {
    const shown = entries.slice(0, linksShown);
    const more = things - shown.length;
    return html`<p class="small">${shown.map((entry, at) => html`${at > 0 ? ", " : ""}<a href=${thingHref(entry)}>${thingText(entry)}</a>`)}${more > 0 ? ` ${moreText(more)}` : ""}</p>`;
  }

  private renderWhole(change: Change): TemplateResult {
    const { entries, next } = this.whole.get(change.number) ?? {
      entries: change.entries,
      next: change.entries.length,
    };
    const left = change.things - entries.length;
    return html`${changeEntries(entries, this.display)}
      ${left > 0 && next !== null ? html`<button @click=${() => this.#more(change.number, next, entries)}>Show ${left} more</button>` : ""}`;
  }

  /** As many as are shown already, so that what was undone further down says so too. */
  async #ask(): Promise<HistoryPage> {
    let page: HistoryPage = { changes: [], next: null };
    do {
      const limit = Math.min(200, this.#count - page.changes.length);
      const { changes, next } = await historyApi.list(limit, this.of, page.next);
      page = { changes: [...page.changes, ...changes], next };
    } while (page.next !== null && page.changes.length < this.#count);
    return page;
  }

  #toggled(number: number, { target }: Event): void {
    const open = new Set(this.open);
    if ((target as HTMLDetailsElement).open) open.add(number);
    else open.delete(number);
    this.open = open;
  }

  readonly #older = async (): Promise<void> => {
    this.#count += pageSize;
    this.busy = true;
    await this.#page.again();
    this.busy = false;
  };

  async #more(number: number, from: number, before: readonly HistoryEntry[]): Promise<void> {
    const { entries, next } = await historyApi.one(number, from);
    this.whole = new Map([...this.whole, [number, { entries: [...before, ...entries], next }]]);
  }

  async #undo(change: Change): Promise<void> {
    const { number } = change;
    this.busy = true;
    this.refused = await historyApi.undo(number).then(
      (reply) => this.#undone(number, reply.change.number),
      (error: unknown) => refusalOf(number, error),
    );
    this.busy = false;
    await this.#page.again();
  }

  #undone(number: number, undoing: number): undefined {
    tell(this, "ferrule-done", {
      text: `Change ${number} is undone.`,
      undo: () => historyApi.undo(undoing),
      undone: `Change ${number} holds again.`,
    });
    return undefined;
  }

  /** Goes to a change, further down if need be. */
  async #see(number: number): Promise<void> {
    const isThere = () =>
      this.#page.state.is === "ready" &&
      this.#page.state.value.changes.some((each) => each.number === number);
    while (
      !isThere() &&
      this.#count < mostSought &&
      this.#page.state.is === "ready" &&
      this.#page.state.value.next !== null
    )
      await this.#older();
    await this.updateComplete;
    const row = this.renderRoot.querySelector<HTMLElement>(`#change-${number}`);
    if (row) row.focus();
    else tell(this, "ferrule-go", { path: "/history" });
  }
}

function refusalOf(number: number, error: unknown) {
  if (error instanceof ApiError) return { number, why: undoRefusal(error) };
  throw failed(error);
}

customElements.define("ferrule-history-view", HistoryView);
