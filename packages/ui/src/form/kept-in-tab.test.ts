import { afterEach, expect, test, vi } from "vitest";
import { keepInTab, readFromTab } from "./kept-in-tab.ts";

afterEach(() => vi.unstubAllGlobals());

function withStorage(): Map<string, string> {
  const held = new Map<string, string>();
  vi.stubGlobal("sessionStorage", {
    getItem: (name: string) => held.get(name) ?? null,
    setItem: (name: string, text: string) => held.set(name, text),
    removeItem: (name: string) => held.delete(name),
  });
  return held;
}

test("gives back what was kept, and nothing once it is forgotten", () => {
  const held = withStorage();
  keepInTab("draft.h1", { answers: [["crack", "no"]] });
  expect(readFromTab("draft.h1")).toEqual({ answers: [["crack", "no"]] });
  expect(readFromTab("draft.h2")).toBeUndefined();
  keepInTab("draft.h1", undefined);
  expect(readFromTab("draft.h1")).toBeUndefined();
  expect(held.size).toBe(0);
});

test("finds nothing in what is no JSON", () => {
  withStorage().set("ferrule.draft.h1", "{");
  expect(readFromTab("draft.h1")).toBeUndefined();
});

test("does without a storage that is shut", () => {
  const shut = () => {
    throw new Error("The operation is insecure");
  };
  vi.stubGlobal("sessionStorage", { getItem: shut, setItem: shut, removeItem: shut });
  expect(() => keepInTab("draft.h1", 1)).not.toThrow();
  expect(readFromTab("draft.h1")).toBeUndefined();
});
