import type { Deal, DealQuestion } from "@ferrule/core";
import { css, html, LitElement, type TemplateResult } from "lit";
import { tell } from "../events.ts";
import { moneyText } from "../format/money.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";

/** What to find out before paying: the questions, the most decisive first, and a message that asks the seller. */
export class QuestionMessage extends LitElement {
  static override properties = { deal: {}, currency: {}, edited: { state: true }, copied: { state: true } };
  static override styles = [
    baseStyles,
    formStyles,
    css`
      li {
        padding: 0.5rem 0;
        border-top: 1px solid var(--line);
      }
      li:first-child {
        border-top: 0;
      }
      textarea {
        min-height: 9rem;
      }
    `,
  ];
  declare deal: Deal;
  declare currency: string;
  /** What the user made of the message; a new message of the tool does not overwrite it. */
  declare private edited: string | undefined;
  declare private copied: boolean;

  override render() {
    const { questions, message } = this.deal;
    return html`<div class="stack">
      <ol class="plain">${questions.map((question) => html`<li>${this.renderQuestion(question)}</li>`)}</ol>
      ${message === "" ? "" : this.renderMessage(this.edited ?? message)}
    </div>`;
  }

  private renderQuestion({ text, to, field, swingMinor, decides }: DealQuestion): TemplateResult {
    const weight = [
      to === "you" ? "for you" : "for the seller",
      swingMinor > 0 && `worth up to ${moneyText(swingMinor, this.currency)}`,
    ];
    return html`<strong>${text}</strong>
      <p class="small soft">${weight.filter(Boolean).join(" · ")}${decides ? html` · <strong>can change the verdict</strong>` : ""}</p>
      <button aria-label="Answer: ${text}" @click=${() => tell(this, "ferrule-see-fact", { field })}>I know the answer</button>`;
  }

  private renderMessage(message: string): TemplateResult {
    return html`<div>
        <label for="message">Message to the seller</label>
        <textarea id="message" .value=${message} @input=${this.#typed}></textarea>
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

customElements.define("ferrule-question-message", QuestionMessage);
