import type { Joint, Part } from "@ferrule/core";
import Fuse from "fuse.js";
import { partTitle } from "../words/part-title.ts";
import { flexWords, handWords, kindWords, materialWords, suitsWords } from "../words/part-words.ts";

/** What the list is narrowed to; an empty text or choice narrows nothing. */
export interface PartFilter {
  readonly text: string;
  readonly kind: string;
  readonly clubType: string;
  readonly hand: string;
  readonly flex: string;
  /** `loose` or `joined`: whether the part is in a club (or any joint) already. */
  readonly joined: string;
}

export const noFilter: PartFilter = { text: "", kind: "", clubType: "", hand: "", flex: "", joined: "" };

interface Searched {
  readonly part: Part;
  readonly words: string;
}

/** The parts that pass a filter: the best match first where there is a text, else kind by kind as a club is put together. */
export type PartFinder = (filter: PartFilter) => readonly Part[];

/**
 * A finder over these parts. Those have it that hold every word of the text; only where none does, what is most like it. What
 * is searched is written down once, at the first text, so that every further letter costs a search alone.
 */
export function partFinder(parts: readonly Part[], joints: readonly Joint[]): PartFinder {
  const joined = new Set(joints.flatMap((joint) => joint.parts));
  const inOrder = inKindOrder(parts);
  let searched: readonly Searched[] | undefined;
  let fuse: Fuse<Searched> | undefined;
  const holding = (text: string) => {
    searched ??= inOrder.map((part) => ({ part, words: plain(wordsOf(part)) }));
    const wanted = plain(text).split(/\s+/);
    return searched.filter(({ words }) => wanted.every((word) => words.includes(word)));
  };
  const like = (text: string) => {
    fuse ??= searchOver(searched ?? []);
    return fuse.search(plain(text)).map(({ item }) => item);
  };
  return (filter) => {
    const passing = (part: Part) => passes(part, joined.has(part.id), filter);
    const text = filter.text.trim();
    if (text === "") return inOrder.filter(passing);
    const held = holding(text);
    const found = held.length > 0 ? held : like(text);
    return found.map(({ part }) => part).filter(passing);
  };
}

/** In small letters and without the marks on them, as people type. */
function plain(text: string): string {
  return text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
}

function searchOver(searched: readonly Searched[]): Fuse<Searched> {
  return new Fuse(searched, {
    keys: ["words"],
    threshold: 0.25,
    ignoreLocation: true,
    useExtendedSearch: true,
  });
}

function passes(part: Part, isJoined: boolean, filter: PartFilter): boolean {
  const { clubType, hand, flex } = part as { clubType?: string; hand?: string; flex?: string };
  return (
    agrees(filter.kind, part.kind) &&
    agrees(filter.clubType, clubType) &&
    agrees(filter.hand, hand) &&
    agrees(filter.flex, flex) &&
    agrees(filter.joined, isJoined ? "joined" : "loose")
  );
}

function agrees(wanted: string, has: string | undefined): boolean {
  return wanted === "" || wanted === has;
}

/** Everything somebody may type to find a part, in one line, so that words may come in any order. */
function wordsOf(part: Part): string {
  const loose = part as Record<string, unknown>;
  const socket = loose["socket"] as { family?: string } | undefined;
  const said = [
    handWords[loose["hand"] as keyof typeof handWords],
    flexWords[loose["flex"] as keyof typeof flexWords],
    suitsWords[loose["suits"] as keyof typeof suitsWords],
    materialWords[loose["material"] as keyof typeof materialWords],
    loose["clubType"],
    loose["family"],
    socket?.family,
  ];
  return [part.id, partTitle(part), kindWords[part.kind], ...said, part.note, ...(part.faults ?? [])]
    .filter(Boolean)
    .join(" ");
}

const kindOrder = Object.keys(kindWords);

/** Sorting is stable, so within a kind the bench's own order stays. */
function inKindOrder(parts: readonly Part[]): readonly Part[] {
  return [...parts].sort((one, other) => kindOrder.indexOf(one.kind) - kindOrder.indexOf(other.kind));
}
