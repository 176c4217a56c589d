import type { Part, Plan, PlanAction } from "@ferrule/core";
import { css, html, type TemplateResult } from "lit";
import { minutesText } from "../format/duration.ts";
import { moneyText } from "../format/money.ts";
import { actionChanges } from "../plan/action-changes.ts";
import { hrefs } from "../route.ts";
import { actionTitle } from "../words/action-title.ts";
import { titleById } from "../words/part-title.ts";
import { bindingSentence, boundSentence, doVerbs } from "../words/plan-words.ts";

export const planSumStyles = css`
  .figures {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(8rem, 100%), 1fr));
    gap: 0.5rem 1.25rem;
  }
  .figures dd {
    font-family: var(--mono);
    font-weight: 700;
    font-size: 1.2rem;
  }
  .sum ul {
    margin: 0.2rem 0 0;
    padding-left: 1.1rem;
    max-width: 75ch;
    overflow-wrap: anywhere;
  }
`;

const perHour = 60;

/** What the plan comes to, and how good it is known to be. */
export function planFigures(plan: Plan): TemplateResult {
  const { netMinor, outlayMinor, minutes, currency } = plan;
  const hourly = minutes > 0 ? moneyText(Math.round((netMinor / minutes) * perHour), currency) : "no hours";
  return html`<dl class="figures">
      <div><dt>Brings</dt><dd>${moneyText(netMinor, currency)}</dd></div>
      <div><dt>Laid out</dt><dd>${moneyText(outlayMinor, currency)}</dd></div>
      <div><dt>Hours</dt><dd>${minutesText(minutes)}</dd></div>
      <div><dt>For an hour</dt><dd>${hourly}</dd></div>
    </dl>
    <p>${boundSentence(plan)}</p>`;
}

/** What keeps the plan from bringing more. Things of one name are said once, at what the best of them would bring. */
export function planBindings({ binding, currency }: Plan): TemplateResult {
  const best = [...binding].sort((one, other) => other.worthMinor - one.worthMinor);
  const shown = best.filter(
    ({ limit, text, worthMinor }, at) =>
      worthMinor > 0 && at === best.findIndex((other) => other.limit === limit && other.text === text),
  );
  if (shown.length === 0) return html`<p class="soft">Nothing that one more of would bring more.</p>`;
  return html`<ul>${shown.map((each) => html`<li>${bindingSentence(each, currency)}</li>`)}</ul>`;
}

/** The best plan that does something else, by what changes. */
export function planNextBest(
  { nextBest, netMinor, actions, currency }: Plan,
  parts: ReadonlyMap<string, Part>,
  isAsking: boolean,
): TemplateResult {
  if (!nextBest && isAsking) return html`<p class="soft">It is being worked out.</p>`;
  if (!nextBest)
    return html`<p class="soft">There is no other: the plan takes no decision that could be left out.</p>`;
  const { added, dropped } = actionChanges(actions, nextBest.actions);
  const lessMinor = netMinor - nextBest.netMinor;
  // It can bring more where an hour has to bring so much, and it takes too many.
  const than = `${moneyText(Math.abs(lessMinor), currency)} ${lessMinor < 0 ? "more, in hours that bring too little" : "less"}`;
  return html`<p>Without <strong>${nextBest.without}</strong> it would bring ${moneyText(nextBest.netMinor, currency)}, ${than}.</p>
    ${changeList("Instead of", dropped, currency, parts)}${changeList("It would", added, currency, parts)}`;
}

function changeList(
  words: string,
  actions: readonly PlanAction[],
  currency: string,
  parts: ReadonlyMap<string, Part>,
): TemplateResult | string {
  if (actions.length === 0) return "";
  return html`<p class="small soft">${words}</p>
    <ul class="small">${actions.map((action) => html`<li>${doVerbs[action.do]} ${actionTitle(action, parts)} (${moneyText(action.netMinor, currency)})</li>`)}</ul>`;
}

/** Listings that could not be planned with, and parts that nothing is done with. */
export function planLeftOut(
  { leftOut, kept }: Plan,
  parts: ReadonlyMap<string, Part>,
  titleOfSighting: (id: string) => string,
): TemplateResult {
  return html`
    ${leftOut.length === 0 ? html`<p class="soft">No open listing was left out.</p>` : html`<ul>${leftOut.map(({ sighting, text }) => html`<li><a href=${hrefs.listing(sighting)}>${titleOfSighting(sighting)}</a>: ${text}</li>`)}</ul>`}
    ${
      kept.length === 0
        ? ""
        : html`<details><summary>Parts that stay as they are (${kept.length})</summary>
      <p class="why">Nothing that is known to bring money is to be done with these.</p>
      <ul>${kept.map((id) => html`<li><a href=${hrefs.part(id)}>${titleById(parts, id)}</a> <span class="mono">${id}</span></li>`)}</ul></details>`
    }`;
}
