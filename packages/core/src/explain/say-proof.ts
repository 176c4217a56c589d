import type { Finding } from "../findings/finding.ts";
import type { Part } from "../parts/part.ts";
import { partName } from "./plain-teller.ts";

/** A proof in plain English: because … and …, therefore …; then what somebody could do about it. */
export function sayProof({ head, shaft }: { head: Part; shaft: Part }, findings: readonly Finding[]): string {
  const because = findings.map(({ text }) => text).join("; and ");
  const hints = [...new Set(findings.flatMap(({ hint }) => (hint ? [hint] : [])))];
  const therefore = `Because ${because}, the ${partName(head)} and the ${partName(shaft)} do not make a club.`;
  return hints.length === 0 ? therefore : `${therefore} What would help: ${hints.join("; or ")}.`;
}
