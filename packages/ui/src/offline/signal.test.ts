import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { Signal } from "./signal.ts";

/** Answers what is asked after so long, and never says whether it is there. */
function busyFor(ms: number) {
  return vi.fn(
    (path: string, { signal }: RequestInit) =>
      new Promise<Response>((resolve, reject) => {
        signal?.addEventListener("abort", () => reject(signal.reason));
        if (path !== "/api/health") setTimeout(() => resolve(new Response("here")), ms);
      }),
  );
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

describe("a call to a bench that is busy for half a minute", () => {
  async function called(asOf: string | null) {
    vi.stubGlobal("fetch", busyFor(30_000));
    // The time limit of the platform does not run on the clock of a test.
    vi.spyOn(AbortSignal, "timeout").mockImplementation((ms) => {
      const limit = new AbortController();
      setTimeout(() => limit.abort(), ms);
      return limit.signal;
    });
    const signal = new Signal();
    signal.state = { ...signal.state, asOf };
    const answer = signal.fetch("/api/resolve", {}).then(
      (reply) => reply.text(),
      () => "given up",
    );
    await vi.advanceTimersByTimeAsync(31_000);
    return answer;
  }

  it("waits for it where nothing is kept to answer with", async () => {
    expect(await called(null)).toBe("here");
  });

  it("is given up where something is", async () => {
    expect(await called("2026-11-25T12:00:00Z")).toBe("given up");
  });
});
