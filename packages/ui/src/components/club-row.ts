import type { Club, NearMiss } from "@ferrule/core";
import { css, html, type TemplateResult } from "lit";
import type { BenchContext } from "../bench-context.ts";
import { minutesText } from "../format/duration.ts";
import { lengthIntervalText, swingWeightIntervalText } from "../format/interval.ts";
import { countText } from "../format/number.ts";
import { hrefs } from "../route.ts";
import { clubTitle, titleById } from "../words/part-title.ts";
import { skillWords } from "../words/skill-words.ts";
import { sentence } from "./sentence.ts";
import "./verdict-mark.ts";

export const clubRowStyles = css`
  .club {
    display: block;
    padding: 0.5rem 0.75rem;
    min-height: 44px;
    text-decoration: none;
    border-left: 3px dashed var(--line-strong);
    background: var(--ticket-2);
    border-radius: 0 4px 4px 0;
    margin-top: 0.4rem;
    overflow-wrap: anywhere;
  }
  .club:hover {
    border-left-color: var(--ink);
  }
  .club b {
    display: block;
    line-height: 1.3;
  }
  .club span {
    display: block;
    color: var(--ink-soft);
    font-size: 0.875rem;
  }
  .club .strong {
    color: var(--ink);
  }
  .club code {
    font-family: var(--mono);
  }
`;

/** One club in a list: what it is made of, what it comes to, what it takes. */
export function clubRow(club: Club, context: BenchContext): TemplateResult {
  const { parts, lengthUnit } = context;
  const { playingLengthIn, swingWeight } = club.estimates;
  const figures = [
    playingLengthIn && lengthIntervalText(playingLengthIn, lengthUnit),
    swingWeight && swingWeightIntervalText(swingWeight),
    club.work.length > 0 && `${minutesText(club.minutes)}, ${skillWords[club.skill].toLowerCase()}`,
    club.questions.length > 0 && countText(club.questions.length, "question"),
  ];
  return html`<a class="club" href=${hrefs.club(club)}>
    <b>${clubTitle(parts, club.head)}</b>
    <span>${titleById(parts, club.shaft)} · <code>${[club.head, club.adapter, club.shaft, club.grip].filter(Boolean).join(" + ")}</code></span>
    <span class="strong">${figures.filter(Boolean).join(" · ")}</span>
  </a>`;
}

/** One refused pair in a list, with the reason that weighs most. */
export function nearMissRow(miss: NearMiss, context: BenchContext): TemplateResult {
  const reason = miss.proof.findings[0]?.text ?? miss.proof.text;
  return html`<a class="club" href=${hrefs.refusal(miss)}>
    <b>${clubTitle(context.parts, miss.head)}</b>
    <span>${titleById(context.parts, miss.shaft)} · <code>${[miss.head, miss.adapter, miss.shaft].filter(Boolean).join(" + ")}</code></span>
    <span class="strong">${sentence(reason)}</span>
  </a>`;
}
