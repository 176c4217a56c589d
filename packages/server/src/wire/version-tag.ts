import { createHash } from "node:crypto";
import { canonicalText } from "@ferrule/core";
import type { FastifyRequest } from "fastify";
import { type Outcome, ProblemError } from "../errors.ts";

/** What stands for a version of a thing: SHA-256 of its canonical text, in hexadecimal. */
export function versionTag(value: unknown): string {
  return createHash("sha256").update(canonicalText(value)).digest("hex");
}

/**
 * Holds a change to the version that it was made from, where it names one in If-Match (RFC 9110, 13.1.1): a thing that has
 * changed meanwhile stays as it is, for a person to choose.
 */
export function holdToVersion(request: FastifyRequest, present: () => Outcome<unknown>): void {
  const wanted = request.headers["if-match"];
  if (wanted === undefined) return;
  const now = present();
  if (now.ok && wanted.replaceAll('"', "") !== versionTag(now.value))
    throw new ProblemError({ code: "changed-meanwhile" });
}
