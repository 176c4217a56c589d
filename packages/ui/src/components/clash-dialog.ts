import { css, html, LitElement, type TemplateResult } from "lit";
import type { Clash, Settled } from "../clash/clash.ts";
import { historyOf } from "../clash/history-of.ts";
import { type Choice, chosenOf, type Side, sidesOf } from "../clash/sides.ts";
import { type DisplaySettings, defaultDisplay } from "../display-settings.ts";
import { historyApi, type Who } from "../history-api.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { historyField, thingText, whoText } from "../words/history-words.ts";
import { momentText } from "../words/moment-text.ts";
import { namedValue } from "../words/named-value.ts";
import { bothVersions, bothVersionsStyles } from "./both-versions.ts";

/** Shows a change that was not taken beside what is on the bench, and asks what is to be. Nothing that was typed is touched. */
export class ClashDialog extends LitElement {
  static override properties = {
    clash: {},
    display: {},
    choices: { state: true },
    last: { state: true },
  };
  static override styles = [
    baseStyles,
    bothVersionsStyles,
    css`
      dialog {
        width: min(48rem, calc(100vw - 1rem));
        max-height: calc(100vh - 1rem);
        padding: 1rem;
        border: 2px solid var(--line-strong);
        border-radius: 4px;
        background: var(--ticket);
        color: var(--ink);
      }
      dialog::backdrop {
        background: rgb(0 0 0 / 50%);
      }
      td label {
        display: flex;
        gap: 0.4rem;
        align-items: start;
        min-height: 44px;
        font-weight: 400;
      }
      td input {
        flex: none;
        width: 1.2rem;
        height: 1.2rem;
        min-height: 0;
        margin: 0.2rem 0 0;
      }
    `,
  ];
  declare clash: Clash;
  declare display: DisplaySettings;
  declare private choices: ReadonlyMap<string, Choice>;
  declare private last: { readonly who: Who; readonly at: string } | undefined;
  #settle: ((settled: Settled) => void) | undefined;

  constructor() {
    super();
    this.display = defaultDisplay;
    this.choices = new Map();
  }

  /** Shows itself until a person has said what is to be. */
  async ask(): Promise<Settled> {
    document.body.append(this);
    await this.updateComplete;
    this.renderRoot.querySelector("dialog")?.showModal();
    void this.#findOut();
    const settled = await new Promise<Settled>((resolve) => {
      this.#settle = resolve;
    });
    this.remove();
    return settled;
  }

  override render() {
    const { present, mine } = this.clash;
    return html`<dialog aria-labelledby="title" class="stack" @cancel=${() => this.#say({ is: "open" })}>
      <h2 id="title" tabindex="-1" autofocus>${this.renderTitle()}</h2>
      ${present === null ? this.renderGone() : mine === null ? this.renderDelete(present) : this.renderBoth(mine, present)}
    </dialog>`;
  }

  private renderTitle(): string {
    const of = historyOf(this.clash.path);
    const what = of ? thingText(of) : "this";
    const who = this.last ? whoText(this.last.who) : "Somebody";
    const at = this.last ? `, ${momentText(this.last.at)}` : "";
    return `${who} ${this.clash.present === null ? "deleted" : "changed"} ${what} meanwhile${at}`;
  }

  private renderBoth(mine: Clash["base"], present: Clash["base"]): TemplateResult {
    const sides = sidesOf(this.clash.base, mine, present);
    if (sides.length === 0)
      return html`<p>Both came to the same.</p><div class="row">${this.renderWay("Good", { is: "theirs" }, true)}</div>`;
    const isOpen = sides.some(({ by }) => by === "both");
    return html`<p>${isOpen ? "Both of you changed the same. Choose field by field, or take one side." : "You changed different fields, so both can be kept."}</p>
      ${bothVersions(sides, { ...this.#words(), mine: "Yours", theirs: "On the bench now" }, (side, of, text) => this.renderChoice(side, of, text))}
      <div class="row">
        ${this.renderWay("Save as chosen", { is: "mine", thing: chosenOf(this.clash.base, mine, present, this.choices) }, true)}
        ${this.renderWay("Keep mine", { is: "mine", thing: chosenOf(this.clash.base, mine, present, new Map()) })}
        ${this.renderWay("Take theirs", { is: "theirs" })}
        ${this.renderWay("Go on typing", { is: "open" })}
      </div>
      <p class="small soft">Keep mine leaves fields that only they changed as they are now.</p>`;
  }

  private renderChoice({ field, by }: Side, of: Choice, text: string): TemplateResult {
    const chosen = this.choices.get(field) ?? (by === "them" ? "theirs" : "mine");
    return html`<label><input type="radio" name=${`of-${field}`} .checked=${chosen === of} @change=${() => (this.choices = new Map([...this.choices, [field, of]]))} /><span>${text}</span></label>`;
  }

  private renderDelete(present: Clash["base"]): TemplateResult {
    return html`<p>You were about to delete it as it was before.</p>
      ${bothVersions(sidesOf(this.clash.base, this.clash.base, present), { ...this.#words(), mine: "As you saw it", theirs: "On the bench now" })}
      <div class="row">
        ${this.renderWay("Leave it there", { is: "theirs" }, true)}
        ${this.renderWay("Delete it all the same", { is: "mine", thing: null })}
      </div>`;
  }

  private renderGone(): TemplateResult {
    return html`<p>What you entered can be put back as yours, or it stays deleted.</p>
      <div class="row">
        ${this.renderWay("Put it back as mine", { is: "mine", thing: this.clash.mine }, true)}
        ${this.renderWay("Let it be deleted", { is: "theirs" })}
        ${this.renderWay("Go on typing", { is: "open" })}
      </div>`;
  }

  private renderWay(word: string, settled: Settled, isMain = false): TemplateResult {
    return html`<button class=${isMain ? "main" : ""} @click=${() => this.#say(settled)}>${word}</button>`;
  }

  #words() {
    const { currency, lengthUnit } = this.display;
    const table = historyOf(this.clash.path)?.table ?? "";
    return {
      field: (field: string) => historyField(table, field),
      value: (field: string, value: unknown) => namedValue(field, value, lengthUnit, currency),
    };
  }

  /** Who it was: nice to know, and no matter where it cannot be told. */
  async #findOut(): Promise<void> {
    const of = historyOf(this.clash.path);
    const page = of && (await historyApi.list(1, of).catch(() => undefined));
    this.last = page?.changes[0];
  }

  #say(settled: Settled): void {
    this.renderRoot.querySelector("dialog")?.close();
    this.#settle?.(settled);
  }
}

customElements.define("ferrule-clash-dialog", ClashDialog);
