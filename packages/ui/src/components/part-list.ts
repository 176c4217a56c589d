import { type FoundCode, type Joint, type Part, typedCode } from "@ferrule/core";
import { css, html, LitElement, type PropertyValues } from "lit";
import { afterPaint } from "../after-paint.ts";
import type { BenchContext } from "../bench-context.ts";
import { tell } from "../events.ts";
import { failed } from "../fetched.ts";
import { countText } from "../format/number.ts";
import { labelApi } from "../label-api.ts";
import { hrefs } from "../route.ts";
import { noFilter, type PartFilter, type PartFinder, partFinder } from "../search/find-parts.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { shortFacts } from "../words/part-facts.ts";
import { partTitle, titleById } from "../words/part-title.ts";
import { clubTypeWords, flexWords, handWords, jointWords, kindWords } from "../words/part-words.ts";

const { either: _either, ...oneHand } = handWords;

const narrowings = [
  { name: "kind", label: "Kind", choices: kindWords },
  { name: "clubType", label: "Club type", choices: clubTypeWords },
  { name: "hand", label: "Hand", choices: oneHand },
  { name: "flex", label: "Flex", choices: flexWords },
  { name: "joined", label: "Joined", choices: { loose: "Loose", joined: "In a club or joined" } },
] as const;

/** Rows at first and with each press for more: as many as a phone can lay out while somebody types. */
const rowsAtOnce = 20;

/** The parts of the bench, to search and narrow. */
export class PartList extends LitElement {
  static override properties = {
    context: {},
    filter: { state: true },
    most: { state: true },
    coded: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    css`
      .filters {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(8.5rem, 1fr));
        gap: 0.5rem;
      }
      .filters label,
      .search label {
        font-size: 0.875rem;
      }
      .part {
        display: grid;
        grid-template-columns: minmax(0, 1fr) auto;
        gap: 0 0.75rem;
        padding: 0.5rem 0;
        border-top: 1px solid var(--line);
        /* Rows out of sight are not laid out while somebody types. */
        content-visibility: auto;
        contain-intrinsic-size: auto 4.5rem;
      }
      .part a {
        font-weight: 600;
        display: inline-flex;
        align-items: center;
        min-height: 28px;
      }
      .part p {
        grid-column: 1 / -1;
        margin: 0;
        font-size: 0.875rem;
      }
      .results {
        margin-top: 0.75rem;
      }
    `,
  ];
  declare context: BenchContext;
  declare private filter: PartFilter;
  /** How many rows are shown. */
  declare private most: number;
  /** What the code of a label that was typed or scanned into the search led to. */
  declare private coded: FoundCode | undefined;

  #find: PartFinder = () => [];

  constructor() {
    super();
    this.filter = noFilter;
    this.most = rowsAtOnce;
  }

  override willUpdate(changed: PropertyValues): void {
    if (changed.has("context"))
      this.#find = partFinder([...this.context.parts.values()], this.context.joints);
    if (changed.has("filter")) this.most = rowsAtOnce;
  }

