import type { Deal, DealQuestion } from "@ferrule/core";
import { css, html, LitElement, type TemplateResult } from "lit";
import { tell } from "../events.ts";
import { moneyText } from "../format/money.ts";
import { countText } from "../format/number.ts";
import { hrefs } from "../route.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";

const fewQuestions = 3;

/** What to find out before paying: the questions, the most decisive first, and a message that asks the seller. */
export class QuestionMessage extends LitElement {
  static override properties = {
    deal: {},
    currency: {},
    parts: {},
    edited: { state: true },
    copied: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    css`
      li {
        display: grid;
        grid-template-columns: minmax(0, 1fr) auto;
        gap: 0.75rem;
        align-items: center;
        padding: 0.5rem 0;
        border-top: 1px solid var(--line);
      }
      li:first-child {
        border-top: 0;
      }
      li p {
        margin: 0.1rem 0 0;
      }
    `,
  ];
  declare deal: Deal;
  declare currency: string;
  /** Names of the parts on the bench. */
  declare parts: ReadonlySet<string>;
  /** What the user made of the message; a new message of the tool does not overwrite it. */
  declare private edited: string | undefined;
  declare private copied: boolean;

  override render() {
    const { questions, message } = this.deal;
    const [first, rest] = [questions.slice(0, fewQuestions), questions.slice(fewQuestions)];
    const list = (some: readonly DealQuestion[]) =>
      html`<ol class="plain">${some.map((question) => html`<li>${this.renderQuestion(question)}</li>`)}</ol>`;
    return html`<div class="stack">
      ${list(first)}
      ${rest.length > 0 ? html`<details><summary>${countText(rest.length, "more question")}</summary>${list(rest)}</details>` : ""}
      ${message === "" ? "" : this.renderMessage(this.edited ?? message)}
    </div>`;
  }

  private renderQuestion({ text, to, field, swingMinor, decides }: DealQuestion): TemplateResult {
    const weight = [
      to === "you" ? "for you" : "for the seller",
      swingMinor > 0 && `worth up to ${moneyText(swingMinor, this.currency)}`,
    ];
    return html`<div>${text}
        <p class="small soft">${weight.filter(Boolean).join(" · ")}${decides ? html` · <strong>can change the verdict</strong>` : ""}</p></div>
      ${this.renderAnswer(text, field)}`;
  }

  /** A part of the bench is answered for on its own form, a rate among the costs; everything else stands on this page. */
  private renderAnswer(text: string, field: string): TemplateResult {
    const [part = ""] = field.split(".");
    if (part === "rates")
      return html`<a class="button" aria-label="Answer: ${text}" href="/costs">Answer</a>`;
    if (this.parts.has(part))
      return html`<a class="button" aria-label="Answer for ${part}" href=${hrefs.editPart(part)}>${part}</a>`;
    return html`<button aria-label="Answer: ${text}" @click=${() => tell(this, "ferrule-see-fact", { field })}>Answer</button>`;
  }

  private renderMessage(message: string): TemplateResult {
    return html`<div>
        <label for="message">Message to the seller</label>
        <textarea id="message" rows=${rowsOf(message)} .value=${message} @input=${this.#typed}></textarea>
      </div>
      <div class="row">
        <button class="main" @click=${this.#copy}>Copy the message</button>
        ${this.edited === undefined ? "" : html`<button @click=${() => (this.edited = undefined)}>As it was</button>`}
        <span role="status">${this.copied ? "Copied." : ""}</span>
      </div>`;
  }

  readonly #typed = (event: Event) => {
    this.edited = (event.target as HTMLTextAreaElement).value;
    this.copied = false;
  };

  /** Where the browser keeps its clipboard shut, the words are selected, ready to be copied by hand. */
  readonly #copy = async (): Promise<void> => {
    const box = this.renderRoot.querySelector<HTMLTextAreaElement>("#message");
    if (!box) return;
    this.copied = await navigator.clipboard.writeText(box.value).then(
      () => true,
      () => false,
    );
    if (!this.copied) box.select();
  };
}

/** High enough to be read without scrolling, as far as a screen allows. */
function rowsOf(message: string): number {
  const lines = message.split("\n").reduce((sum, line) => sum + 1 + Math.floor(line.length / 48), 0);
  return Math.min(16, lines + 1);
}

customElements.define("ferrule-question-message", QuestionMessage);
