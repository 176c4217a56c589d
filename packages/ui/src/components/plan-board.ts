import type { Part, PlanAction } from "@ferrule/core";
import { css, html, type TemplateResult } from "lit";
import { minutesText } from "../format/duration.ts";
import { moneyText } from "../format/money.ts";
import { countText } from "../format/number.ts";
import { hrefs } from "../route.ts";
import { actionTitle } from "../words/action-title.ts";
import { titleById } from "../words/part-title.ts";
import { doOrder, doWords } from "../words/plan-words.ts";
import { sentence } from "./sentence.ts";
import { workList, workListStyles } from "./work-list.ts";

export const planBoardStyles = css`
  .actions {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(17rem, 100%), 1fr));
    gap: 0.75rem;
    align-items: start;
  }
  .group-head {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1rem;
    align-items: baseline;
    justify-content: space-between;
    margin-bottom: 0.5rem;
  }
  .group-head p {
    margin: 0;
  }
  .action {
    padding: 0.6rem 0.75rem;
    border-left: 5px dashed var(--line-strong);
  }
  .action h3 {
    font-size: 0.95rem;
  }
  .action h3 .mono {
    color: var(--ink-soft);
    margin-right: 0.4rem;
  }
  .action p {
    margin: 0.2rem 0 0;
  }
  .money {
    font-family: var(--mono);
    font-weight: 700;
    font-size: 1.05rem;
  }
  .action .row {
    gap: 0 1rem;
  }
  .action .row a {
    display: inline-flex;
    align-items: center;
    min-height: 28px;
  }
  ${workListStyles}
`;

export interface BoardContext {
  readonly parts: ReadonlyMap<string, Part>;
  /** The listing each bought part comes with. */
  readonly boughtWith: ReadonlyMap<string, string>;
  readonly currency: string;
}

/** Everything to do, in order, sort by sort; each with its money and its time. */
export function planBoard(actions: readonly PlanAction[], context: BoardContext): TemplateResult {
  const groups = doOrder
    .map((what) => actions.filter((action) => action.do === what))
    .filter((group) => group.length > 0);
  const firsts = groups.map((_, at) => groups.slice(0, at).reduce((sum, { length }) => sum + length, 1));
  return html`${groups.map((group, at) => renderGroup(group, firsts[at] ?? 1, context))}`;
}

function renderGroup(group: readonly PlanAction[], first: number, context: BoardContext): TemplateResult {
  const what = group[0]?.do ?? "build";
  const net = group.reduce((sum, { netMinor }) => sum + netMinor, 0);
  const minutes = group.reduce((sum, action) => sum + action.minutes, 0);
  return html`<section aria-labelledby="do-${what}">
    <div class="group-head">
      <h2 id="do-${what}">${doWords[what]}</h2>
      <p class="small soft">${countText(group.length, "thing")} · ${moneyText(net, context.currency)}${minutes > 0 ? ` · ${minutesText(minutes)}` : ""}</p>
    </div>
    <ol class="plain actions" start=${first}>${group.map((action, at) => html`<li class="ticket action">${renderAction(action, first + at, context)}</li>`)}</ol>
  </section>`;
}

function renderAction(action: PlanAction, number: number, context: BoardContext): TemplateResult {
  const { netMinor, outlayMinor, minutes, work } = action;
  const title = actionTitle(action, context.parts);
  const facts = [
    minutes > 0 && minutesText(minutes),
    outlayMinor > 0 && outlayMinor !== -netMinor && `${moneyText(outlayMinor, context.currency)} laid out`,
  ];
  return html`<h3><span class="mono">${number}</span>${sentence(title).replace(/\.$/, "")}</h3>
    <p><span class="money">${moneyText(netMinor, context.currency)}</span> <span class="small soft">${facts.filter(Boolean).join(" · ")}</span></p>
    ${action.waitsFor ? renderWaiting(action.waitsFor, context) : ""}
    ${renderLinks(action, context)}
    ${work.length > 0 ? html`<details class="small"><summary>The work: ${countText(work.length, "step")}${work.some(({ cautions }) => cautions.length > 0) ? ", with what to take care of" : ""}</summary>${workList(work, context.currency)}</details>` : ""}`;
}

function renderWaiting(
  { text, takeAtOrUnderMinor }: NonNullable<PlanAction["waitsFor"]>,
  { currency }: BoardContext,
): TemplateResult {
  return html`<p class="small">Missing: ${text}. Take one at or under <strong>${moneyText(takeAtOrUnderMinor, currency)}</strong>.</p>`;
}

function renderLinks(action: PlanAction, context: BoardContext): TemplateResult | string {
  const { parts } = context;
  const links = [
    ...(action.do === "buy" ? [] : action.parts.flatMap((id) => partLink(id, context))),
    ...action.sightings.map(
      (id) => html`<a href=${hrefs.listing(id)} aria-label="The listing ${id}">The listing</a>`,
    ),
    ...clubLink(action, parts),
    ...(action.do === "sell" && action.parts.every((id) => parts.has(id))
      ? [html`<a href=${hrefs.sell(action.parts)} aria-label="It is sold: ${action.title}">It is sold</a>`]
      : []),
    ...(action.do === "wait"
      ? [
          html`<a href="/watch" aria-label="To the watchlist, for ${actionTitle(action, parts)}">To the watchlist</a>`,
        ]
      : []),
  ];
  return links.length > 0 ? html`<div class="row small">${links}</div>` : "";
}

function partLink(id: string, { parts, boughtWith }: BoardContext): TemplateResult[] {
  const sighting = boughtWith.get(id);
  if (sighting !== undefined) return [html`<a href=${hrefs.listing(sighting)}>bought with ${sighting}</a>`];
  return parts.has(id)
    ? [html`<a href=${hrefs.part(id)} title=${titleById(parts, id)} class="mono">${id}</a>`]
    : [];
}

/** A club of parts that are all here has a page of its own. */
function clubLink(action: PlanAction, parts: BoardContext["parts"]): TemplateResult[] {
  const idOf = (kind: Part["kind"]) => action.parts.find((id) => parts.get(id)?.kind === kind);
  const [head, shaft, grip] = [idOf("head"), idOf("shaft"), idOf("grip")];
  if (action.do !== "build" || !head || !shaft || !grip) return [];
  const id = [head, idOf("adapter") ?? "-", shaft, grip].join("+");
  return [
    html`<a href=${hrefs.club({ head, id })} aria-label="How it would measure: ${action.title}">How it would measure</a>`,
  ];
}
