import { canonicalText } from "@ferrule/core";
import type { Thing } from "../offline/waiting-change.ts";

/** One field of a thing that a change made other than it was; undefined where it was not there, or is not any more. */
export interface FieldChange {
  readonly field: string;
  readonly before: unknown;
  readonly after: unknown;
}

/** The fields that differ, by dotted path; a quantity, an amount of money and a list stay whole. */
export function fieldChanges(before: unknown, after: unknown): readonly FieldChange[] {
  return differences("", asThing(before), asThing(after));
}

function differences(above: string, before: Thing, after: Thing): readonly FieldChange[] {
  const names = [...new Set([...Object.keys(before), ...Object.keys(after)])];
  return names.flatMap((name) => {
    const field = above === "" ? name : `${above}.${name}`;
    const [was, is] = [before[name], after[name]];
    if (canonicalText([was]) === canonicalText([is])) return [];
    return isGroup(was) && isGroup(is) ? differences(field, was, is) : [{ field, before: was, after: is }];
  });
}

/** What is kept bare, such as a text, counts as a thing of one field. */
function asThing(value: unknown): Thing {
  if (value === null || value === undefined) return {};
  return typeof value === "object" && !Array.isArray(value) ? (value as Thing) : { text: value };
}

function isGroup(value: unknown): value is Thing {
  return (
    typeof value === "object" &&
    value !== null &&
    !Array.isArray(value) &&
    !("value" in value) &&
    !("amountMinor" in value)
  );
}
