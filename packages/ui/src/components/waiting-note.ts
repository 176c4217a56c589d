import type { WaitingAnswer } from "@ferrule/core";
import { html, type TemplateResult } from "lit";
import { shareText } from "../format/duration.ts";
import { moneyText } from "../format/money.ts";
import { countText, numberText } from "../format/number.ts";
import { weeksText } from "../format/time-span.ts";
import { sentence } from "./sentence.ts";

/** What waiting for the missing part comes to: the price to take it at, how long that takes, and what that rests on. */
export function waitingNote(waiting: WaitingAnswer, currency: string): TemplateResult {
  const { text, takeAtOrUnderMinor, expectedWaitWeeks, chanceByDeadline, valueMinor, priorOnly } = waiting;
  return html`<p><strong>${sentence(text)}</strong></p>
    <dl class="figures">
      <div><dt>Take one at or under</dt><dd>${moneyText(takeAtOrUnderMinor, currency)}</dd></div>
      <div><dt>Wait to expect</dt><dd>${expectedWaitWeeks === null ? "Never, at that price" : weeksText(expectedWaitWeeks)}</dd></div>
      ${chanceByDeadline === null ? "" : html`<div><dt>Chance by your deadline</dt><dd>${shareText(chanceByDeadline)}</dd></div>`}
      <div><dt>What waiting is worth today</dt><dd>${moneyText(valueMinor, currency)}</dd></div>
    </dl>
    ${chanceLine(waiting)}
    <p class="small soft">${priorOnly ? priorText(waiting) : `Rests on ${countText(waiting.sightings, "sighting")} in your log, about ${rateText(waiting)} a week.`}</p>`;
}

function chanceLine({ chanceWithinWeeks }: WaitingAnswer): TemplateResult | string {
  if (chanceWithinWeeks.length === 0) return "";
  return html`<p class="small">Chance of one at that price ${chanceWithinWeeks.map(({ weeks, chance }, at) => html`${at > 0 ? ", " : ""}within ${weeksText(weeks)} <strong>${shareText(chance)}</strong>`)}.</p>`;
}

function priorText(waiting: WaitingAnswer): string {
  const log =
    waiting.sightings === 0
      ? "Your log holds none of these yet"
      : `Your log holds ${countText(waiting.sightings, "sighting")} of these, too few to say`;
  return `${log}: how often they come (${rateText(waiting)} a week) and at what price are assumptions. Every listing you paste makes them yours.`;
}

function rateText({ ratePerWeek }: WaitingAnswer): string {
  return numberText(ratePerWeek, 2);
}
