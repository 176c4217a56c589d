import { addAccessory, addCoverFor, addDenied, addHeadLike, addShaft } from "./add-beside.ts";
import { begin, join } from "./begin-item.ts";
import { type Anchor, type ItemSource, itemAnchors } from "./item-anchors.ts";
import { isHeadLike, modelNameOf } from "./item-draft.ts";
import { setStretches } from "./item-stretches.ts";
import {
  absorb,
  accessories,
  gapBefore,
  type ItemsRead,
  isClubType,
  mention,
  nextPhrase,
  numberAt,
  type State,
} from "./items-state.ts";
import { countLikeOthers, dropEarlyAccessories, shareParts } from "./settle-items.ts";
import { spreadItems } from "./spread-items.ts";

/** "The irons need grips": an item named before, spoken of again. */
function refersBack(state: State, anchor: Anchor): boolean {
  const number = numberAt(state, anchor);
  const earlier = state.items.find(
    ({ type, numberSaid }) =>
      type === anchor.phrase?.type && (number === null || numberSaid === null || number === numberSaid),
  );
  if (!earlier || (earlier === state.items.at(-1) && state.items.length === 1)) return false;
  earlier.again.push({ start: anchor.start, end: nextPhrase(state, anchor) });
  return true;
}

/** "For drivers and fairways": the second is what it fits, too. */
function continuesForeign({ absorbed, plain }: State, anchor: Anchor): boolean {
  const last = absorbed.at(-1);
  if (!last || last.end <= last.start || anchor.cues.pricedClose) return false;
  return /^ ?(?:,|and|&|\+|\/|or|und|et|y|oder|ou) ?$/u.test(plain.slice(last.end, anchor.start));
}

function add(state: State, anchor: Anchor) {
  const current = state.items.at(-1);
  const { cues, kind, phrase } = anchor;
  if (cues.denied && (kind !== "head" || phrase?.type == null)) return addDenied(state, current, anchor);
  if (!current) return begin(state, anchor);
  if (
    current.kind === "cover" &&
    isClubType(anchor) &&
    !cues.priced &&
    (current.plural || current.heading !== null)
  )
    return addCoverFor(state, current, anchor);
  const ofSameKind =
    phrase === null && anchor.name?.models.some((model) => model.kind === current.kind) === true;
  if (ofSameKind && !cues.foreign && modelNameOf(current) === null) return join(state, current, anchor);
  if (cues.the && !cues.priced && isClubType(anchor) && refersBack(state, anchor)) return;
  if (cues.foreign && anchor.name?.family != null) return mention(state, current, anchor);
  if (continuesForeign(state, anchor)) return absorb(state, current, anchor, phrase?.type ?? null);
  if (
    (cues.foreign || (cues.bracketed && isClubType(anchor) && !isHeadLike(current.kind))) &&
    !(cues.pricedClose && current.own)
  )
    return absorb(state, current, anchor, cues.from && !cues.bracketed ? null : (phrase?.type ?? null));
  // "4h or 5h" wants one of them.
  if (/^[ ,]*(?:or|oder|ou|o)(?: an?)? *$/u.test(gapBefore(state, current, anchor)))
    return absorb(state, current, anchor);
  if (kind === "shaft") return addShaft(state, current, anchor);
  if (accessories.has(kind)) return addAccessory(state, current, anchor);
  addHeadLike(state, current, anchor);
}

/** The things that the words offer, each with the stretch of words that is about it. */
export function readItems(source: ItemSource): ItemsRead {
  const state: State = { ...source, items: [], absorbed: [], extras: [] };
  const anchors = itemAnchors(source);
  const meaningful = anchors.some(({ phrase }) => phrase === null || !phrase.vague);
  for (const anchor of anchors) if (!meaningful || !anchor.phrase?.vague) add(state, anchor);
  dropEarlyAccessories(state);
  countLikeOthers(state);
  shareParts(state);
  spreadItems(state);
  setStretches({ items: state.items, plain: source.solid });
  return { items: state.items, absorbed: state.absorbed, extras: state.extras };
}
