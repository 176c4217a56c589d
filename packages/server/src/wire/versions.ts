import { z } from "zod";
import { versionTag } from "./version-tag.ts";

/** Asks a list for the version of each thing in it. */
export const versionsQuery = { versions: z.enum(["true", "false"]).optional() };

/** Only where they are asked for: it takes longer than the list itself. */
export const versionsReply = {
  versions: z.record(z.string(), z.string()).optional().describe("By id, what If-Match takes"),
};

/** The versions of the things in a list, where they were asked for. */
export function versionsIn(
  { versions }: { readonly versions?: "true" | "false" | undefined },
  things: readonly { readonly id?: string | undefined }[],
): { readonly versions?: Record<string, string> } {
  if (versions !== "true") return {};
  return { versions: Object.fromEntries(things.map((thing) => [thing.id ?? "", versionTag(thing)])) };
}
