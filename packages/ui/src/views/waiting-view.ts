import { css, html, LitElement, type TemplateResult } from "lit";
import { sidesOf } from "../clash/sides.ts";
import { bothVersions, bothVersionsStyles } from "../components/both-versions.ts";
import { emptyNote } from "../components/state-notes.ts";
import type { Settling } from "../offline/settle.ts";
import { signal } from "../offline/signal.ts";
import type { Thing, WaitingChange } from "../offline/waiting-change.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { changeTitle } from "../words/change-words.ts";
import { fieldText } from "../words/field-words.ts";
import { momentText } from "../words/moment-text.ts";
import { namedValue } from "../words/named-value.ts";

/** What was entered without a signal: what waits to be sent, and what a person has to settle. */
export class WaitingView extends LitElement {
  static override properties = { changes: { state: true } };
  static override styles = [
    baseStyles,
    bothVersionsStyles,
    css`
      li {
        padding: 0.5rem 0;
        border-top: 1px solid var(--line);
      }
      pre {
        white-space: pre-wrap;
        overflow-wrap: anywhere;
      }
    `,
  ];
  declare private changes: readonly WaitingChange[] | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    signal.addEventListener("change", this.#read);
    void this.#read();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    signal.removeEventListener("change", this.#read);
  }

  override render() {
    return html`<div class="stack">
      <h1 tabindex="-1">Waiting for a signal</h1>
      ${this.renderState()}
      ${this.changes === undefined ? html`<p class="soft" role="status">Getting what waits …</p>` : this.renderChanges(this.changes)}
    </div>`;
  }

  private renderState(): TemplateResult {
    const { isLost, asOf, isPaired } = signal.state;
    if (!isPaired)
      return html`<p class="ticket">This device is not paired with the bench any more. <a href="/pair">Pair it again</a>, and what waits is sent.</p>`;
    const upTo = asOf ? ` What is kept here is as of ${momentText(asOf)}.` : "";
    if (!isLost) return html`<p class="ticket">The bench can be reached.${upTo}</p>`;
    return html`<div class="ticket row between"><p>The bench cannot be reached.${upTo} Looking at the bench, what goes with what, reading and judging listings, adding, changing and buying go on; the rest waits for the signal.</p>
      <button @click=${() => signal.look()}>Look again</button></div>`;
  }

  private renderChanges(all: readonly WaitingChange[]): TemplateResult {
    if (all.length === 0)
      return emptyNote("Nothing waits", "All that was entered here has reached the bench.");
    const open = all.filter(({ state }) => state !== "waiting");
    const waiting = all.filter(({ state }) => state === "waiting");
    return html`${open.map((change) => (change.state === "conflict" ? this.renderConflict(change) : this.renderRefused(change)))}
      ${
        waiting.length > 0
          ? html`<section class="ticket" aria-labelledby="waiting"><h2 id="waiting">On their way</h2>
        <ul class="plain">${waiting.map((change) => html`<li>${changeTitle(change)} <span class="small soft">entered ${momentText(change.enteredAt)}</span></li>`)}</ul></section>`
          : ""
      }`;
  }

  private renderConflict(change: WaitingChange): TemplateResult {
    const { place, present, method } = change;
    const isDelete = method === "DELETE";
    const because = present
      ? "It was changed on the bench meanwhile."
      : "It was deleted on the bench meanwhile.";
    return html`<section class="ticket stack" aria-labelledby="c${place}">
      <h2 id="c${place}">! ${changeTitle(change)}</h2>
      <p>${because} ${isDelete || !present ? "" : "Fields that only one side changed are kept either way."}</p>
      ${isDelete || !present ? "" : this.renderSides(change, present)}
      <div class="row">
        ${this.renderChoice(place, "mine", isDelete ? "Delete it all the same" : present ? "Take mine" : "Put it back as mine")}
        ${this.renderChoice(place, "theirs", present ? "Leave what is there" : "Let it be deleted")}
      </div>
    </section>`;
  }

  private renderSides({ before, body }: WaitingChange, present: Thing): TemplateResult {
    const sides = sidesOf(before ?? {}, body as Thing, present).filter(({ by }) => by === "both");
    return bothVersions(sides, {
      mine: "Entered here",
      theirs: "On the bench now",
      field: fieldText,
      value: (field, value) => namedValue(field, value, "in", "EUR"),
    });
  }

  private renderRefused(change: WaitingChange): TemplateResult {
    const { place, problem, body } = change;
    return html`<section class="ticket stack" aria-labelledby="c${place}">
      <h2 id="c${place}">! ${changeTitle(change)}</h2>
      <p class="refusal">✕ The bench did not take it: ${problem}.</p>
      <details><summary>What was entered</summary><pre>${JSON.stringify(body ?? null, null, 2)}</pre></details>
      <div class="row">${this.renderChoice(place, "again", "Try again")}${this.renderChoice(place, "give-up", "Throw it away")}</div>
    </section>`;
  }

  private renderChoice(place: number, how: Settling, word: string): TemplateResult {
    return html`<button @click=${() => signal.settle(place, how)}>${word}</button>`;
  }

  readonly #read = async (): Promise<void> => {
    this.changes = await signal.changes();
  };
}

customElements.define("ferrule-waiting-view", WaitingView);
