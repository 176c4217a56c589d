import { html, type TemplateResult } from "lit";
import type { Meanwhile } from "../live/open-thing.ts";

const onSaving = "What you typed is still here; when you save it, you see both and choose.";

/** Says in a form that somebody else has changed what it is open on, what that means for it, and offers theirs. */
export function meanwhileNote(
  meanwhile: Meanwhile | undefined,
  takeTheirs: () => void,
  meaning = onSaving,
): TemplateResult {
  return html`<div role="status" class="meanwhile">${
    meanwhile
      ? html`<div class="ticket row between">
        <p><strong>! ${meanwhile.who} ${meanwhile.present === undefined ? "deleted" : "changed"} this a moment ago.</strong> ${meaning}</p>
        <button type="button" @click=${takeTheirs}>Take theirs</button>
      </div>`
      : ""
  }</div>`;
}
