import type { Stretch } from "./clauses.ts";
import type { NameFound } from "./find-model.ts";

const copyWord =
  "(?:cop(?:y|ies)|fakes?|faked|replicas?|clones?|counterfeits?|imitations?|knock ?-?offs?|look ?-?alikes?|nachbau(?:ten)?|falschung(?:en)?|plagiat|kopie|copies?|contrefacons?|copias?|replique|replicas?)";
const article = "(?:(?:an?|the|of|von|de|du|un|une|una|ein|eine|einem|good|cheap|chinese|budget) )*";
const copyBefore = new RegExp(
  `(?<![\\p{L}])(?:${copyWord}|not an?|kein(?:e|en)?|isn'?t an?) ?${article}$`,
  "u",
);
const copyBehind = new RegExp(`^[ -]?(?:driver |wood |head |style )?${copyWord}(?![\\p{L}])`, "u");
const copySaid = new RegExp(
  `(?<![\\p{L}])(?:it'?s|it is|its|this is|they are|they'?re|just|only|this one is|probably|likely|maybe|think it'?s|nur)(?: (?:only|just|probably|likely|all))? (?:an? |eine? |une? )?(?:good |cheap |decent )?(?<at>${copyWord})(?![\\p{L}])(?! of (?:the |my )?(?:receipt|invoice|bill|manual))`,
  "u",
);
const denied = /(?<![\p{L}])(?:no|not|never|isn'?t|aren'?t|kein(?:e|en)?|pas)(?: \p{L}+)? ?$/u;

/** "Not a fake Ombrel" is none. */
const isDenied = (before: string) =>
  denied.test(before.replace(new RegExp(`${copyWord} ?${article}$`, "u"), "").trimEnd());

/** Whether the words around a name say that the thing only looks like it. */
function isCopyAt(plain: string, { start, end }: Stretch): boolean {
  const before = plain.slice(Math.max(0, start - 40), start);
  const line = before.slice(Math.max(before.lastIndexOf("\n"), before.lastIndexOf(". ")) + 1);
  if (copyBehind.test(plain.slice(end, end + 30))) return !/(?<![\p{L}])(?:not|no) an? $/u.test(line);
  return copyBefore.test(line) && !(new RegExp(copyWord, "u").test(line) && isDenied(line));
}

/** The names that the words say a thing is a copy of: what it is called is not what it is. */
export function copiedNames(plain: string, names: readonly NameFound[]): ReadonlySet<NameFound> {
  const said = copySaid.test(plain);
  return new Set(said ? names : names.filter((name) => isCopyAt(plain, name)));
}
