import { z } from "zod";
import { type Fault, faultSchema } from "../parts/fault.ts";
import { type Part, partIdSchema } from "../parts/part.ts";
import type { Refusal } from "../parts/refusal.ts";
import { isUnsafe } from "../worth/unsafe-faults.ts";

/** Why a fault of safety no longer stands: it was never there, or a practised person has put it right. */
export const clearanceReasons = ["not-there", "put-right"] as const;

/** A person's word, with a note, that a fault of safety no longer stands. It is kept for good. */
export const clearanceSchema = z.strictObject({
  id: z.string().min(1).max(80),
  on: z.iso.date(),
  part: partIdSchema,
  fault: faultSchema,
  because: z.enum(clearanceReasons),
  by: z.string().trim().min(1).max(200),
  note: z.string().trim().min(10, "at least a few words on what was looked at or done").max(2000),
});
/** Who said it, of which fault of which part, and on what day (ISO 8601). */
export type Clearance = z.infer<typeof clearanceSchema>;

/** Why a fault cannot be cleared so; nothing where it can. */
export function clearanceRefusals(
  part: Part,
  { fault, because }: Pick<Clearance, "fault" | "because">,
): readonly Refusal[] {
  if (!(part.faults ?? []).includes(fault))
    return [{ field: "fault", got: fault, expected: "a fault that is said of this part now" }];
  if (!isUnsafe(fault))
    return [{ field: "fault", got: fault, expected: "a fault of safety; any other is changed on the part" }];
  if (because === "put-right" && !canBePutRight(part, fault))
    return [
      {
        field: "because",
        got: because,
        expected: "not-there: nobody can put this right, so the part is used again only if it was not so",
      },
    ];
  return [];
}

/**
 * Whether a practised person can put a fault right: a joint is bonded anew, an adapter's screw is changed, a smooth bend in
 * steel is straightened (golfcourseinsider.com, bent shafts). Damage to a composite and a broken head stay what they are.
 */
export function canBePutRight(part: Part, fault: Fault): boolean {
  if (fault === "loose-joint" || fault === "adapter-damaged") return true;
  return fault === "bent-shaft" && part.kind === "shaft" && part.material === "steel";
}

/** What is said of the part once a fault is cleared: it counts as looked for and not there. */
export function clearedFaults(part: Part, fault: Fault): { faults: Fault[]; deniedFaults: Fault[] } {
  const faults = (part.faults ?? []).filter((one) => one !== fault);
  return { faults, deniedFaults: [...new Set([...(part.deniedFaults ?? []), fault])] };
}
