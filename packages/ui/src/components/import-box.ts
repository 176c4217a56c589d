import { decodedText } from "@ferrule/core";
import { css, html, LitElement, type TemplateResult } from "lit";
import type { ImportReply, ImportRequest } from "../api.ts";
import { tell } from "../events.ts";
import { failed } from "../fetched.ts";
import { countText } from "../format/number.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { settingsTableStyles } from "./settings-table.ts";

/** As much as the server takes at once. */
const bytesMost = 8_000_000;

/** A file brought in: tried first, so that nothing is written before the user has seen what is wrong with it. */
export class ImportBox extends LitElement {
  static override properties = {
    send: {},
    columns: {},
    replaceLabel: {},
    text: { state: true },
    replace: { state: true },
    tried: { state: true },
    trouble: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    settingsTableStyles,
    css`
      textarea {
        font-family: var(--mono);
        font-size: 0.875rem;
        min-height: 10rem;
        white-space: pre;
        overflow: auto;
      }
      td,
      th {
        white-space: normal;
        overflow-wrap: anywhere;
      }
    `,
  ];
  /** Sends the file, tried or in earnest. */
  declare send: (request: ImportRequest) => Promise<ImportReply>;
  /** Names of a few columns, as an example. */
  declare columns: readonly string[];
  declare replaceLabel: string;
  declare private text: string;
  declare private replace: boolean;
  declare private tried: ImportReply | undefined;
  declare private trouble: string | undefined;

  constructor() {
    super();
    this.columns = [];
    this.text = "";
    this.replace = false;
  }

  override render() {
    return html`<div class="stack">
      ${this.renderChoice()}
      <div aria-live="polite">
        ${this.trouble ? html`<p class="ticket refusal">✕ ${this.trouble}</p>` : ""}
        ${this.tried ? this.renderTried(this.tried) : ""}
      </div>
    </div>`;
  }

  private renderChoice(): TemplateResult {
    return html`<section class="ticket stack" aria-labelledby="in">
      <h2 id="in">Bring in a file</h2>
      <p class="soft">CSV with a header line, or JSON as it was exported here. Columns carry the fields' own names, such as
        ${this.columns.map((column, at) => html`${at > 0 ? ", " : ""}<span class="mono">${column}</span>`)}. The file is tried first; nothing is written until you say so.</p>
      <div>
        <label for="file">Choose a file</label>
        <input id="file" type="file" accept=".csv,.json,text/csv,application/json" @change=${this.#chosen} />
      </div>
      <div>
        <label for="pasted">Or paste it here</label>
        <textarea id="pasted" spellcheck="false" .value=${this.text} @input=${(event: Event) => this.#take((event.target as HTMLTextAreaElement).value)}></textarea>
      </div>
      <label class="tick"><input type="checkbox" .checked=${this.replace} @change=${() => (this.replace = !this.replace)} />${this.replaceLabel}</label>
      <button class="main" ?disabled=${this.text.trim() === ""} @click=${this.#try}>Try it</button>
    </section>`;
  }

  private renderTried({ taken, refused }: ImportReply) {
    return html`<section class="ticket stack" aria-labelledby="tried">
      <h2 id="tried">${countText(taken, "good row")}, ${countText(refused.length, "thing")} wrong</h2>
      ${refused.length > 0 ? this.renderRefused(refused) : html`<p>Nothing is wrong with it.</p>`}
      <div class="row">
        <button class="main" ?disabled=${taken === 0} @click=${() => this.#import("good")}>Take the ${countText(taken, "good row")}</button>
        <button @click=${() => this.#refuseAll()}>Refuse all of it</button>
      </div>
    </section>`;
  }

  private renderRefused(refused: ImportReply["refused"]) {
    return html`<table class="stacked" role="table">
      <caption class="small soft">Where, what stood there, and what would have been taken</caption>
      <thead role="rowgroup"><tr role="row">
        <th scope="col" role="columnheader">Line</th><th scope="col" role="columnheader">Column</th><th scope="col" role="columnheader">Got</th><th scope="col" role="columnheader">Expected</th>
      </tr></thead>
      <tbody role="rowgroup">
        ${refused.map(
          ({ line, column, got, expected }) => html`<tr role="row">
          <th scope="row" role="rowheader">Line ${line}</th><td role="cell" data-label="Column">${column}</td><td role="cell" data-label="Got">${got}</td><td role="cell" data-label="Expected">${expected}</td>
        </tr>`,
        )}
      </tbody>
    </table>`;
  }

  readonly #chosen = async (event: Event) => {
    const file = (event.target as HTMLInputElement).files?.[0];
    if (!file) return;
    // What is sent is held by the server to 8 MB; a file that is larger is not even read.
    const text = file.size > bytesMost ? undefined : decodedText(new Uint8Array(await file.arrayBuffer()));
    this.#take(text ?? "");
    if (text === undefined)
      this.trouble = `${file.name} is no text, or larger than ${bytesMost / 1_000_000} MB.`;
  };

  #take(text: string): void {
    this.text = text;
    this.tried = undefined;
    this.trouble = undefined;
  }

  readonly #try = () =>
    this.#send({ ...this.#request("good"), dryRun: true }, (reply) => (this.tried = reply));

  readonly #import = (take: ImportRequest["take"]) =>
    this.#send(this.#request(take), ({ taken }) => {
      this.#take("");
      tell(this, "ferrule-done", { text: `Took ${countText(taken, "row")}.` });
      tell(this, "ferrule-retry", undefined);
    });

  #refuseAll(): void {
    this.tried = undefined;
    tell(this, "ferrule-done", { text: "Nothing was taken. The text is still there to mend." });
  }

  #request(take: ImportRequest["take"]): ImportRequest {
    const format = /^\s*[[{]/.test(this.text) ? "json" : "csv";
    return { format, text: this.text, take, existing: this.replace ? "replace" : "refuse" };
  }

  async #send(request: ImportRequest, then: (reply: ImportReply) => void): Promise<void> {
    this.trouble = undefined;
    await this.send(request).then(then, (error: unknown) => (this.trouble = `${failed(error).message}.`));
  }
}

customElements.define("ferrule-import-box", ImportBox);
