import type { Claim, Refusal } from "@ferrule/core";
import { css, html, LitElement } from "lit";
import { ApiError, api } from "../api.ts";
import { emptyNote, whenReady } from "../components/state-notes.ts";
import "../components/verdict-mark.ts";
import { tell } from "../events.ts";
import { Fetched, failed } from "../fetched.ts";
import { refusalsAt, refusalText } from "../form/refusals-at.ts";
import { benchTables } from "../live/bench-tables.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { evidenceWords } from "../words/evidence-words.ts";
import { clubTypeWords, handWords } from "../words/part-words.ts";

const { either: _either, ...oneHand } = handWords;

/** What people say goes into what, across adapter families, ranked by how they know. */
export class ClaimsView extends LitElement {
  static override properties = { refusals: { state: true }, trouble: { state: true } };
  static override styles = [
    baseStyles,
    formStyles,
    css`
      .claim {
        padding: 0.75rem 0;
        border-top: 1px solid var(--line);
      }
    `,
  ];
  declare private refusals: readonly Refusal[];
  declare private trouble: string | undefined;
  readonly #bench = new Fetched(this, api.bench, benchTables);

  constructor() {
    super();
    this.refusals = [];
  }

  override render() {
    return html`<div class="stack" @ferrule-retry=${() => this.#bench.again()}>
      <h1 tabindex="-1">Fit claims</h1>
      <p class="soft">An adapter is sure of its own family only. Anything across families rests on somebody's word; tried outranks stated, stated outranks seen, seen outranks a seller's word.
        Words of equal rank that disagree leave it unsettled.</p>
      ${whenReady(this.#bench.state, "the claims", ({ claims }) =>
        claims.length === 0
          ? emptyNote("No claims yet", "Families that are not named here go with themselves only.")
          : html`<ul class="plain ticket">${claims.map((claim) => this.renderClaim(claim))}</ul>`,
      )}
      ${this.renderForm()}
    </div>`;
  }

  private renderClaim(claim: Claim) {
    const limits = [
      claim.clubType && clubTypeWords[claim.clubType],
      claim.hand && handWords[claim.hand],
      claim.on,
      claim.note,
    ];
    return html`<li class="claim">
      <div class="row between">
        <div>
          <strong>${claim.adapter}</strong> adapter in a <strong>${claim.receiver}</strong> head: <ferrule-verdict .verdict=${claim.verdict}></ferrule-verdict>
          <p class="small soft">${[evidenceWords[claim.evidence], ...limits].filter(Boolean).join(" · ")}</p>
        </div>
        ${claim.id ? html`<button aria-label="Delete the claim ${claim.adapter} in ${claim.receiver}" @click=${() => this.#delete(claim)}>Delete</button>` : ""}
      </div>
    </li>`;
  }

  private renderForm() {
    return html`<form class="ticket stack" novalidate @submit=${this.#add}>
      <h2>Add a claim</h2>
      ${this.trouble ? html`<p class="refusal" role="alert">✕ ${this.trouble}</p>` : ""}
      <div class="grid">
        ${this.renderText("adapter", "Adapter of the family", "As it is written on the adapter's page.")}
        ${this.renderText("receiver", "In a head that takes", "The family the head was made for.")}
        ${this.renderChoice("verdict", "It", { fits: "Fits", "does-not-fit": "Does not fit" })}
        ${this.renderChoice("evidence", "How it is known", evidenceWords)}
        ${this.renderChoice("clubType", "Only for", { "": "Any club type", ...clubTypeWords })}
        ${this.renderChoice("hand", "Hand", { "": "Any hand", ...oneHand })}
        ${this.renderText("note", "Note", "Where you read it, or what you tried.")}
      </div>
      <button class="main" type="submit">Add the claim</button>
    </form>`;
  }

  private renderText(name: string, label: string, why: string) {
    const refused = refusalsAt(this.refusals, name);
    return html`<div>
      <label for=${name}>${label}</label><p class="why" id="${name}-why">${why}</p>
      <input id=${name} name=${name} aria-describedby="${name}-why ${name}-refused" aria-invalid=${refused.length > 0} autocomplete="off" />
      <div id="${name}-refused">${refused.map((refusal) => html`<p class="refusal">✕ ${refusalText(refusal)}</p>`)}</div>
    </div>`;
  }

  private renderChoice(name: string, label: string, choices: Readonly<Record<string, string>>) {
    return html`<div>
      <label for=${name}>${label}</label>
      <select id=${name} name=${name}>${Object.entries(choices).map(([value, word]) => html`<option value=${value}>${word}</option>`)}</select>
    </div>`;
  }

  readonly #add = async (event: Event) => {
    event.preventDefault();
    const form = event.target as HTMLFormElement;
    const claim = Object.fromEntries([...new FormData(form)].filter(([, value]) => value !== ""));
    await api.addClaim(claim).then(
      () => this.#added(form),
      (error: unknown) => this.#refused(error),
    );
  };

  #added(form: HTMLFormElement): Promise<void> {
    form.reset();
    this.#clear();
    tell(this, "ferrule-done", { text: "The claim is added." });
    return this.#bench.again();
  }

  #refused(error: unknown): void {
    this.trouble = `${failed(error).message}.`;
    this.refusals = error instanceof ApiError ? error.refusals : [];
  }

  #clear(): void {
    this.trouble = undefined;
    this.refusals = [];
  }

  readonly #delete = async (claim: Claim) => {
    await api.deleteClaim(claim.id ?? "", claim).then(
      () => tell(this, "ferrule-done", { text: "The claim is deleted.", undoable: true }),
      (error: unknown) => this.#refused(error),
    );
    await this.#bench.again();
  };
}

customElements.define("ferrule-claims-view", ClaimsView);
