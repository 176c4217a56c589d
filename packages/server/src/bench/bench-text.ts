import { createHash } from "node:crypto";
import type { Tables } from "../store/tables.ts";

/** The bench as it is sent: UTF-8 of its JSON, and the entity tag of these bytes (RFC 9110, 8.8.3). */
export interface BenchText {
  readonly bytes: Buffer;
  readonly tag: string;
}

/**
 * Put together from the texts that the tables keep, which were held to their schemas when they were written, and kept until
 * something in it changes. The same as the JSON of `Bench.view`.
 */
export function benchText(tables: Tables): () => BenchText {
  let kept: { readonly key: string; readonly text: BenchText } | undefined;
  return () => {
    const { parts, joints, claims } = tables;
    const [example, goal] = [tables.settings.isExample() ?? false, JSON.stringify(tables.goals.read())];
    const undo = tables.deletions.count();
    const key = JSON.stringify([tables.stampOf(parts, joints, claims), example, goal, undo]);
    if (kept?.key === key) return kept.text;
    const list = (table: typeof parts | typeof joints | typeof claims) => `[${table.texts().join(",")}]`;
    const bytes = Buffer.from(
      `{"example":${example},"parts":${list(parts)},"joints":${list(joints)},"claims":${list(claims)},"goal":${goal},"undo":${undo}}`,
    );
    kept = { key, text: { bytes, tag: tagOf(bytes) } };
    return kept.text;
  };
}

const tagOf = (bytes: Buffer) => `"${createHash("sha256").update(bytes).digest("base64url")}"`;
