import type { Form } from "../parts/part.ts";
import type { Reading } from "../parts/reading.ts";

/**
 * Whether a tip or a bore of this diameter is taper or parallel, or nothing where the size does not tell. Taper iron tips
 * are 0.355 in and parallel ones 0.370 in (marathonsportsagency.blog, 2024-12-09). A bore measures up to 0.004 in over
 * its name (greenlanterngolf.com), so 0.354 in may be a 0.350 in bore; old taper woods were below 0.300 in (from memory).
 */
export function formBySize(reading: Reading | undefined): Form | undefined {
  if (reading === undefined || reading.value < 0.3) return undefined;
  if (reading.value > 0.352 && reading.value < 0.3546) return undefined;
  return isTaperSize(reading) ? "taper" : "parallel";
}

/** Whether a diameter is the taper iron size, allowing for a bore that measures over its name. */
export function isTaperSize({ value }: Reading): boolean {
  return value >= 0.3546 && value < 0.36;
}
