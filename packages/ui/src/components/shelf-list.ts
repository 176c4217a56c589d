import type { Refusal } from "@ferrule/core";
import { css, html, LitElement, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import { ApiError, tookTheirs } from "../api.ts";
import { tell } from "../events.ts";
import { failed } from "../fetched.ts";
import type { RecordField } from "../form/record-field.ts";
import { countText } from "../format/number.ts";
import { OpenThing } from "../live/open-thing.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { meanwhileNote } from "./meanwhile-note.ts";
import { emptyNote } from "./state-notes.ts";
import "./record-form.ts";

/** A kept thing, whatever else it holds. */
interface Kept {
  readonly id: string;
}

/** What a list of kept things needs to be shown, added to, changed and deleted from. */
export interface ShelfKind {
  /** "price", "model", "line": what one of them is called. */
  readonly word: string;
  /** What several are called, where it is more than an s. */
  readonly many?: string;
  /** Whether the server can bring a deleted one back. */
  readonly undoable: boolean;
  readonly emptyText: string;
  readonly title: (thing: never) => string;
  readonly facts: (thing: never) => readonly (string | undefined | false)[];
  readonly fields: (thing: never | undefined) => readonly RecordField[];
  /** The record that the form is filled from, and the thing a filled-in form describes. */
  readonly opened: (thing: never | undefined) => unknown;
  readonly closed: (record: Readonly<Record<string, unknown>>, before: never | undefined) => unknown;
  readonly add: (thing: unknown) => Promise<unknown>;
  /** `before` is the thing as the form was opened with it, or as it was shown. */
  readonly put: (id: string, thing: unknown, before: object) => Promise<unknown>;
  readonly remove: (id: string, before: object) => Promise<unknown>;
  /** The table of the history that they are kept in, and how to read one of them again; none where they are part of something. */
  readonly table?: string;
  readonly one?: (id: string) => Promise<unknown>;
}

const mostRows = 60;
/** So few can be looked through without a search. */
const fewThings = 8;

/** Kept things in a list: found by words, added, changed in place, deleted with a way back. Tells `ferrule-retry` after each change. */
export class ShelfList extends LitElement {
  static override properties = {
    things: {},
    kind: {},
    text: { state: true },
    open: { state: true },
    trouble: { state: true },
    refusals: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    css`
      li {
        padding: 0.5rem 0;
        border-top: 1px solid var(--line);
        overflow-wrap: anywhere;
      }
      li p {
        margin: 0;
      }
      li > .row {
        flex-wrap: nowrap;
        align-items: start;
      }
      li .row .row {
        flex: none;
      }
      @media (max-width: 34rem) {
        li > .row {
          flex-wrap: wrap;
        }
      }
      .search {
        max-width: 24rem;
      }
    `,
  ];
  declare things: readonly Kept[];
  declare kind: ShelfKind;
  declare private text: string;
  /** What is being changed; the empty text for a new one. */
  declare private open: string | undefined;
  declare private trouble: string | undefined;
  declare private refusals: readonly Refusal[];
  /** What is being changed, as it was when its form was opened. */
  #before: Kept | undefined;
  readonly #watched = new OpenThing(this, () => {
    const { table, one } = this.kind;
    const base = this.#before;
    return base && table && one ? { table, id: base.id, base, present: () => one(base.id) } : undefined;
  });

  constructor() {
    super();
    this.things = [];
    this.text = "";
    this.refusals = [];
  }

  override render(): TemplateResult {
    const found = this.found();
    return html`<div class="stack">
      ${this.open === "" ? this.renderForm(undefined) : html`<button class="main" @click=${() => this.#openForm("")}>Add a ${this.kind.word}</button>`}
      ${this.things.length === 0 && !this.#before ? emptyNote(`No ${this.kind.word} yet`, this.kind.emptyText) : this.renderList(found)}
    </div>`;
  }

  private renderList(found: readonly Kept[]): TemplateResult {
    const { word, many } = this.kind;
    const count = (some: readonly Kept[]) => countText(some.length, word, many);
    return html`
      ${this.things.length < fewThings ? "" : this.renderSearch()}
      <p class="small soft" role="status">${found.length === this.things.length ? count(found) : `${found.length} of ${count(this.things)}`}${found.length > mostRows ? `, the first ${mostRows} shown` : ""}</p>
      <ul class="plain">${repeat(
        this.rows(found),
        ({ id }) => id,
        (thing) =>
          html`<li>${thing.id === this.open ? this.renderForm(this.#before) : this.renderRow(thing)}</li>`,
      )}</ul>
    `;
  }

  private renderSearch(): TemplateResult {
    return html`<div class="search"><label for="search">Search</label><input id="search" type="search" autocomplete="off" .value=${this.text} @input=${(event: Event) => (this.text = (event.target as HTMLInputElement).value)} /></div>`;
  }

  private renderRow(thing: Kept): TemplateResult {
    const title = this.kind.title(thing as never);
    return html`<div class="row between">
      <div><strong>${title}</strong><p class="small soft">${this.kind
        .facts(thing as never)
        .filter(Boolean)
        .join(" · ")}</p></div>
      <div class="row">
        <button aria-label="Change ${title}" @click=${() => this.#openForm(thing.id)}>Change</button>
        <button aria-label="Delete ${title}" @click=${() => this.#delete(thing)}>Delete</button>
      </div>
    </div>`;
  }

  private renderForm(thing: Kept | undefined): TemplateResult {
    const { fields, opened, word } = this.kind;
    return html`<section class="ticket" aria-label=${thing ? `Change the ${word}` : `Add a ${word}`}>
      <h2>${thing ? `Change the ${word}` : `Add a ${word}`}</h2>
      ${thing ? meanwhileNote(this.#watched.meanwhile, this.#takeTheirs) : ""}
      <ferrule-record-form
        .fields=${fields(thing as never)}
        .record=${opened(thing as never)}
        .submitWord=${thing ? "Save the change" : `Add the ${word}`}
        .trouble=${this.trouble}
        .refusals=${this.refusals}
        @ferrule-record=${(event: CustomEvent<{ record: Record<string, unknown> }>) => this.#save(event, thing)}
      ><button type="button" @click=${() => this.#close()}>Not now</button></ferrule-record-form>
    </section>`;
  }

  /** What is being changed stays on the page, also where somebody else deletes it meanwhile. */
  private rows(found: readonly Kept[]): readonly Kept[] {
    const rows = found.slice(0, mostRows);
    const before = this.#before;
    return before === undefined || rows.some(({ id }) => id === before.id) ? rows : [before, ...rows];
  }

  private found(): readonly Kept[] {
    const words = this.text.toLowerCase().split(/\s+/).filter(Boolean);
    if (words.length === 0) return this.things;
    return this.things.filter((thing) => {
      const all = [this.kind.title(thing as never), ...this.kind.facts(thing as never)]
        .join(" ")
        .toLowerCase();
      return words.every((word) => all.includes(word));
    });
  }

  async #openForm(id: string): Promise<void> {
    this.#close();
    this.open = id;
    this.#before = this.things.find((thing) => thing.id === id);
    await this.updateComplete;
    const form = this.renderRoot.querySelector<LitElement>("ferrule-record-form");
    await form?.updateComplete;
    form?.focus();
  }

  /** The form begins anew with what is there now, or closes where that is nothing. */
  readonly #takeTheirs = (): void => {
    this.#before = this.#watched.meanwhile?.present as Kept | undefined;
    if (!this.#before) this.#close();
    this.#watched.forget();
    tell(this, "ferrule-retry", undefined);
  };

  #close(): void {
    this.open = undefined;
    this.#before = undefined;
    this.#watched.forget();
    this.trouble = undefined;
    this.refusals = [];
  }

  async #save(
    event: CustomEvent<{ record: Record<string, unknown> }>,
    before: Kept | undefined,
  ): Promise<void> {
    event.stopPropagation();
    const thing = this.kind.closed(event.detail.record, before as never);
    await (before ? this.kind.put(before.id, thing, before) : this.kind.add(thing)).then(
      () => this.#changed(before ? "Kept." : `The ${this.kind.word} is added.`),
      (error: unknown) => this.#refused(error),
    );
  }

  async #delete(thing: Kept): Promise<void> {
    await this.kind.remove(thing.id, thing).then(
      () => this.#changed(`The ${this.kind.word} is deleted.`, this.kind.undoable),
      (error: unknown) => this.#notDeleted(error),
    );
  }

  #notDeleted(error: unknown): void {
    tell(this, "ferrule-done", { text: `${failed(error).message}.` });
    tell(this, "ferrule-retry", undefined);
  }

  #changed(text: string, undoable = false): void {
    this.#close();
    tell(this, "ferrule-done", {
      text,
      undoable,
      ...(undoable && { undone: `The ${this.kind.word} is back.` }),
    });
    tell(this, "ferrule-retry", undefined);
  }

  #refused(error: unknown): void {
    const isLeft = error instanceof ApiError && error.code === tookTheirs;
    if (isLeft) this.#changed(`${error.message}.`);
    else this.#say(error);
  }

  #say(error: unknown): void {
    this.trouble = `${failed(error).message}.`;
    this.refusals = error instanceof ApiError ? error.refusals : [];
  }
}

customElements.define("ferrule-shelf-list", ShelfList);
