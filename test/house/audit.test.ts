import { expect, it } from "vitest";
// @ts-expect-error a script without types
import { auditVerdict } from "../../scripts/audit-verdict.mjs";

// The words of pnpm 12.4.2 where the endpoint was refused, its address made up. Those of a finding are written after its
// documentation and were not seen.
it.each([
  ["a clean end", 0, "No known vulnerabilities found", "clean"],
  [
    "an endpoint that is not there",
    1,
    "Error: ERR_PNPM_AUDIT_BAD_RESPONSE\n × The audit endpoint (at https://registry.example/advisories/bulk) responded with 405:",
    "no-answer",
  ],
  ["no network", 1, "request failed, reason: getaddrinfo EAI_AGAIN registry.example", "no-answer"],
  ["a finding", 1, "│ high │ Prototype pollution │\n1 vulnerabilities found\nSeverity: 1 high", "unsafe"],
  ["words that nobody foresaw", 2, "unknown option", "unsafe"],
  ["no pnpm at all", null, "spawnSync npx ENOENT", "unsafe"],
])("an audit with %s is told for what it is", (_title, exitCode, said, verdict) => {
  expect(auditVerdict(exitCode, said)).toBe(verdict);
});
