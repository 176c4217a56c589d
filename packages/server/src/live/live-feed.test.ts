import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { openDatabase } from "../store/database.ts";
import { openTables } from "../store/tables.ts";
import { type Listener, openLiveFeed } from "./live-feed.ts";

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

function openFeed() {
  const tables = openTables(openDatabase(undefined));
  const feed = openLiveFeed(tables);
  const change = (id: string) => tables.together(() => tables.parts.insert({ id, kind: "grip" }));
  return { feed, change };
}

function listener(given: Partial<Listener> = {}) {
  const taken: string[] = [];
  const end = vi.fn();
  const take = (text: string) => taken.push(text) > 0;
  return { of: "here", after: undefined, isWelcome: () => true, take, end, taken, ...given };
}

it("tells of several changes at once, after whoever made them has the answer", () => {
  const { feed, change } = openFeed();
  const one = listener();
  feed.listen(one);
  change("g1");
  change("g2");
  expect(one.taken).toHaveLength(1);
  vi.advanceTimersByTime(0);
  expect(one.taken).toHaveLength(2);
  expect(one.taken[1]?.match(/^id: .*$/gm)).toEqual(["id: 1", "id: 2"]);
});

it("shows nothing more to a device that is no longer paired, and ends its stream", () => {
  const { feed, change } = openFeed();
  let isPaired = true;
  const one = listener({ of: "phone", isWelcome: () => isPaired });
  feed.listen(one);
  isPaired = false;
  change("g1");
  vi.advanceTimersByTime(0);
  expect(one.taken.join("")).not.toContain("g1");
  expect(one.end).toHaveBeenCalledOnce();
  vi.advanceTimersByTime(60_000);
  expect(one.taken).toHaveLength(1);
});

it("ends the stream of who is no longer paired at the next beat, though nothing changes", () => {
  const { feed } = openFeed();
  let isPaired = true;
  const one = listener({ isWelcome: () => isPaired });
  feed.listen(one);
  vi.advanceTimersByTime(15_000);
  expect(one.taken.at(-1)).toBe(":\n\n");
  isPaired = false;
  vi.advanceTimersByTime(15_000);
  expect(one.end).toHaveBeenCalledOnce();
});

it("sends away who does not keep up, and goes on with the others", () => {
  const { feed, change } = openFeed();
  const [slow, quick] = [listener({ take: () => false }), listener({ of: "phone" })];
  feed.listen(slow);
  feed.listen(quick);
  change("g1");
  vi.advanceTimersByTime(0);
  expect(slow.end).toHaveBeenCalledOnce();
  expect(quick.taken.at(-1)).toContain('"ids":{"parts":["g1"]}');
});

it("takes sixty-four listeners, and leaves no clock running when all have left", () => {
  const { feed } = openFeed();
  const heard = Array.from({ length: 65 }, (_, at) => feed.listen(listener({ of: `device ${at % 8}` })));
  expect(heard.filter(({ ok }) => ok)).toHaveLength(64);
  for (const one of heard) if (one.ok) one.value();
  expect(vi.getTimerCount()).toBe(0);
});

it("ends every stream when it is closed", () => {
  const { feed } = openFeed();
  const both = [listener(), listener({ of: "phone" })];
  for (const one of both) feed.listen(one);
  feed.close();
  for (const { end } of both) expect(end).toHaveBeenCalledOnce();
  expect(vi.getTimerCount()).toBe(0);
});
