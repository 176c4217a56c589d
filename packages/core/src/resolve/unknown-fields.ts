import { knownFields } from "../parts/known-fields.ts";
import type { Part } from "../parts/part.ts";

/** Fields that parts carry and nobody here reads: kept, and named so that a slip of the keyboard is seen. */
export function unknownFields(parts: readonly Part[]): string[] {
  return parts.flatMap((part) => {
    const unknown = Object.keys(part).filter((field) => !knownFields[part.kind].has(field));
    return unknown.map(
      (field) => `${part.kind} ${part.id} has a field "${field}" that is kept but not understood`,
    );
  });
}
