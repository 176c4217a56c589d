import { type PartKind, partSchema } from "./part.ts";

/** The top-level fields that each kind of part has, from the schemas themselves. */
export const knownFields = Object.fromEntries(
  partSchema.options.map((schema) => [schema.shape.kind.value, new Set(Object.keys(schema.shape))]),
) as unknown as Readonly<Record<PartKind, ReadonlySet<string>>>;
