import type { Evidence, Resale, Subject } from "@ferrule/core";
import { html, LitElement, type TemplateResult } from "lit";
import { LatestAnswer } from "../latest-answer.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { tradeApi } from "../trade-api.ts";
import { itemKindWords } from "../words/item-words.ts";
import { clubTypeWords } from "../words/part-words.ts";
import { evidencePicture, evidenceRows, resaleLine } from "./evidence-rows.ts";
import { settingsTableStyles } from "./settings-table.ts";

/** What the kept prices say of one kind of thing: points, estimate, and the rows behind it. */
export class PricePicture extends LitElement {
  static override properties = { evidence: {}, chosen: { state: true } };
  static override styles = [baseStyles, formStyles, settingsTableStyles];
  declare evidence: readonly Evidence[];
  declare private chosen: number;
  readonly #resale = new LatestAnswer<Resale>(this, 0);

  constructor() {
    super();
    this.chosen = 0;
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has("evidence") && !changed.has("chosen")) return;
    const subject = subjectsOf(this.evidence)[this.chosen]?.subject;
    if (subject) void this.#resale.ask(() => tradeApi.resale(subject));
  }

  override render(): TemplateResult {
    const { value, trouble } = this.#resale;
    const rows = new Map(this.evidence.map((row) => [row.id, row]));
    return html`<div class="stack">
      <div><label for="thing">Of what</label><select id="thing" @change=${(event: Event) => (this.chosen = (event.target as HTMLSelectElement).selectedIndex)}>
        ${subjectsOf(this.evidence).map(({ title, count }, at) => html`<option ?selected=${at === this.chosen}>${title} (${count})</option>`)}
      </select></div>
      ${trouble ? html`<p class="refusal" role="alert">✕ ${trouble}</p>` : ""}
      ${value ? html`<p role="status">${resaleLine(value)}</p>${evidencePicture(value, rows)}${evidenceRows(value, rows)}` : ""}
    </div>`;
  }
}

interface Priced {
  readonly title: string;
  readonly subject: Subject;
  readonly count: number;
}

/** The things that there are prices of, those with most first. */
function subjectsOf(evidence: readonly Evidence[]): readonly Priced[] {
  const found = new Map<string, Priced>();
  for (const { kind, modelId, maker, model, clubType, clubNumber, adapter } of evidence) {
    const subject = { kind, modelId, maker, model, clubType, clubNumber, adapter };
    const key = JSON.stringify(subject);
    const words = [
      maker,
      model,
      clubNumber,
      clubType && clubTypeWords[clubType].toLowerCase(),
      kind !== "club" && itemKindWords[kind].toLowerCase(),
      adapter === "fitted" && "with adapter",
    ].filter(Boolean);
    const count = (found.get(key)?.count ?? 0) + 1;
    found.set(key, { title: words.join(" ") || itemKindWords[kind], subject, count });
  }
  return [...found.values()].sort(
    (one, other) => other.count - one.count || one.title.localeCompare(other.title),
  );
}

customElements.define("ferrule-price-picture", PricePicture);
