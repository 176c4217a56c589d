import type { Joint, Part } from "@ferrule/core";
import { isJoined } from "../is-joined.ts";
import { clubTypeWords } from "../words/part-words.ts";
import { writtenValue } from "./written-value.ts";

export type Column = "head" | "between" | "shaft";

/** Parts that join alike: what a joint asks of them is the same, so one box stands for all of them. */
export interface PartKindGroup {
  readonly key: string;
  readonly column: Column;
  /** In two short lines, and in one long one. */
  readonly lines: readonly [string, string];
  readonly title: string;
  readonly parts: readonly string[];
}

/** To the nearest five thousandths: sizes read a little apart are one trade size. */
function sizeText(written: Parameters<typeof writtenValue>[0]): string {
  const valueIn = writtenValue(written);
  if (valueIn === undefined) return "?";
  return String(Math.round(valueIn * 200) / 200).replace(/^0/, "");
}

const handShort = { right: "right", left: "left", either: "either hand" } as const;

/** The kind that a head, an adapter or a shaft is of; nothing for what is no end of a joint drawn here. */
function kindOf(part: Part, joints: readonly Joint[]): Omit<PartKindGroup, "key" | "parts"> | undefined {
  switch (part.kind) {
    case "head": {
      const type = part.clubType ? clubTypeWords[part.clubType] : "Head";
      const hand = part.hand ? handShort[part.hand] : "hand ?";
      const { socket } = part;
      const end =
        socket?.type === "receiver"
          ? (socket.family ?? "family ?")
          : socket
            ? `bore ${sizeText(socket.diameterIn)}${socket.form === "taper" ? " taper" : ""}`
            : "socket ?";
      return { column: "head", lines: [`${type}, ${hand}`, end], title: `${type}, ${hand}, ${end}` };
    }
    case "adapter": {
      const family = part.family ?? "family ?";
      const hand = part.hand ? handShort[part.hand] : "hand ?";
      const bore = `bore ${sizeText(part.bore?.diameterIn)}`;
      return {
        column: "between",
        lines: [family, `${hand}, ${bore}`],
        title: `${family} adapter, ${hand}, ${bore}`,
      };
    }
    case "shaft": {
      const suits = part.suits ?? "any club";
      const tip = `tip ${sizeText(part.tip?.diameterIn)}${part.tip?.form === "taper" ? " taper" : ""}`;
      const has = isJoined(joints, part.id, "bonded") ? "bonded" : "bare";
      return { column: "shaft", lines: [`${suits}, ${has}`, tip], title: `${suits} shaft, ${has}, ${tip}` };
    }
    default:
      return undefined;
  }
}

/** Groups of the parts of a bench, and the group of each part. */
export function partKinds(
  parts: Iterable<Part>,
  joints: readonly Joint[],
): { readonly groups: readonly PartKindGroup[]; readonly keyOf: ReadonlyMap<string, string> } {
  const groups = new Map<string, PartKindGroup & { parts: string[] }>();
  const keyOf = new Map<string, string>();
  for (const part of parts) {
    const kind = kindOf(part, joints);
    if (!kind) continue;
    const key = `${kind.column} ${kind.title}`;
    keyOf.set(part.id, key);
    const group = groups.get(key);
    if (group) group.parts.push(part.id);
    else groups.set(key, { key, ...kind, parts: [part.id] });
  }
  return { groups: [...groups.values()], keyOf };
}

/** What stands between a bored head and a shaft: nothing but the bore, one for every size of it. */
export function straightIn(head: PartKindGroup): PartKindGroup {
  const [, end] = head.lines;
  const isBore = end.startsWith("bore");
  const title = isBore ? `straight into a ${end}` : `no adapter, where ${end} is wanted`;
  return {
    key: `between ${title}`,
    column: "between",
    lines: [isBore ? "straight in" : "no adapter", end],
    title,
    parts: [],
  };
}
