import type { DealItem, Evidence } from "@ferrule/core";
import { css, html, type TemplateResult } from "lit";
import { countText } from "../format/number.ts";
import { evidenceRows, resaleLine } from "./evidence-rows.ts";
import { sentence } from "./sentence.ts";
import "./verdict-mark.ts";

const mostClubs = 6;

export const dealItemStyles = css`
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
): TemplateResult {
  return html`<div class="item">
    <h3>${item.title}</h3>
    <p>${resaleLine(item.resale)}</p>
    ${evidenceRows(item.resale, evidence)}
    ${noteForm}
    ${clubList(item, evidence)}
    ${
      item.wants.length > 0
        ? html`<details><summary>Lacks, to become a club: ${countText(item.wants.length, "thing")}</summary>
          <ul>${item.wants.map(({ text }) => html`<li>${sentence(text)}</li>`)}</ul></details>`
        : ""
    }
  </div>`;
}

function clubList({ clubs }: DealItem, evidence: ReadonlyMap<string, Evidence>): TemplateResult {
  if (clubs.length === 0)
    return html`<p class="small">Makes no club with what is on the bench and the skill allowed.</p>`;
  const [some, rest] = [clubs.slice(0, mostClubs), clubs.length - mostClubs];
  return html`<p><strong>Makes ${countText(clubs.length, "club")} with what is here</strong></p>
    <ul class="plain">${some.map((club) => html`<li class="made">${clubRow(club, evidence)}</li>`)}</ul>
    ${rest > 0 ? html`<p class="small soft">And ${countText(rest, "more club")}.</p>` : ""}
    ${
      clubs.some(({ work }) => work.length > 0)
        ? html`<p class="small soft">What to take care of in each step stands on the club's own page once the parts are on the bench. Where a step is new to you,
      have somebody practised do it: a shaft or bond that fails in a swing can hurt a person.</p>`
        : ""
    }`;
}

function clubRow(club: DealItem["clubs"][number], evidence: ReadonlyMap<string, Evidence>): TemplateResult {
  return html`<div class="row between"><b>${club.title}</b><ferrule-verdict class="small" .verdict=${club.verdict}></ferrule-verdict></div>
    <p class="small">${resaleLine(club.resale)}</p>
    <p class="small soft">${club.work.length === 0 ? "No work" : html`Work: ${club.work.map((step, at) => html`${at > 0 ? "; " : ""}${step}`)}`}.</p>
    ${evidenceRows(club.resale, evidence)}`;
}
