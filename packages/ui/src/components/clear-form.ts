import type { Fault, Refusal } from "@ferrule/core";
import { html, LitElement } from "lit";
import { ApiError } from "../api.ts";
import { tell } from "../events.ts";
import { failed } from "../fetched.ts";
import { sheetApi } from "../sheet-api.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";

/** A person's word, with a note, that a fault of safety no longer stands. */
export class ClearForm extends LitElement {
  static override properties = {
    partId: {},
    fault: {},
    canBePutRight: { type: Boolean },
    refusals: { state: true },
    busy: { state: true },
  };
  static override styles = [baseStyles, formStyles];
  declare partId: string;
  declare fault: Fault;
  declare canBePutRight: boolean;
  declare private refusals: readonly Refusal[];
  declare private busy: boolean;

  constructor() {
    super();
    this.refusals = [];
    this.busy = false;
  }

  override render() {
    const choices: readonly (readonly [string, string])[] = [
      ["not-there", "I looked again, and it is not there"],
      ...(this.canBePutRight ? [["put-right", "It has been put right by somebody practised"] as const] : []),
    ];
    return html`<form class="stack" novalidate @submit=${this.#send}>
      <fieldset><legend>Why does it no longer stand?</legend>
        ${choices.map(([value, words], at) => html`<label class="tick"><input type="radio" name="because" value=${value} ?checked=${at === 0} /><span>${words}</span></label>`)}
        ${this.canBePutRight ? "" : html`<p class="why">Nobody can put this right: a part that has it is not used again.</p>`}
      </fieldset>
      <div><label for="by">Who says so</label><input id="by" autocomplete="name" maxlength="200" aria-invalid=${this.#isRefused("by")} />${this.#refusal("by")}</div>
      <div><label for="note">What was looked at or done</label><textarea id="note" maxlength="2000" aria-invalid=${this.#isRefused("note")}></textarea>${this.#refusal("note")}</div>
      ${this.#refusal("fault")}${this.#refusal("because")}${this.#refusal("")}
      <button type="submit" ?disabled=${this.busy}>Clear it with this note</button>
    </form>`;
  }

  #isRefused(field: string): "true" | "false" {
    return this.refusals.some((refusal) => refusal.field === field) ? "true" : "false";
  }

  #refusal(field: string) {
    return this.refusals
      .filter((refusal) => refusal.field === field)
      .map(({ expected }) => html`<p class="refusal" role="alert">✕ ${expected}</p>`);
  }

  #value(selector: string): string {
    return (
      this.renderRoot.querySelector<HTMLInputElement | HTMLTextAreaElement>(selector)?.value.trim() ?? ""
    );
  }

  readonly #send = async (event: Event): Promise<void> => {
    event.preventDefault();
    const by = this.#value("#by");
    const note = this.#value("#note");
    this.refusals = [
      ...(by === "" ? [{ field: "by", got: "", expected: "A name is needed." }] : []),
      ...(note.length < 10
        ? [{ field: "note", got: note, expected: "A few words are needed on what was looked at or done." }]
        : []),
    ];
    if (this.refusals.length > 0) return;
    this.busy = true;
    const because = this.#value("[name=because]:checked") as "not-there" | "put-right";
    const { partId: part, fault } = this;
    await sheetApi.clear({ part, fault, because, by, note }).then(
      () => tell(this, "ferrule-cleared", { fault }),
      (error: unknown) => {
        const refused = error instanceof ApiError ? error.refusals : [];
        this.refusals =
          refused.length > 0 ? refused : [{ field: "", got: "", expected: `${failed(error).message}.` }];
      },
    );
    this.busy = false;
  };
}

customElements.define("ferrule-clear-form", ClearForm);
