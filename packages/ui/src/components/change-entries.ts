import { html, type TemplateResult } from "lit";
import type { DisplaySettings } from "../display-settings.ts";
import type { HistoryEntry } from "../history-api.ts";
import { fieldChanges } from "../words/field-changes.ts";
import { entryVerb, historyField, thingHref, thingText } from "../words/history-words.ts";
import { namedValue } from "../words/named-value.ts";
import { unlikeItems } from "../words/unlike-items.ts";
import { sentence } from "./sentence.ts";

/** Fields that only tell where a thing stands in its list. */
const unsaid: ReadonlySet<string> = new Set(["id"]);

/** What a change made of each of its things, field by field. */
export function changeEntries(entries: readonly HistoryEntry[], display: DisplaySettings): TemplateResult {
  return html`${entries.map((entry) => entryPart(entry, display))}`;
}

function entryPart(entry: HistoryEntry, { lengthUnit, currency }: DisplaySettings): TemplateResult {
  const { table, before, after } = entry;
  const rows = fieldChanges(before, after).filter(({ field }) => !unsaid.has(field));
  const text = (field: string, value: unknown) => namedValue(field, value, lengthUnit, currency);
  const title = html`<a href=${thingHref(entry)}>${sentence(thingText(entry)).replace(/\.$/, "")}</a>, ${entryVerb(entry)}`;
  if (rows.length === 0) return html`<p>${title}.</p>`;
  return html`<p>${title}:</p>
    <dl class="fields">${rows.map(({ field, before: was, after: is }) => {
      const [left, right] = unlikeItems(was, is);
      return html`<div><dt>${historyField(table, field)}</dt><dd>${beforeAfter(
        before === null ? undefined : text(field, left),
        after === null ? undefined : text(field, right),
      )}</dd></div>`;
    })}</dl>`;
}

function beforeAfter(before: string | undefined, after: string | undefined): TemplateResult {
  if (before === undefined) return html`<ins>${after}</ins>`;
  if (after === undefined) return html`<del>${before}</del>`;
  return html`<del>${before}</del><span aria-hidden="true"> → </span><ins>${after}</ins>`;
}
