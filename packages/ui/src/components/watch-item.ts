import type { Watch } from "@ferrule/core";
import { css, html, LitElement, type TemplateResult } from "lit";
import { tell } from "../events.ts";
import { shareText } from "../format/duration.ts";
import { moneyInput, moneyText, parseMoney } from "../format/money.ts";
import { countText, numberText } from "../format/number.ts";
import { weeksText } from "../format/time-span.ts";
import { baseStyles } from "../styles/base-styles.ts";
import { formStyles } from "../styles/form-styles.ts";
import type { WatchChange, WatchEntry } from "../watch-api.ts";
import { kindWords } from "../words/part-words.ts";
import { chanceWithin, searchLine } from "../words/watch-words.ts";
import { sentence } from "./sentence.ts";

const chanceWeeks = 4;
const clubsShown = 3;

/** One thing that is watched for. Sends `ferrule-watch` with what the user says about it. */
export class WatchItem extends LitElement {
  static override properties = {
    entry: {},
    currency: {},
    cap: { state: true },
    place: { state: true },
    copied: { state: true },
  };
  static override styles = [
    baseStyles,
    formStyles,
    css`
      .figures {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(8.5rem, 100%), 1fr));
        gap: 0.4rem 1.25rem;
        margin: 0.5rem 0;
      }
      .figures dd {
        font-family: var(--mono);
        font-weight: 600;
      }
      .search {
        font-family: var(--mono);
        font-size: 0.875rem;
        overflow-wrap: anywhere;
        background: var(--ticket-2);
        border: 1px dashed var(--line-strong);
        padding: 0.4rem 0.6rem;
        margin: 0.25rem 0;
        max-width: none;
      }
      .state {
        font-family: var(--mono);
        font-size: 0.875rem;
        border: 1.5px solid var(--line-strong);
        border-radius: 3px;
        padding: 0 0.4rem;
      }
      form {
        align-items: end;
        grid-template-columns: repeat(auto-fill, minmax(min(11rem, 100%), 1fr));
      }
    `,
  ];
  declare entry: WatchEntry;
  declare currency: string;
  /** As typed. */
  declare private cap: string | undefined;
  declare private place: string | undefined;
  declare private copied: string | undefined;

  override render(): TemplateResult {
    const { watch, hits, clubs } = this.entry;
    const states = [
      watch.pinned && "Pinned",
      watch.muted && "Muted",
      watch.by === "hand" && "Added by hand",
      hits > 0 && countText(hits, "hit"),
    ].filter(Boolean);
    return html`<div class="row">${states.map((word) => html`<span class="state">${word}</span>`)}</div>
      <h3>${sentence(watch.text).replace(/\.$/, "")}</h3>
      <p class="small soft">${[kindWords[watch.kind], watch.place && `only at ${watch.place}`, watch.note].filter(Boolean).join(" · ")}</p>
      ${this.renderFigures()}
      ${clubs.length > 0 ? html`<p class="small">Would complete ${clubs.slice(0, clubsShown).join("; ")}${clubs.length > clubsShown ? ` and ${clubs.length - clubsShown} more` : ""}.</p>` : ""}
      ${this.renderButtons()}
      <details class="small"><summary>Search words</summary>${this.renderSearch()}</details>
      <details class="small"><summary>Cap and place</summary>${this.renderForm()}</details>`;
  }

  private renderFigures(): TemplateResult {
    const { worthMinor, capMinor, waiting } = this.entry;
    const money = (minor: number | null) =>
      minor === null ? "Not known yet" : moneyText(minor, this.currency);
    const weeks = waiting?.expectedWaitWeeks ?? null;
    return html`<dl class="figures">
        <div><dt>Worth here</dt><dd>${money(worthMinor)}</dd></div>
        <div><dt>Cap</dt><dd>${money(capMinor)}</dd></div>
        ${
          waiting
            ? html`<div><dt>Take one at or under</dt><dd>${money(waiting.takeAtOrUnderMinor)}</dd></div>
              <div><dt>Wait to expect</dt><dd>${weeks === null ? "Never, at that price" : weeksText(weeks)}</dd></div>
              ${weeks === null ? "" : html`<div><dt>Chance within ${weeksText(chanceWeeks)}</dt><dd>${shareText(chanceWithin(chanceWeeks, weeks))}</dd></div>`}`
            : ""
        }
      </dl>
      ${waiting ? html`<p class="small soft">${waiting.priorOnly ? "How often one comes is an assumption: your log holds none of these yet." : `Rests on ${countText(waiting.sightings, "sighting")} in your log, about ${numberText(waiting.ratePerWeek, 2)} a week.`}</p>` : ""}`;
  }

