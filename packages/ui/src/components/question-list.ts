import type { Question } from "@ferrule/core";
import { html, type TemplateResult } from "lit";
import type { BenchContext } from "../bench-context.ts";
import { countText } from "../format/number.ts";
import { hrefs } from "../route.ts";
import { titleById } from "../words/part-title.ts";

/** Questions, the one that settles most first; each leads to the form in which it is answered. */
export function questionList(questions: readonly Question[], context: BenchContext): TemplateResult {
  return html`<ul class="plain stack">
    ${questions.map(
      ({ part, text, clubs }) => html`<li>
        <strong>${text}</strong>
        <p class="small soft">About <a href=${hrefs.part(part)}>${titleById(context.parts, part)}</a> <span class="mono">${part}</span> · settles ${countText(clubs, "club")}</p>
        ${context.parts.has(part) ? html`<a class="button" href=${hrefs.editPart(part)}>Answer for ${part}</a>` : ""}
      </li>`,
    )}
  </ul>`;
}
