import { createHash } from "node:crypto";
import { canonicalText } from "@ferrule/core";
import { afterEach, describe, expect, it, vi } from "vitest";
import { api, call } from "../api.ts";
import type { Clash } from "./clash.ts";
import { clashDesk } from "./clash-desk.ts";

const base = { id: "S01", note: "as it came", massG: 60 };
const present = { id: "S01", note: "theirs", massG: 60 };
const stale = { error: { code: "changed-meanwhile", message: "Changed meanwhile", present } };

interface Seen {
  readonly method: string;
  readonly path: string;
  readonly tag: string | undefined;
  readonly body: unknown;
}

/** Answers one call after another, and notes what was sent. */
function serve(...answers: readonly { readonly status: number; readonly body: unknown }[]): Seen[] {
  const seen: Seen[] = [];
  vi.stubGlobal("fetch", async (path: string, { method = "GET", headers = {}, body }: RequestInit) => {
    const tag = (headers as Record<string, string>)["if-match"];
    seen.push({ method, path, tag, body: body === undefined ? undefined : JSON.parse(String(body)) });
    const { status = 500, body: answer = {} } = answers[seen.length - 1] ?? {};
    return new Response(JSON.stringify(answer), { status });
  });
  return seen;
}

/** As docs/history.md has it: SHA-256 of the canonical text, here by Node's own code. */
const tagOf = (thing: unknown) => `"${createHash("sha256").update(canonicalText(thing)).digest("hex")}"`;

afterEach(() => {
  vi.unstubAllGlobals();
  clashDesk.ask = async () => ({ is: "open" });
});

const put = (body: object) => call("PUT", "/api/bench/parts/S01", body, { from: { base } });

describe("a change of something that somebody else has changed", () => {
  it("names the version that it was made from", async () => {
    const seen = serve({ status: 200, body: present });
    await put({ ...base, note: "mine" });
    expect(seen.map(({ tag }) => tag)).toEqual([tagOf(base)]);
  });

  it("is shown to a person with both versions, and sent again as chosen over what is there now", async () => {
    const seen = serve({ status: 409, body: stale }, { status: 200, body: {} });
    const asked: Clash[] = [];
    clashDesk.ask = async (clash) => {
      asked.push(clash);
      return { is: "mine", thing: { ...present, massG: 61 } };
    };
    await put({ ...base, note: "mine", massG: 61 });
    expect(asked).toEqual([
      {
        method: "PUT",
        path: "/api/bench/parts/S01",
        base,
        mine: { ...base, note: "mine", massG: 61 },
        present,
      },
    ]);
    expect(seen[1]).toEqual({
      method: "PUT",
      path: "/api/bench/parts/S01",
      tag: tagOf(present),
      body: { ...present, massG: 61 },
    });
  });

  it("is not sent again where theirs is taken, and says so by its code", async () => {
    const seen = serve({ status: 409, body: stale });
    clashDesk.ask = async () => ({ is: "theirs" });
    await expect(put({ ...base, note: "mine" })).rejects.toMatchObject({ code: "took-theirs" });
    expect(seen).toHaveLength(1);
  });

  it("stays refused where nobody has chosen", async () => {
    serve({ status: 409, body: stale });
    await expect(put({ ...base, note: "mine" })).rejects.toMatchObject({ code: "changed-meanwhile" });
  });

  it("is put together unasked where it is of other fields of the goal", async () => {
    const goal = { skill: "screw" } as const;
    const now = { skill: "screw", hand: "left" };
    const error = { code: "changed-meanwhile", message: "Changed meanwhile", present: now };
    const seen = serve({ status: 409, body: { error } }, { status: 200, body: {} });
    await api.changeGoal({ skill: "bond" }, goal);
    expect(seen[1]).toMatchObject({ tag: tagOf(now), body: { skill: "bond", hand: "left" } });
  });

  it("asks again where it was changed once more while somebody chose", async () => {
    const later = { ...present, note: "theirs again" };
    const again = { error: { ...stale.error, present: later } };
    const seen = serve({ status: 409, body: stale }, { status: 409, body: again }, { status: 200, body: {} });
    clashDesk.ask = async ({ mine }) => ({ is: "mine", thing: mine });
    await put({ ...base, note: "mine" });
    expect(seen.map(({ tag }) => tag)).toEqual([tagOf(base), tagOf(present), tagOf(later)]);
  });
});
