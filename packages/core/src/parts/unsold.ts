import type { Joint } from "./joint.ts";
import type { Part } from "./part.ts";

/** What is still here to be built with: a sold part takes part in nothing any more, nor does a joint with it. */
export function unsold<
  Contents extends { readonly parts: readonly Part[]; readonly joints: readonly Joint[] },
>(contents: Contents): Contents {
  const sold = new Set(contents.parts.filter(isSold).map(({ id }) => id));
  if (sold.size === 0) return contents;
  return {
    ...contents,
    parts: contents.parts.filter(({ id }) => !sold.has(id)),
    joints: contents.joints.filter(({ parts }) => !parts.some((id) => sold.has(id))),
  };
}

/** Whether a sale is written on the part: a price or a day is enough. */
export function isSold({ soldFor, soldOn }: Part): boolean {
  return soldFor !== undefined || soldOn !== undefined;
}
