import type { Fault, Part, PartKind, Refusal } from "@ferrule/core";
import { css, html, LitElement } from "lit";
import { afterPaint } from "../after-paint.ts";
import { ApiError, api, tookTheirs } from "../api.ts";
import { meanwhileNote } from "../components/meanwhile-note.ts";
import type { PartField } from "../components/part-field.ts";
import "../components/part-field.ts";
import { whenReady } from "../components/state-notes.ts";
import type { DisplaySettings } from "../display-settings.ts";
import { tell } from "../events.ts";
import { Fetched, failed } from "../fetched.ts";
import { type Draft, draftFromPart, fieldsInUse, partFromDraft } from "../form/draft.ts";
import type { FormField } from "../form/form-field.ts";
import { keepDraft, readKeptDraft } from "../form/kept-draft.ts";
import { refusalsAt, refusalText } from "../form/refusals-at.ts";
import { OpenThing } from "../live/open-thing.ts";
import { hrefs } from "../route.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { fieldText } from "../words/field-words.ts";
import { faultsByKind, faultWords, kindWords } from "../words/part-words.ts";

const answers = { "": "Not looked", there: "It is there", "not-there": "Looked, not there" } as const;

/** Adding a part or changing one: the kind first, what matters first, and nothing typed is lost. */
export class PartFormView extends LitElement {
  static override properties = {
    display: {},
    partId: {},
    kind: { state: true },
    draft: { state: true },
    refusals: { state: true },
    trouble: { state: true },
    saving: { state: true },
    isRestOpen: { state: true },
    isWhole: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    css`
      .kinds {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(8.5rem, 1fr));
        gap: 0 0.5rem;
      }
    `,
  ];
  declare display: DisplaySettings;
  declare partId: string | undefined;
  declare private kind: PartKind | undefined;
  declare private draft: Draft;
  declare private refusals: readonly Refusal[];
  declare private trouble: string | undefined;
  declare private saving: boolean;
  /** The fields that matter less are made only once somebody wants to see them. */
  declare private isRestOpen: boolean;
  /** What matters first is shown first, the rest of the form a moment later. */
  declare private isWhole: boolean;
  #before: Part | undefined;
  readonly #part = new Fetched(this, () => this.#load(), "nothing");
  readonly #open = new OpenThing(this, () => {
    const { partId: id } = this;
    return id && this.#before
      ? { table: "parts", id, base: this.#before, present: () => api.part(id) }
      : undefined;
  });

  constructor() {
    super();
    this.draft = {};
    this.refusals = [];
    this.saving = false;
    this.isRestOpen = false;
    this.isWhole = true;
  }

  override render() {
    return html`<div class="stack" @ferrule-retry=${() => this.#part.again()}>
      <h1 tabindex="-1">${this.partId ? `Change ${this.partId}` : "Add a part"}</h1>
      ${whenReady(this.#part.state, "the part", () => this.renderForm())}
    </div>`;
  }

  private renderForm() {
    return html`<form class="stack" novalidate @submit=${this.#submit} @ferrule-answered=${this.#answered}>
      ${this.partId ? meanwhileNote(this.#open.meanwhile, this.#takeTheirs) : ""}
      ${this.renderTrouble()}
      ${this.partId ? "" : this.renderKinds()}
      ${this.kind ? this.renderFields(this.kind) : html`<p class="soft">Choose what it is, and the form asks for what decides most about it.</p>`}
    </form>`;
  }

  private renderTrouble() {
    if (!this.trouble) return "";
    const elsewhere = this.refusals.filter(
      (refusal) => !this.shown().some((path) => refusalsAt([refusal], path).length > 0),
    );
    return html`<div class="ticket" role="alert">
      <p class="refusal">✕ ${this.trouble}</p>
      ${elsewhere.map((refusal) => html`<p>${fieldText(refusal.field)}: ${refusalText(refusal)}</p>`)}
      <p class="small soft">What you typed is still here.</p>
    </div>`;
  }

  private renderKinds() {
    return html`<fieldset class="ticket">
      <legend class="label">What is it?</legend>
      <div class="kinds">
        ${Object.entries(kindWords).map(
          ([kind, word]) => html`<label class="tick">
            <input type="radio" name="kind" .checked=${kind === this.kind} @change=${() => this.#choose(kind as PartKind)} />${word}
          </label>`,
        )}
      </div>
    </fieldset>`;
  }

  private renderFields(kind: PartKind) {
    const { first, rest } = fieldsInUse(kind, this.draft);
    const restInUse = rest.some(({ path }) => this.draft[path] || refusalsAt(this.refusals, path).length > 0);
    return html`
      <section class="ticket stack" aria-labelledby="first">
        <h2 id="first">What matters first</h2>
        <p class="why">Leave out what you do not know: it becomes a question, never a guess. Lengths may be typed as 45 1/4, 45.25 or 115 cm.</p>
        <div class="grid">${first.map((field) => this.renderField(field))}</div>
      </section>
      ${this.isWhole ? this.renderAfterFirst(kind, rest, restInUse) : ""}
    `;
  }

  private renderAfterFirst(kind: PartKind, rest: readonly FormField[], restInUse: boolean) {
    return html`
      <section class="ticket stack" aria-labelledby="faults"><h2 id="faults">Faults</h2>${this.renderFaults(kind)}</section>
      <details class="ticket" ?open=${restInUse} @toggle=${(event: Event) => (this.isRestOpen = (event.target as HTMLDetailsElement).open)}>
        <summary>Everything else</summary>
        <div class="grid">${restInUse || this.isRestOpen ? html`${this.renderId()}${rest.map((field) => this.renderField(field))}` : ""}</div>
      </details>
      <div class="ticket"><label for="note">Note</label>
        <textarea id="note" .value=${this.draft["note"] ?? ""} @input=${this.#typed("note")}></textarea></div>
      <div class="row">
        <button class="main" type="submit" ?disabled=${this.saving}>${this.partId ? "Save the change" : "Put it on the bench"}</button>
        <a class="button" href=${this.partId ? hrefs.part(this.partId) : "/"}>Not now</a>
      </div>
    `;
  }

  private renderField(field: FormField) {
    return html`<ferrule-part-field .field=${field} .draft=${this.draft} .display=${this.display} .refusals=${this.refusals}></ferrule-part-field>`;
  }

  private renderId() {
    if (this.partId) return "";
    return this.renderField({
      path: "id",
      control: "text",
      why: "A short name of your own, such as H7. Left out, one is made up.",
    });
  }

  private renderFaults(kind: PartKind) {
    return html`<p class="why">Looked and found nothing is worth saying too: not looked counts for neither.</p>
      <div class="grid">${faultsByKind[kind].map((fault) => this.renderFault(fault))}</div>`;
  }

  private renderFault(fault: Fault) {
    const name = `fault:${fault}`;
    return html`<div>
      <label for=${name}>${faultWords[fault]}</label>
      <select id=${name} @change=${this.#typed(name)}>
        ${Object.entries(answers).map(([answer, word]) => html`<option value=${answer} ?selected=${(this.draft[name] ?? "") === answer}>${word}</option>`)}
      </select>
    </div>`;
  }

  private shown(): string[] {
    if (!this.kind) return [];
    const { first, rest } = fieldsInUse(this.kind, this.draft);
    return ["id", ...[...first, ...rest].map(({ path }) => path)];
  }

  async #load(): Promise<void> {
    const kept = readKeptDraft(this.partId);
    if (this.partId) {
      const present = await api.part(this.partId);
      this.#before = kept?.before ?? present;
      this.kind = this.#before.kind;
      this.draft = kept?.draft ?? draftFromPart(this.#before, this.display);
    } else if (kept) {
      this.kind = kept.kind;
      this.draft = kept.draft;
    }
  }

  #choose(kind: PartKind): void {
    afterPaint(() => {
      this.kind = kind;
      this.refusals = [];
      this.trouble = undefined;
      this.isWhole = false;
      afterPaint(() => {
        this.isWhole = true;
      });
    });
    keepDraft(this.partId, { kind, draft: this.draft });
  }

  readonly #answered = (event: CustomEvent<{ name: string; value: string }>) =>
    this.#set(event.detail.name, event.detail.value);

  readonly #typed = (name: string) => (event: Event) =>
    this.#set(name, (event.target as HTMLInputElement).value);

  #set(name: string, value: string): void {
    this.draft = { ...this.draft, [name]: value };
    keepDraft(this.partId, { kind: this.kind, draft: this.draft, before: this.#before });
  }

  /** What was typed goes, and the form begins anew with what is there. */
  readonly #takeTheirs = (): void => {
    keepDraft(this.partId, undefined);
    this.#open.forget();
    void this.#part.again();
  };

  readonly #submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (!this.kind || this.saving) return;
    this.saving = true;
    const part = partFromDraft(this.kind, this.draft, this.display, this.#before);
    await (this.partId
      ? api.changePart(this.partId, { ...part, id: this.partId }, this.#before)
      : api.addPart(part)
    ).then(
      (saved) => this.#saved(saved),
      (error: unknown) => this.#refused(error),
    );
    this.saving = false;
  };

  #saved(part: Part): void {
    keepDraft(this.partId, undefined);
    tell(this, "ferrule-done", { text: `${part.id} is ${this.partId ? "changed" : "on the bench"}.` });
    tell(this, "ferrule-go", { path: hrefs.part(part.id) });
  }

  /** Says what is wrong at the fields, and goes to the first of them. */
  async #refused(error: unknown): Promise<void> {
    if (error instanceof ApiError && error.code === tookTheirs) return this.#takeTheirs();
    this.trouble = `${failed(error).message}.`;
    this.refusals = error instanceof ApiError ? error.refusals : [];
    await this.updateComplete;
    const fields = [...this.renderRoot.querySelectorAll<PartField>("ferrule-part-field")];
    fields.find(({ field }) => refusalsAt(this.refusals, field.path).length > 0)?.focus();
  }
}

customElements.define("ferrule-part-form-view", PartFormView);
