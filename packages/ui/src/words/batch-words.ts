import type { Batch } from "../batch-api.ts";

/** How far a batch is. */
export function batchText({ state, total, done }: Batch): string {
  if (state === "done") return `All ${total} judged`;
  return `${done} of ${total} judged${state === "stopped" ? ", stopped" : ""}`;
}
