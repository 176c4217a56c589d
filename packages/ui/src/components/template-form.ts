import type { Refusal, SaleDescription } from "@ferrule/core";
import { css, html, LitElement } from "lit";
import { ApiError, tookTheirs } from "../api.ts";
import { tell } from "../events.ts";
import { Fetched, failed } from "../fetched.ts";
import { sheetApi, type TemplateReply } from "../sheet-api.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { whenReady } from "./state-notes.ts";

/** The user's own template for descriptions: words, and names in braces that are filled in. */
export class TemplateForm extends LitElement {
  static override properties = {
    parts: {},
    refusals: { state: true },
    tried: { state: true },
    busy: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    css`
      textarea {
        min-height: 16rem;
        font-family: var(--mono);
      }
      pre {
        white-space: pre-wrap;
        overflow-wrap: anywhere;
        margin: 0;
      }
    `,
  ];
  declare parts: readonly string[];
  declare private refusals: readonly Refusal[];
  declare private tried: string | undefined;
  declare private busy: boolean;
  readonly #reply = new Fetched(this, () => sheetApi.template(), "nothing");

  constructor() {
    super();
    this.refusals = [];
    this.busy = false;
  }

  override render() {
    return whenReady(this.#reply.state, "the template", (reply) => this.renderForm(reply));
  }

  private renderForm({ template, isFirst, placeholders }: TemplateReply) {
    const names = placeholders.map((name) => html`<code>{${name}}</code> `);
    return html`<form class="stack" novalidate @submit=${this.#keep}>
      <div><label for="template">Your template</label>
        <p class="why" id="names">Words, and names in braces that are filled in: ${names}. A doubled brace stands for itself.</p>
        <textarea id="template" aria-describedby="names" maxlength="8000" aria-invalid=${this.refusals.length > 0 ? "true" : "false"} .value=${template}></textarea>
        <div role="alert">${this.refusals.map(({ field, got, expected }) => html`<p class="refusal">✕ ${field.replace(/^template, /, "")}: got ${got}, expected ${expected}</p>`)}</div>
      </div>
      <div class="row">
        <button type="button" ?disabled=${this.busy} @click=${this.#try}>Try it</button>
        <button class="main" type="submit" ?disabled=${this.busy}>Keep it</button>
        ${isFirst ? "" : html`<button type="button" ?disabled=${this.busy} @click=${this.#first}>Back to the first one</button>`}
      </div>
      ${this.tried === undefined ? "" : html`<div class="ticket" role="status"><h3>So it would read</h3><pre>${this.tried}</pre></div>`}
    </form>`;
  }

  #text(): string {
    return this.renderRoot.querySelector<HTMLTextAreaElement>("#template")?.value ?? "";
  }

  async #do<T>(work: Promise<T>): Promise<T | undefined> {
    this.busy = true;
    this.refusals = [];
    const answer = await work.catch((error: unknown) => {
      if (error instanceof ApiError && error.code === tookTheirs) return void this.#reply.again();
      const { message } = failed(error);
      const refused = error instanceof ApiError ? error.refusals : [];
      this.refusals = refused.length > 0 ? refused : [{ field: "", got: "", expected: message }];
      return undefined;
    });
    this.busy = false;
    return answer;
  }

  readonly #try = async (): Promise<void> => {
    const described: SaleDescription | undefined = await this.#do(
      sheetApi.tryTemplate(this.parts, this.#text()),
    );
    this.tried = described?.text;
  };

  readonly #keep = async (event: Event): Promise<void> => {
    event.preventDefault();
    await this.#kept(this.#text(), "Your template is kept.");
  };

  readonly #first = () => this.#kept(null, "Back to the first template.");

  async #kept(template: string | null, text: string): Promise<void> {
    const kept = await this.#do(
      sheetApi.keepTemplate(
        template,
        this.#reply.state.is === "ready" ? this.#reply.state.value.template : undefined,
      ),
    );
    if (!kept) return;
    this.tried = undefined;
    await this.#reply.again();
    tell(this, "ferrule-done", { text });
    tell(this, "ferrule-retry", undefined);
  }
}

customElements.define("ferrule-template-form", TemplateForm);