  private renderButtons(): TemplateResult {
    const { pinned, muted, by, text } = this.entry.watch;
    return html`<div class="row">
      <button aria-pressed=${pinned === true} aria-label="Pin ${text}" @click=${() => this.#change({ pinned: !pinned })}>${pinned ? "Unpin" : "Pin"}</button>
      <button aria-pressed=${muted === true} aria-label="Mute ${text}" @click=${() => this.#change({ muted: !muted })}>${muted ? "Unmute" : "Mute"}</button>
      ${by === "hand" ? html`<button aria-label="Take off the list: ${text}" @click=${() => tell(this, "ferrule-unwatch", this.entry.watch)}>Take off the list</button>` : ""}
    </div>`;
  }

  private renderSearch(): TemplateResult {
    const line = searchLine(this.entry.search);
    return html`<p class="search">${line}</p>
      <div class="row"><button aria-label="Copy the search words for ${this.entry.watch.text}" @click=${() => this.#copy(line)}>Copy</button><span role="status">${this.copied ?? ""}</span></div>`;
  }

  private renderForm(): TemplateResult {
    const { watch } = this.entry;
    const cap = this.cap ?? (watch.capMinor === undefined ? "" : moneyInput(watch.capMinor, this.currency));
    const isWrong = cap.trim() !== "" && parseMoney(cap, this.currency) === undefined;
    const place = this.place ?? watch.place ?? "";
    return html`<form class="grid" novalidate @submit=${(event: Event) => this.#save(event, cap, place)}>
      <div><label for="cap">Pay at most (${this.currency})</label>
        <input id="cap" inputmode="decimal" autocomplete="off" placeholder="What it is worth" aria-invalid=${isWrong} aria-describedby="cap-refused" .value=${cap} @input=${(event: Event) => this.#typed({ cap: (event.target as HTMLInputElement).value })} />
        <div id="cap-refused">${isWrong ? html`<p class="refusal">✕ An amount is expected, such as 12.50.</p>` : ""}</div></div>
      <div><label for="place">Only at this place</label>
        <input id="place" autocomplete="off" placeholder="Anywhere" maxlength="200" .value=${place} @input=${(event: Event) => this.#typed({ place: (event.target as HTMLInputElement).value })} /></div>
      <button type="submit" ?disabled=${isWrong} aria-label="Keep cap and place of ${watch.text}">Keep</button>
    </form>`;
  }

  /** The want as it was when typing began, whatever somebody else makes of it meanwhile. */
  #typedOver: Watch | undefined;

  #typed(typed: { readonly cap?: string; readonly place?: string }): void {
    this.#typedOver ??= this.entry.watch;
    Object.assign(this, typed);
  }

  #save(event: Event, cap: string, place: string): void {
    event.preventDefault();
    const change = { capMinor: parseMoney(cap, this.currency) ?? null, place: place.trim() || null };
    tell(this, "ferrule-watch", { change, base: this.#typedOver ?? this.entry.watch });
    this.#typedOver = undefined;
    this.cap = undefined;
    this.place = undefined;
  }

  #change(change: WatchChange): void {
    tell(this, "ferrule-watch", { change, base: this.entry.watch });
  }

  async #copy(line: string): Promise<void> {
    this.copied = await navigator.clipboard.writeText(line).then(
      () => "Copied.",
      () => "The browser does not allow it; mark the words and copy them.",
    );
  }
}

customElements.define("ferrule-watch-item", WatchItem);
