import type { Finding } from "../findings/finding.ts";
import type { Part } from "../parts/part.ts";
import { partName } from "./plain-teller.ts";

/** A proof in plain English: what does not go, because … and …; then what somebody could do about it. */
export function sayProof({ head, shaft }: { head: Part; shaft: Part }, findings: readonly Finding[]): string {
  const [first = "", ...others] = findings.map(({ text }) => text);
  const because = [first, ...others.map((text) => `joined in any other way, ${text}`)].join("; and ");
  const hints = [...new Set(findings.flatMap(({ hint }) => (hint ? [hint] : [])))];
  const refusal = `The ${partName(head)} and the ${partName(shaft)} do not make a club, because ${because}.`;
  return hints.length === 0 ? refusal : `${refusal} What would help: ${hints.join("; or ")}.`;
}
