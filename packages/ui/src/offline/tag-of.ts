import { canonicalText } from "@ferrule/core";

/** The version of a thing, as the server makes it: SHA-256 of the canonical text, in hexadecimal. */
export async function tagOf(thing: unknown): Promise<string> {
  const hash = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(canonicalText(thing)));
  return [...new Uint8Array(hash)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
