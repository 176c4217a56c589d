import { type Entry, splitMinor } from "@ferrule/core";
import type { ChangedEntry } from "../bench/changed-fields.ts";
import type { Tables } from "../store/tables.ts";
import { writeEntries } from "./write-entries.ts";

/** What was done to the books, for an undo. */
export interface Attributed {
  readonly added?: readonly string[];
  readonly changed?: readonly ChangedEntry[];
}

/**
 * Puts what has been spent on parts under the club that they are sold as, so that its profit is all of it. A line that was for
 * other parts too is divided by what was paid for each, and no minor unit is lost. Lines that are under a club already stay there.
 */
export function attributeCosts(tables: Tables, sold: ReadonlySet<string>, club: string): Attributed {
  const lines = tables.entries
    .all()
    .map(({ value }) => value)
    .filter(({ club: name, parts = [] }) => !name && parts.some((id) => sold.has(id)));
  const done = lines.map((line) =>
    line.parts?.every((id) => sold.has(id))
      ? moveWhole(tables, line, club)
      : divide(tables, line, sold, club),
  );
  return {
    added: done.flatMap(({ added = [] }) => added),
    changed: done.flatMap(({ changed = [] }) => changed),
  };
}

function moveWhole(tables: Tables, line: Entry, club: string): Attributed {
  tables.entries.replace(line.id, { ...line, club });
  return { changed: [{ id: line.id, fields: { club: line.club ?? null }, wrote: { club } }] };
}

function divide(tables: Tables, line: Entry, sold: ReadonlySet<string>, club: string): Attributed {
  const parts = line.parts ?? [];
  const weights = parts.map((id) => Math.max(0, tables.parts.get(id)?.value.paid?.amountMinor ?? 0));
  const shares = splitMinor(Math.abs(line.amount.amountMinor), weights);
  const going = parts.filter((id) => sold.has(id));
  const goingMinor = shares.reduce((sum, share, at) => sum + (sold.has(parts[at] as string) ? share : 0), 0);
  const share = goingMinor / Math.abs(line.amount.amountMinor || 1);
  const { id, expected: _expected, ...rest } = line;
  const amountMinor = Math.sign(line.amount.amountMinor) * goingMinor;
  const split = {
    ...rest,
    ...effort(line, share),
    amount: { ...line.amount, amountMinor: amountMinor === 0 ? 0 : amountMinor },
    parts: going,
    club,
  };
  const staying = {
    ...line,
    ...effort(line, 1 - share),
    amount: { ...line.amount, amountMinor: line.amount.amountMinor - amountMinor },
    parts: parts.filter((one) => !sold.has(one)),
  };
  tables.entries.replace(id, staying);
  const [written] = writeEntries(tables, [split]) as [Entry];
  return {
    added: [written.id],
    changed: [{ id, fields: dividedFields(line), wrote: dividedFields(staying), split: written }],
  };
}

/** The fields of a line that a division changes; `null` where it does not have one. */
function dividedFields({ amount, parts, km, minutes }: Entry) {
  return { amount, parts, km: km ?? null, minutes: minutes ?? null };
}

/** The way and the time of a line go with its money. */
function effort({ km, minutes }: Entry, share: number): Pick<Entry, "km" | "minutes"> {
  return {
    ...(km === undefined ? {} : { km: km * share }),
    ...(minutes === undefined ? {} : { minutes: minutes * share }),
  };
}
