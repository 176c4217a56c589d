import type { DealItem, Evidence, WorkStep } from "@ferrule/core";
import { css, html, type TemplateResult } from "lit";
import { countText } from "../format/number.ts";
import { evidencePicture, evidenceRows, resaleLine } from "./evidence-rows.ts";
import { sentence } from "./sentence.ts";
import { workList, workListStyles } from "./work-list.ts";
import "./verdict-mark.ts";

const mostClubs = 3;

export const dealItemStyles = css`
  ${workListStyles}
  .made {
    padding: 0.5rem 0.75rem;
    border-left: 3px dashed var(--line-strong);
    background: var(--ticket-2);
    border-radius: 0 4px 4px 0;
    margin-top: 0.4rem;
    overflow-wrap: anywhere;
  }
  .made p,
  .made ul {
    margin: 0.15rem 0;
  }
  .item + .item {
    border-top: 2px dashed var(--line);
    padding-top: 1rem;
  }
`;

/** What one item of a listing is to this bench: what it sells for by itself, the clubs it makes, and what it would still lack. */
export function dealItem(
  item: DealItem,
  evidence: ReadonlyMap<string, Evidence>,
  noteForm: TemplateResult,
  currency: string,
): TemplateResult {
  return html`<div class="item">
    <h3>${item.title}</h3>
    <p>${resaleLine(item.resale)}</p>
    ${evidencePicture(item.resale, evidence)}
    ${evidenceRows(item.resale, evidence)}
    ${noteForm}
    ${clubList(item, evidence, currency)}
    ${
      item.wants.length > 0
        ? html`<details><summary>Lacks, to become a club: ${countText(item.wants.length, "thing")}</summary>
          <ul>${item.wants.map(({ text }) => html`<li>${sentence(text)}</li>`)}</ul></details>`
        : ""
    }
  </div>`;
}

function clubList(
  { clubs }: DealItem,
  evidence: ReadonlyMap<string, Evidence>,
  currency: string,
): TemplateResult {
  if (clubs.length === 0)
    return html`<p class="small">Makes no club with what is on the bench and the skill allowed.</p>`;
  const [some, rest] = [clubs.slice(0, mostClubs), clubs.slice(mostClubs)];
  const list = (of: DealItem["clubs"]) =>
    html`<ul class="plain">${of.map((club) => html`<li class="made">${clubRow(club, evidence, currency)}</li>`)}</ul>`;
  return html`<p><strong>Makes ${countText(clubs.length, "club")} with what is here</strong></p>
    ${list(some)}
    ${rest.length > 0 ? html`<details><summary>${countText(rest.length, "more club")}</summary>${list(rest)}</details>` : ""}`;
}

function clubRow(
  club: DealItem["clubs"][number],
  evidence: ReadonlyMap<string, Evidence>,
  currency: string,
): TemplateResult {
  return html`<div class="row between"><b>${club.title}</b><ferrule-verdict class="small" .verdict=${club.verdict}></ferrule-verdict></div>
    <p class="small soft">With <span class="mono">${fromBench(club.id)}</span> of the bench</p>
    <p class="small">${resaleLine(club.resale)}</p>
    ${club.work.length === 0 ? html`<p class="small soft">No work</p>` : workDetails(club.work, currency)}
    ${evidenceRows(club.resale, evidence)}`;
}

/** The steps, folded; each caution stands at its step. */
function workDetails(work: readonly WorkStep[], currency: string): TemplateResult {
  return html`<details class="small"><summary>${countText(work.length, "step")} of work</summary>
    ${workList(work, currency)}
  </details>`;
}

/** The parts of a club that are on the bench already, by their names. */
function fromBench(id: string): string {
  return id
    .split("+")
    .filter((part) => !part.startsWith("listing-"))
    .join(" + ");
}
