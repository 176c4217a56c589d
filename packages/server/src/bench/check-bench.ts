import type { Refusal } from "@ferrule/core";
import type { BenchContents } from "./bench-contents.ts";
import { openJointBook } from "./joint-book.ts";

/** What schemas cannot see: ids used twice, and joints that cannot all be. Fields are relative to the contents. */
export function checkBench({ parts, joints, claims }: BenchContents): Refusal[] {
  const book = openJointBook(parts);
  return [
    ...repeatedIds("parts", parts),
    ...repeatedIds("joints", joints),
    ...repeatedIds("claims", claims),
    ...joints.flatMap((joint, at) =>
      book.enter(joint).map((refusal) => ({
        ...refusal,
        field: `joints.${at}.${refusal.field}`,
      })),
    ),
  ];
}

function repeatedIds(list: string, items: readonly { readonly id?: string }[]): Refusal[] {
  const seen = new Set<string>();
  return items.flatMap(({ id }, at) => {
    if (id === undefined || !seen.has(id)) {
      if (id !== undefined) seen.add(id);
      return [];
    }
    return [
      {
        field: `${list}.${at}.id`,
        got: JSON.stringify(id),
        expected: "an id that nothing before it in the list has",
      },
    ];
  });
}