  override render() {
    const all = this.context.parts.size;
    const found = this.#find(this.filter);
    const shown = found.slice(0, this.most);
    return html`<section class="ticket" aria-labelledby="parts">
      <h2 id="parts">Parts</h2>
      <div class="search">
        <label for="text">Search</label>
        <input id="text" type="search" .value=${this.filter.text} autocomplete="off" placeholder="Maker, model, family, note, code …" @input=${this.#typed} @keydown=${this.#entered} />
      </div>
      <div aria-live="polite">${this.renderCoded()}</div>
      <details>
        <summary>Narrow it down${this.renderNarrowed()}</summary>
        <div class="filters">${narrowings.map((narrowing) => this.renderNarrowing(narrowing))}</div>
      </details>
      <p class="small soft results" role="status">
        ${found.length === all ? countText(all, "part") : `${found.length} of ${countText(all, "part")}`}${shown.length < found.length ? `, ${shown.length} shown` : ""}
      </p>
      ${found.length === 0 ? html`<p>Nothing like that. <button @click=${() => (this.filter = noFilter)}>Show everything</button></p>` : ""}
      <ul class="plain">${shown.map((part) => html`<li class="part">${this.renderPart(part)}</li>`)}</ul>
      ${shown.length < found.length ? html`<button @click=${this.#showMore}>Show ${Math.min(rowsAtOnce, found.length - shown.length)} more</button>` : ""}
    </section>`;
  }

  private renderCoded() {
    if (!this.coded) return "";
    const { code, part, near } = this.coded;
    const link = (id: string) => html`<a href=${hrefs.part(id)}>${titleById(this.context.parts, id)}</a>`;
    if (part !== null) return html`<p><span class="mono">${code}</span> is ${link(part)}.</p>`;
    if (near.length === 0)
      return html`<p>Nothing on the bench has the code <span class="mono">${code}</span>.</p>`;
    return html`<p>Nothing on the bench has the code <span class="mono">${code}</span>. Did you mean ${near.map((one, at) => html`${at > 0 ? " or " : ""}<span class="mono">${one.code}</span>, ${link(one.part)}`)}?</p>`;
  }

  private renderNarrowed() {
    const count = narrowings.filter(({ name }) => this.filter[name] !== "").length;
    return count === 0 ? "" : ` (${count} in use)`;
  }

  private renderNarrowing({ name, label, choices }: (typeof narrowings)[number]) {
    return html`<div>
      <label for=${name}>${label}</label>
      <select id=${name} .value=${this.filter[name]} @change=${(event: Event) => this.#narrow(name, event)}>
        <option value="">Any</option>
        ${Object.entries(choices).map(([value, word]) => html`<option value=${value} ?selected=${this.filter[name] === value}>${word}</option>`)}
      </select>
    </div>`;
  }

  private renderPart(part: Part) {
    const facts = shortFacts(part, this.context.lengthUnit);
    const joints = this.context.joints
      .filter((joint) => joint.parts.includes(part.id))
      .map((joint) => this.jointText(part, joint));
    return html`<a href=${hrefs.part(part.id)}>${partTitle(part)}</a><span class="mono soft">${part.id}</span>
      <p class="soft">${facts.join(" · ") || "Nothing known of it yet"}</p>
      ${part.soldOn === undefined ? "" : html`<p><strong>Sold</strong> on ${part.soldOn}</p>`}
      ${joints.length > 0 ? html`<p>Joined: ${joints.join(", ")}</p>` : ""}`;
  }

  private jointText(part: Part, joint: Joint): string {
    const other = joint.parts[0] === part.id ? joint.parts[1] : joint.parts[0];
    return `${jointWords[joint.type]} ${other}`;
  }

  readonly #showMore = () => {
    this.most += rowsAtOnce;
  };

  readonly #typed = (event: Event) => {
    this.filter = { ...this.filter, text: (event.target as HTMLInputElement).value };
    this.coded = undefined;
    if (typedCode(this.filter.text).is === "code") void this.#lookUp(this.filter.text);
  };

  /** A scanner that types ends with Enter, faster than any answer; so the code is looked up here whatever was asked before. */
  readonly #entered = async (event: KeyboardEvent) => {
    const text = (event.target as HTMLInputElement).value;
    if (event.key !== "Enter" || typedCode(text).is === "no-code") return;
    const part = await this.#lookUp(text);
    if (part) tell(this, "ferrule-go", { path: hrefs.part(part) });
  };

  async #lookUp(text: string): Promise<string | undefined> {
    const found = await labelApi.find(text).catch((error: unknown) => void failed(error));
    if (this.filter.text !== text) return undefined;
    this.coded = found || undefined;
    return this.coded?.part ?? undefined;
  }

  /** The choice shows at once, and what it leaves of the list right after. */
  #narrow(name: keyof PartFilter, event: Event): void {
    const { value } = event.target as HTMLSelectElement;
    afterPaint(() => {
      this.filter = { ...this.filter, [name]: value };
    });
  }
}

customElements.define("ferrule-part-list", PartList);
