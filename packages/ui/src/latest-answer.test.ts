import type { ReactiveControllerHost } from "lit";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { ApiError } from "./api.ts";
import { LatestAnswer } from "./latest-answer.ts";

const patienceMs = 400;
const host = {
  addController: () => undefined,
  requestUpdate: () => undefined,
} as unknown as ReactiveControllerHost;

/** Questions that are answered when the test says so. */
function asking() {
  const latest = new LatestAnswer<string>(host, patienceMs);
  const asked: string[] = [];
  const answers = new Map<
    string,
    { show: (value: string) => void; end: (value: string) => void; fail: (error: Error) => void }
  >();
  const signals = new Map<string, AbortSignal>();
  const soon = (name: string) =>
    latest.askSoon((signal, show) => {
      asked.push(name);
      signals.set(name, signal);
      return new Promise((end, fail) => answers.set(name, { show, end, fail }));
    });
  const said = async (name: string, how: "show" | "end") => {
    answers.get(name)?.[how](`${name} ${how}`);
    await vi.advanceTimersByTimeAsync(0);
  };
  return { latest, asked, soon, said, answers, isGivenUp: (name: string) => signals.get(name)?.aborted };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe("the latest answer", () => {
  it("comes while more is asked, and of what was asked meanwhile only the newest is", async () => {
    const { latest, asked, soon, said } = asking();
    for (const name of ["a", "b", "c", "d"]) soon(name);
    expect(asked).toEqual(["a"]);
    await said("a", "end");
    expect(latest).toMatchObject({ value: "a end", isAsking: true });
    expect(asked).toEqual(["a", "d"]);
    await said("d", "end");
    expect(latest).toMatchObject({ value: "d end", isAsking: false });
  });

  it("is shown for the time being, and looked at no longer where something newer is asked", async () => {
    const { latest, soon, said, isGivenUp } = asking();
    soon("a");
    await said("a", "show");
    expect(latest).toMatchObject({ value: "a show", isAsking: true });
    soon("b");
    await vi.advanceTimersByTimeAsync(patienceMs - 1);
    expect(isGivenUp("a")).toBe(false);
    await vi.advanceTimersByTimeAsync(1);
    expect(isGivenUp("a")).toBe(true);
    await said("a", "end");
    expect(latest).toMatchObject({ value: "a show", isAsking: true });
    soon("c");
    await said("b", "show");
    expect(latest.value).toBe("b show");
    expect(isGivenUp("b")).toBe(true);
    await said("c", "end");
    await said("b", "end");
    expect(latest).toMatchObject({ value: "c end", isAsking: false });
  });

  it("stays with its trouble, and goes once a later one is there", async () => {
    const { latest, soon, said, answers } = asking();
    soon("a");
    await said("a", "end");
    soon("b");
    answers.get("b")?.fail(new ApiError("unreachable", "The bench cannot be reached"));
    await vi.advanceTimersByTimeAsync(0);
    expect(latest).toMatchObject({
      value: "a end",
      trouble: "The bench cannot be reached.",
      isAsking: false,
    });
    soon("c");
    await said("c", "end");
    expect(latest).toMatchObject({ value: "c end", trouble: undefined });
  });

  it("is given up when nobody looks any more", async () => {
    const { latest, asked, soon, said, isGivenUp } = asking();
    soon("a");
    soon("b");
    latest.hostDisconnected();
    await vi.advanceTimersByTimeAsync(patienceMs);
    await said("a", "end");
    expect([asked, isGivenUp("a"), latest.value]).toEqual([["a"], true, undefined]);
  });
});
