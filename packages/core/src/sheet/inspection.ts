import { z } from "zod";
import { type Fault, faultSchema } from "../parts/fault.ts";
import { type Part, type PartKind, partIdSchema } from "../parts/part.ts";
import { isUnsafe } from "../worth/unsafe-faults.ts";

/** One thing to look at on a kind of part: a row of `data/reference/inspection.json`. */
export interface InspectionRow {
  readonly id: string;
  readonly kinds: readonly PartKind[];
  /** Only for shafts of these materials; a material that nobody knows is asked about all. */
  readonly material?: readonly string[];
  /** Only for heads with such a socket, likewise. */
  readonly socket?: readonly string[];
  /** Answered by yes, no, or that one cannot tell. */
  readonly question: string;
  /** How to look. */
  readonly look: string;
  readonly meaning: string;
  /** What the look cannot show. */
  readonly limits?: string;
  /** Faults that a yes asserts, and faults that a no denies. */
  readonly yes: readonly Fault[];
  readonly no: readonly Fault[];
  /** Where it is from, or that it is common practice with no source. */
  readonly source: string;
}

/** What can be said to a question of the table; `unsure` neither asserts nor denies a fault. */
export const inspectionAnswers = ["yes", "no", "unsure"] as const;
const answerSchema = z.strictObject({
  row: z.string().min(1).max(80),
  answer: z.enum(inspectionAnswers),
});
/** What somebody said to one row of the table, by the row's id. */
export type InspectionAnswer = z.infer<typeof answerSchema>;

/** A part that somebody looked over: what was asked, what was answered and what that came to. */
export const inspectionSchema = z.strictObject({
  id: z.string().min(1).max(80),
  on: z.iso.date(),
  part: partIdSchema,
  answers: z.array(answerSchema).min(1).max(60),
  asserted: z.array(faultSchema),
  denied: z.array(faultSchema),
  by: z.string().max(200).optional(),
  note: z.string().max(2000).optional(),
});
/** One look at one part, with the faults that its answers asserted and denied on that day (ISO 8601). */
export type Inspection = z.infer<typeof inspectionSchema>;

/** What there is to look at on a part, in the order of the table. */
export function inspectionRowsFor(part: Part, rows: readonly InspectionRow[]): readonly InspectionRow[] {
  const material = part.kind === "shaft" ? part.material : undefined;
  const socket = part.kind === "head" ? part.socket?.type : undefined;
  return rows.filter(
    (row) =>
      row.kinds.includes(part.kind) &&
      (material === undefined || (row.material?.includes(material) ?? true)) &&
      (socket === undefined || (row.socket?.includes(socket) ?? true)),
  );
}

/**
 * The faults that answers assert and deny. One yes asserts; a fault is denied where every row that could deny it was answered
 * no and nothing asserts it. Where somebody could not tell, nothing is said.
 */
export function faultsFromAnswers(
  answers: readonly InspectionAnswer[],
  rows: readonly InspectionRow[],
): { readonly asserted: readonly Fault[]; readonly denied: readonly Fault[] } {
  const answerOf = new Map(answers.map(({ row, answer }) => [row, answer]));
  const asserted = new Set(rows.flatMap(({ id, yes }) => (answerOf.get(id) === "yes" ? yes : [])));
  const deniable = new Set(rows.flatMap(({ no }) => no));
  const isDenied = (fault: Fault) =>
    !asserted.has(fault) &&
    rows.filter(({ no }) => no.includes(fault)).every(({ id }) => answerOf.get(id) === "no");
  return { asserted: [...asserted], denied: [...deniable].filter(isDenied) };
}

/** What of a part's faults an inspection leaves. */
export interface InspectedFaults {
  readonly faults: readonly Fault[];
  readonly deniedFaults: readonly Fault[];
  /** Faults of safety that were said before and are denied now: they stay until somebody clears them with a note. */
  readonly toClear: readonly Fault[];
}

/** Takes an inspection into what is said of a part. A second look may take back a mark, never a fault of safety. */
export function inspectedFaults(
  part: Pick<Part, "faults" | "deniedFaults">,
  { asserted, denied }: Pick<Inspection, "asserted" | "denied">,
): InspectedFaults {
  const before = part.faults ?? [];
  const toClear = before.filter((fault) => denied.includes(fault) && isUnsafe(fault));
  const kept = before.filter((fault) => !denied.includes(fault) || isUnsafe(fault));
  const faults = [...new Set([...kept, ...asserted])];
  const deniedBefore = part.deniedFaults ?? [];
  const deniedFaults = [...new Set([...deniedBefore, ...denied])].filter((fault) => !faults.includes(fault));
  return { faults, deniedFaults, toClear };
}
