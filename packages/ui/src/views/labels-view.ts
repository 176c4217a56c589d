import type { Part } from "@ferrule/core";
import { css, html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import { api } from "../api.ts";
import "../components/label-setup-form.ts";
import { emptyNote, whenReady } from "../components/state-notes.ts";
import type { DisplaySettings } from "../display-settings.ts";
import { tell } from "../events.ts";
import { Fetched, failed } from "../fetched.ts";
import { countText } from "../format/number.ts";
import { type Label, type LabelsReply, labelApi } from "../label-api.ts";
import { labelCard, labelCardStyles } from "../labels/label-card.ts";
import { chosenCodes, type LabelChoice } from "../labels/label-choice.ts";
import { type LabelPage, type LabelSetup, labelPage, labelPages } from "../labels/label-sheet.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import { titleById } from "../words/part-title.ts";
import { kindWords } from "../words/part-words.ts";

const choices = { new: "New since last printed", all: "All", ...kindWords } as const;

/** Labels that are shown on the screen; paper has all of them. */
const shownMost = 8;
/** Labels that can be ticked at once; the search finds the others. */
const ticksMost = 40;

const styles = css`
  .ticks {
    columns: 17rem;
    max-height: 24rem;
    overflow: auto;
  }
  .ticks li {
    break-inside: avoid;
  }
  .pages {
    overflow-x: auto;
  }
  .page {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem;
  }
  .place:empty {
    display: none;
  }
  @media screen {
    .page {
      margin: 0;
    }
    .page:has(.place:not(:empty)) {
      margin-bottom: 0.5rem;
    }
    .tag {
      border-radius: 3px;
      outline: 1px solid var(--line-strong);
    }
  }
  @media print {
    .screen {
      display: none !important;
    }
    /* Whatever pushed the first sheet down would push its labels off their places. */
    .stack > * {
      margin: 0 !important;
    }
    .pages {
      overflow: visible;
    }
    .page {
      display: grid;
      grid-template-columns: repeat(var(--columns), var(--label-width));
      grid-auto-rows: var(--label-height);
      gap: var(--gap-down) var(--gap-across);
      align-content: start;
      width: var(--page-width);
      /* A hair less than the paper, so that no rounding makes a sheet of nothing. */
      height: calc(var(--page-height) - 0.3mm);
      overflow: hidden;
      margin: 0;
      padding: var(--page-top) 0 0 var(--page-left);
      break-after: page;
      print-color-adjust: exact;
      -webkit-print-color-adjust: exact;
    }
    .page:last-child {
      break-after: auto;
    }
    .place:empty {
      display: block;
    }
  }
`;

/** Labels to print for shelf and bag. */
export class LabelsView extends LitElement {
  static override properties = {
    display: {},
    chosen: {},
    ticked: { state: true },
    choice: { state: true },
    used: { state: true },
    text: { state: true },
    isOpen: { state: true },
    isPrinting: { state: true },
    trouble: { state: true },
  };
  static override styles = [baseStyles, formStyles, labelCardStyles, styles];
  declare display: DisplaySettings;
  /** Parts whose labels are wanted, where the address names some. */
  declare chosen: readonly string[];
  /** The codes that are ticked; until somebody ticks, what the choice means. */
  declare private ticked: ReadonlySet<string> | undefined;
  declare private choice: LabelChoice;
  declare private used: number;
  /** What is looked for among those to tick. */
  declare private text: string;
  declare private isOpen: boolean;
  /** Labels that are not shown on the screen are made only for paper: a bench of a thousand has as many codes to draw. */
  declare private isPrinting: boolean;
  declare private trouble: string | undefined;
  readonly #bench = new Fetched(this, api.bench);
  readonly #labels = new Fetched(this, labelApi.labels);
  /** The size of the paper can be said only to the whole document. */
  readonly #paper = new CSSStyleSheet();

  constructor() {
    super();
    this.chosen = [];
    this.choice = "new";
    this.used = 0;
    this.text = "";
    this.isOpen = false;
    this.isPrinting = false;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, this.#paper];
    window.addEventListener("beforeprint", this.#printing);
    window.addEventListener("afterprint", this.#printing);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((sheet) => sheet !== this.#paper);
    window.removeEventListener("beforeprint", this.#printing);
    window.removeEventListener("afterprint", this.#printing);
  }

  override render() {
    return html`<div class="stack" @ferrule-retry=${this.#again}>
      <div class="screen">
        <h1 tabindex="-1">Labels</h1>
        <p class="soft">For shelf and bag: a short code, what it is, and a code to scan. Whoever scans it, or types the five characters on <a href="/code">Find by code</a> or into the bench’s search, is at the part.</p>
        ${this.trouble ? html`<p class="ticket" role="alert">${this.trouble}</p>` : ""}
      </div>
      ${whenReady(this.#bench.state, "the bench", (bench) =>
        whenReady(this.#labels.state, "the labels", (reply) =>
          this.renderLabels(reply, new Map(bench.parts.map((part) => [part.id, part]))),
        ),
      )}
    </div>`;
  }

  private renderLabels(reply: LabelsReply, parts: ReadonlyMap<string, Part>): TemplateResult {
    if (reply.labels.length === 0)
      return emptyNote("Nothing to label yet", "Every part on the bench gets a code of its own.");
    const ticked = this.#tickedOf(reply.labels, parts);
    const labels = reply.labels.filter(({ code }) => ticked.has(code));
    const page = labelPage(reply.setup);
    return html`
      <section class="ticket stack screen" aria-labelledby="which">
        <h2 id="which">Which</h2>
        ${this.renderChoice(reply.labels, parts, ticked)}
      </section>
      <section class="ticket stack screen" aria-labelledby="paper">
        <h2 id="paper">On what</h2>
        <ferrule-label-setup .setup=${reply.setup} @input=${() => (this.#typedOver ??= reply.setup)} @ferrule-label-setup=${(event: CustomEvent<LabelSetup>) => this.#keepSetup(event.detail, reply.setup)}></ferrule-label-setup>
        ${page && page.columns * page.rows > 1 ? this.renderUsed(page) : ""}
        ${reply.address === null ? html`<p class="why">Only this machine can open this bench, so the code to scan holds the five characters alone. Served on the local network, labels carry the address of the part’s page.</p>` : html`<p class="why">The code to scan opens ${reply.address}. Should that address change, the five characters still find the part.</p>`}
      </section>
      ${page ? this.renderPages(labels, page, parts, reply) : html`<p class="ticket screen" role="alert">✕ Not even one label of this size goes on this paper.</p>`}
    `;
  }

  private renderChoice(
    labels: readonly Label[],
    parts: ReadonlyMap<string, Part>,
    ticked: ReadonlySet<string>,
  ) {
    const choose = (event: Event) => {
      this.choice = (event.target as HTMLSelectElement).value as LabelChoice;
      this.ticked = chosenCodes(labels, parts, this.choice);
    };
    return html`<div class="grid"><div>
        <label for="choice">Labels of</label>
        <select id="choice" @change=${choose}>${Object.entries(choices).map(([value, word]) => html`<option value=${value} .selected=${value === this.choice}>${word}</option>`)}</select>
      </div></div>
      <details ?open=${ticked.size === 0} @toggle=${(event: Event) => (this.isOpen = (event.target as HTMLDetailsElement).open)}>
        <summary>One by one: ${ticked.size} of ${labels.length} ticked</summary>
        ${this.isOpen || ticked.size === 0 ? this.renderTicks(labels, parts, ticked) : ""}
      </details>`;
  }

  private renderTicks(
    labels: readonly Label[],
    parts: ReadonlyMap<string, Part>,
    ticked: ReadonlySet<string>,
  ) {
    const tick = (code: string) => {
      const next = new Set(ticked);
      if (!next.delete(code)) next.add(code);
      this.ticked = next;
    };
    const wanted = this.text.trim().toLowerCase().split(/\s+/);
    const found = labels.filter(({ code, part }) => {
      const words = `${code} ${titleById(parts, part)} ${part}`.toLowerCase();
      return wanted.every((word) => words.includes(word));
    });
    return html`
      ${labels.length > ticksMost ? html`<div><label for="find">Find among them</label><input id="find" type="search" autocomplete="off" .value=${this.text} @input=${(event: Event) => (this.text = (event.target as HTMLInputElement).value)} /></div>` : ""}
      <ul class="plain ticks">${found
        .slice(0, ticksMost)
        .map(
          ({ code, part, printed }) =>
            html`<li><label class="tick"><input type="checkbox" .checked=${ticked.has(code)} @change=${() => tick(code)} /><span><span class="mono">${code}</span> ${titleById(parts, part)} <span class="soft small">${part}${printed ? ", printed" : ""}</span></span></label></li>`,
        )}</ul>
      ${found.length > ticksMost ? html`<p class="small soft">${found.length - ticksMost} more; search to find them.</p>` : ""}`;
  }

  private renderUsed({ columns, rows }: LabelPage) {
    const typed = (event: Event) => {
      const count = Math.trunc(Number((event.target as HTMLInputElement).value));
      this.used = Number.isFinite(count) ? Math.min(Math.max(0, count), columns * rows - 1) : 0;
    };
    return html`<div class="grid"><div>
      <label for="used">Labels gone from the first sheet</label>
      <input id="used" inputmode="numeric" autocomplete="off" .value=${String(this.used)} @change=${typed} />
    </div></div>
    <p class="why">${columns} across, ${rows} down, ${columns * rows} to a sheet. Print at 100 %, without margins of the browser’s own, and hold a first sheet on plain paper against the labels.</p>`;
  }

  private renderPages(
    labels: readonly Label[],
    page: LabelPage,
    parts: ReadonlyMap<string, Part>,
    { address }: LabelsReply,
  ) {
    const pages = labelPages(labels, page, this.used);
    const made = this.isPrinting ? pages : labelPages(labels.slice(0, shownMost), page, this.used);
    const shown = { address, lengthUnit: this.display.lengthUnit };
    const sheets = page.columns * page.rows > 1 ? `, ${countText(pages.length, "sheet")}` : "";
    return html`<div class="row screen">
        <button class="main" ?disabled=${labels.length === 0} @click=${() => window.print()}>Print ${countText(labels.length, "label")}${sheets}</button>
        <button ?disabled=${labels.length === 0} @click=${() => this.#mark(labels)}>They are printed</button>
      </div>
      ${labels.length > shownMost ? html`<p class="small soft screen">Here the first ${shownMost}; on paper all of them.</p>` : ""}
      <section class="pages" aria-label="The labels">${made.map(
        (places) =>
          html`<div class="page">${places.map((label) => html`<div class="place">${label ? labelCard(label, parts, shown) : ""}</div>`)}</div>`,
      )}</section>`;
  }

  #tickedOf(labels: readonly Label[], parts: ReadonlyMap<string, Part>): ReadonlySet<string> {
    if (this.ticked) return this.ticked;
    if (this.chosen.length === 0) return chosenCodes(labels, parts, this.choice);
    const isChosen = ({ part, joined }: Label) => [part, ...joined].some((id) => this.chosen.includes(id));
    return new Set(labels.filter(isChosen).map(({ code }) => code));
  }

  protected override updated(_changed: PropertyValues): void {
    if (this.#labels.state.is !== "ready") return;
    const { setup } = this.#labels.state.value;
    const page = labelPage(setup);
    if (!page) return;
    const lengths = {
      "--label-width": setup.widthMm,
      "--label-height": setup.heightMm,
      "--gap-across": setup.gapAcrossMm,
      "--gap-down": setup.gapDownMm,
      "--page-width": page.widthMm,
      "--page-height": page.heightMm,
      "--page-left": page.leftMm,
      "--page-top": page.topMm,
    };
    for (const [name, mm] of Object.entries(lengths)) this.style.setProperty(name, `${mm}mm`);
    this.style.setProperty("--columns", String(page.columns));
    this.#paper.replaceSync(`@page { size: ${page.widthMm}mm ${page.heightMm}mm; margin: 0 }`);
  }

  /** At once, since the browser lays the paper out as soon as it has told. */
  readonly #printing = ({ type }: Event) => {
    this.isPrinting = type === "beforeprint";
    this.performUpdate();
  };

  readonly #again = () => {
    void this.#bench.again();
    void this.#labels.again();
  };

  /** The setup as it was when typing began, whatever somebody else makes of it meanwhile. */
  #typedOver: LabelSetup | undefined;

  async #keepSetup(setup: LabelSetup, present: LabelSetup): Promise<void> {
    const isKept = await this.#try(() => labelApi.changeSetup(setup, this.#typedOver ?? present));
    if (isKept) this.#typedOver = undefined;
  }

  async #mark(labels: readonly Label[]): Promise<void> {
    const codes = labels.map(({ code }) => code);
    const isDone = await this.#try(() => labelApi.markPrinted(codes, true));
    if (!isDone) return;
    this.ticked = undefined;
    this.choice = "new";
    const text = `${countText(codes.length, "label")} noted as printed.`;
    const undo = () => labelApi.markPrinted(codes, false);
    tell(this, "ferrule-done", { text, undo, undone: "They are not noted as printed." });
  }

  async #try(work: () => Promise<unknown>): Promise<boolean> {
    this.trouble = await work().then(
      () => undefined,
      (error: unknown) => `${failed(error).message}.`,
    );
    await this.#labels.again();
    return this.trouble === undefined;
  }
}

customElements.define("ferrule-labels-view", LabelsView);
