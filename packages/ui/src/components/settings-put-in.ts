import type { Refusal } from "@ferrule/core";
import { css, html, LitElement, type TemplateResult } from "lit";
import { ApiError } from "../api.ts";
import { tell } from "../events.ts";
import { failed } from "../fetched.ts";
import { refusalText } from "../form/refusals-at.ts";
import { countText } from "../format/number.ts";
import { parseNumber } from "../format/parse-number.ts";
import { type PutInReply, type Region, type SettingsSource, settingsApi } from "../settings-api.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { settingText, settingValueText } from "../words/setting-words.ts";

/**
 * Many settings at once: first values of a region, or a file. Shows what would change before it is done, and says
 * `ferrule-settings` once it is.
 */
export class SettingsPutIn extends LitElement {
  static override properties = {
    regions: {},
    currency: {},
    source: { state: true },
    shown: { state: true },
    trouble: { state: true },
    refusals: { state: true },
    wantsRate: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    css`
      dl {
        margin: 0;
      }
      dt {
        font-weight: 600;
        margin-top: 0.5rem;
      }
      dd {
        margin: 0;
        overflow-wrap: anywhere;
      }
      del {
        color: var(--ink-soft);
      }
    `,
  ];
  declare regions: readonly Region[];
  /** The bench's currency as it stands. */
  declare currency: string;
  declare private source: SettingsSource | undefined;
  declare private shown: PutInReply | undefined;
  declare private trouble: string | undefined;
  declare private refusals: readonly Refusal[];
  declare private wantsRate: boolean;

  constructor() {
    super();
    this.regions = [];
    this.refusals = [];
    this.currency = "EUR";
    this.wantsRate = false;
  }

  override render() {
    return html`<div class="stack">
      <div class="grid">
        <div>
          <label for="region">First values for</label>
          <select id="region" @change=${this.#regionChosen}>
            <option value="" .selected=${this.#region() === undefined}>Choose a region</option>
            ${this.regions.map(({ id, name }) => html`<option value=${id} .selected=${this.#region() === id}>${name}</option>`)}
          </select>
        </div>
        <div>
          <label for="file">Or a file of settings</label>
          <input id="file" type="file" accept=".json,application/json" @change=${this.#fileChosen} />
        </div>
      </div>
      <div aria-live="polite" class="stack">${this.renderTrouble()}${this.shown ? this.renderShown(this.shown) : ""}</div>
    </div>`;
  }

  private renderTrouble() {
    if (!this.trouble) return "";
    return html`<div role="alert"><p class="refusal">✕ ${this.trouble}</p>
        ${this.refusals.map((refusal) => html`<p>${refusal.field}: ${refusalText(refusal)}</p>`)}</div>
      ${this.wantsRate ? this.renderRate() : ""}`;
  }

  private renderRate() {
    return html`<form class="row" @submit=${this.#rated}>
      <div><label for="rate">One ${this.currency} is worth, in the new currency</label><input id="rate" inputmode="decimal" autocomplete="off" /></div>
      <button type="submit">Show again</button>
    </form>`;
  }

  private renderShown({ changes }: PutInReply): TemplateResult {
    const region = this.regions.find(({ id }) => id === this.#region());
    if (changes.length === 0) return html`<p>Nothing would change: all of it is set so already.</p>`;
    const currency = (side: "before" | "after") =>
      (changes.find(({ path }) => path === "costs.currency")?.[side] as string | undefined) ?? this.currency;
    const told = new Set<string>();
    /** What a figure rests on, once for all that rest on the same. */
    const basis = (path: string) => {
      const row = region?.rows.find(({ of }) => path === of || path.startsWith(`${of}.`));
      if (!row || told.has(row.of)) return "";
      told.add(row.of);
      return html`<br /><span class="small soft">${row.basis}</span>`;
    };
    return html`<h3>${countText(changes.length, "setting")} would change</h3>
      <dl>${changes.map(
        ({ path, before, after }) => html`<dt>${settingText(path)}</dt>
          <dd><del>${settingValueText(path, before, currency("before"))}</del> → <strong>${settingValueText(path, after, currency("after"))}</strong>
            ${basis(path)}</dd>`,
      )}</dl>
      <div class="row">
        <button class="main" @click=${() => this.#putIn(false)}>Put them in</button>
        <button @click=${this.#drop}>Leave everything as it is</button>
      </div>`;
  }

  #region(): string | undefined {
    return this.source && "region" in this.source ? this.source.region : undefined;
  }

  readonly #regionChosen = (event: Event) => {
    const region = (event.target as HTMLSelectElement).value;
    if (region === "") return this.#drop();
    this.source = { region };
    void this.#putIn(true);
  };

  readonly #fileChosen = async (event: Event) => {
    const [file] = (event.target as HTMLInputElement).files ?? [];
    if (!file) return;
    this.source = { text: await file.text() };
    await this.#putIn(true);
  };

  #rate: number | undefined;

  readonly #rated = (event: Event) => {
    event.preventDefault();
    this.#rate = parseNumber(this.renderRoot.querySelector<HTMLInputElement>("#rate")?.value ?? "");
    void this.#putIn(true);
  };

  readonly #drop = () => {
    this.source = undefined;
    this.shown = undefined;
    this.trouble = undefined;
    this.refusals = [];
    this.wantsRate = false;
    this.#rate = undefined;
    const file = this.renderRoot.querySelector<HTMLInputElement>("#file");
    if (file) file.value = "";
  };

  async #putIn(dryRun: boolean): Promise<void> {
    const { source } = this;
    if (!source) return;
    const rate = this.#rate === undefined ? {} : { rate: this.#rate };
    try {
      const reply = await settingsApi.putIn(source, { dryRun, ...rate });
      this.trouble = undefined;
      this.refusals = [];
      this.wantsRate = false;
      this.shown = reply;
      if (!dryRun) this.#done(reply);
    } catch (error) {
      this.shown = undefined;
      this.trouble = `${failed(error).message}.`;
      this.refusals = error instanceof ApiError ? error.refusals : [];
      this.wantsRate = this.refusals.some(({ field }) => field.endsWith("costs.currency"));
    }
  }

  #done({ changes }: PutInReply): void {
    this.#drop();
    tell(this, "ferrule-settings", undefined);
    tell(this, "ferrule-done", {
      text: `${countText(changes.length, "setting")} changed.`,
      undo: () => settingsApi.takeBack(),
      undone: "The settings are as they were.",
    });
  }
}

customElements.define("ferrule-settings-put-in", SettingsPutIn);
