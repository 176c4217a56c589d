import { createHash } from "node:crypto";
import { canonicalText } from "@ferrule/core";
import type { FastifyReply, FastifyRequest } from "fastify";
import { type Outcome, ProblemError } from "../errors.ts";

/** What stands for a version of a thing: SHA-256 of its canonical text, in hexadecimal. */
export function versionTag(value: unknown): string {
  return createHash("sha256").update(canonicalText(value)).digest("hex");
}

/** Tells the version of what is sent, as its entity tag (RFC 9110, 8.8.3). */
export function tagged<T>(reply: FastifyReply, value: T, versioned: unknown = value): T {
  reply.header("etag", `"${versionTag(versioned)}"`);
  return value;
}

/** What a change is held to. */
export interface Held {
  /** What is there now; not at all where there is nothing. */
  readonly present: () => Outcome<unknown>;
  /** What is sent to be there, or the patch of it; null for a delete. */
  readonly given: unknown;
  /** What was there in the version of a tag, where that is known. */
  readonly base?: ((tag: string) => unknown) | undefined;
}

/**
 * Holds a change to the version that it was made from, where it names one in If-Match (RFC 9110, 13.1.1): a thing that has
 * changed meanwhile stays as it is, for a person to choose. Both versions are told, and the one that both came from.
 */
export function holdToVersion(request: FastifyRequest, { present, given, base }: Held): void {
  const wanted = request.headers["if-match"];
  if (wanted === undefined) return;
  const now = present();
  if (!now.ok || wanted.trim() === "*") return;
  const tags = wanted.split(",").map((tag) => tag.trim().replace(/^"(.*)"$/, "$1"));
  if (tags.includes(versionTag(now.value))) return;
  const from = tags.map((tag) => base?.(tag)).find((value) => value !== undefined);
  const versions = {
    present: now.value,
    given: given ?? null,
    ...(from === undefined ? {} : { base: from }),
  };
  throw new ProblemError({ code: "changed-meanwhile", versions });
}
