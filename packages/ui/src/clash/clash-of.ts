import type { Thing } from "../offline/waiting-change.ts";
import type { Clash, From, Settled } from "./clash.ts";
import { chosenOf, sidesOf } from "./sides.ts";

interface Sent {
  readonly method: string;
  readonly path: string;
  readonly body?: unknown;
}

/** What a change would have made, beside what is there by now. */
export function clashOf(sent: Sent, from: From, present: Thing | null): Clash {
  const { method, path, body } = sent;
  const base = from.base as Thing;
  return {
    method,
    path,
    base,
    mine: method === "DELETE" ? null : wanted(sent, from, body as Thing),
    present,
  };
}

function wanted({ method }: Sent, { base, sendsFields }: From, body: Thing): Thing {
  if (!sendsFields) return withoutNothing(body);
  const all = withoutNothing({ ...base, ...body });
  // A null in a patch takes the field away.
  return method === "PATCH"
    ? Object.fromEntries(Object.entries(all).filter(([name, value]) => value !== null || body[name] !== null))
    : all;
}

function withoutNothing(thing: Thing): Thing {
  return Object.fromEntries(Object.entries(thing).filter(([, value]) => value !== undefined));
}

/** Both put together where nobody need be asked: they changed other fields. */
export function mergedUnasked({ base, mine, present }: Clash, { merges }: From): Settled | undefined {
  if (!merges || mine === null || present === null) return undefined;
  const isAsked = sidesOf(base, mine, present).some(({ by }) => by === "both");
  return isAsked ? undefined : { is: "mine", thing: chosenOf(base, mine, present, new Map()) };
}

/** What to send so that the thing is as it was chosen to be; nothing where that is how it is already. */
export function sentAgain(sent: Sent, from: From, clash: Clash, chosen: Thing | null): Sent | undefined {
  const { method, path, body } = sent;
  if (chosen === null) return { method, path };
  if (clash.present === null)
    return { method: "POST", path: path.slice(0, path.lastIndexOf("/")), body: chosen };
  if (!from.sendsFields) return { method, path, body: chosen };
  const fields = Object.entries(body as Thing).filter(
    ([name]) => JSON.stringify(chosen[name]) === JSON.stringify(clash.mine?.[name]),
  );
  return fields.length === 0 ? undefined : { method, path, body: Object.fromEntries(fields) };
}
