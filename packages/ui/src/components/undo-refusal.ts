import { html, type TemplateResult } from "lit";
import { sidesOf } from "../clash/sides.ts";
import type { DisplaySettings } from "../display-settings.ts";
import { refusalText } from "../form/refusals-at.ts";
import type { UndoConflict, UndoRefusal } from "../history-api.ts";
import { fieldText } from "../words/field-words.ts";
import { historyField, thingHref, thingText } from "../words/history-words.ts";
import { namedValue } from "../words/named-value.ts";
import { bothVersions } from "./both-versions.ts";
import { sentence } from "./sentence.ts";

/** Why an undo was refused: what stands in the way, with both versions and the later changes to undo first. */
export function undoRefusalBox(
  { message, refusals, conflicts }: UndoRefusal,
  display: DisplaySettings,
  seeChange: (number: number) => void,
): TemplateResult {
  return html`<div class="stack refused" role="alert">
    <p class="refusal">✕ ${sentence(message)} Nothing was changed.</p>
    ${refusals.map((refusal) => html`<p>${fieldText(refusal.field)}: ${refusalText(refusal)}</p>`)}
    ${conflicts.map((conflict) => conflictPart(conflict, display, seeChange))}
  </div>`;
}

function conflictPart(
  conflict: UndoConflict,
  { lengthUnit, currency }: DisplaySettings,
  seeChange: (number: number) => void,
): TemplateResult {
  const { table, id, left = null, present = null, changes = [] } = conflict;
  const href = thingHref({ table, id, before: left, after: present });
  return html`<div>
    <p><strong>In the way:</strong> <a href=${href}>${thingText({ table, id })}</a>${present === null ? ", which is not there any more" : left === null && changes.length > 0 ? ", which is there again" : ""}.</p>
    ${
      left !== null && present !== null
        ? bothVersions(sidesOf(left, left, present), {
            mine: "As this change left it",
            theirs: "As it is now",
            field: (field) => historyField(table, field),
            value: (field, value) => namedValue(field, value, lengthUnit, currency),
          })
        : ""
    }
    ${changes.length > 0 ? html`<p class="row">Undo first: ${changes.map((number) => html`<button class="small" @click=${() => seeChange(number)}>Change ${number}</button>`)}</p>` : ""}
  </div>`;
}
