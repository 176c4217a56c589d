import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { type Elsewhere, Live, touches } from "./live.ts";

/** A stream that tells what a test has it tell. */
class FakeSource extends EventTarget {
  static readonly CLOSED = 2;
  static opened: FakeSource[] = [];
  readyState = 1;

  constructor(readonly url: string) {
    super();
    FakeSource.opened.push(this);
  }

  close(): void {
    this.readyState = FakeSource.CLOSED;
  }

  tell(type: string, id: number, data: object = {}): void {
    this.dispatchEvent(new MessageEvent(type, { lastEventId: String(id), data: JSON.stringify(data) }));
  }
}

class FakeDocument extends EventTarget {
  hidden = false;
}

const here = { means: "here", device: null, name: null };
const changeOf = (id: string, who: object = here) => ({
  words: id,
  who,
  ids: { parts: [id] },
  isWhole: true,
});

let page: FakeDocument;
let live: Live;
let heard: Elsewhere[];

beforeEach(() => {
  vi.useFakeTimers();
  FakeSource.opened = [];
  page = new FakeDocument();
  vi.stubGlobal("EventSource", FakeSource);
  vi.stubGlobal("document", page);
  live = new Live();
  heard = [];
  live.addEventListener("elsewhere", (event) => heard.push((event as CustomEvent<Elsewhere>).detail));
});

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const source = () => FakeSource.opened.at(-1) as FakeSource;

describe("changes made elsewhere", () => {
  it("are told together where many come at once", () => {
    live.start();
    source().tell("change", 7, changeOf("S01"));
    source().tell("change", 8, changeOf("S02"));
    vi.advanceTimersByTime(1000);
    expect(heard.map(({ changes }) => changes.map(({ words }) => words))).toEqual([["S01", "S02"]]);
  });

  it("leave out what this page has just sent itself, and no more than that", () => {
    live.start();
    live.sending()(true);
    source().tell("change", 7, changeOf("S01"));
    source().tell("change", 8, changeOf("S02"));
    vi.advanceTimersByTime(1000);
    expect(heard.flatMap(({ changes }) => changes.map(({ words }) => words))).toEqual(["S02"]);
  });

  it("tell of another device's change also while this page sends one", () => {
    live.device = "mine";
    live.start();
    live.sending();
    source().tell("change", 7, changeOf("S01", { means: "device", device: "other", name: "A phone" }));
    source().tell("change", 8, changeOf("S02", { means: "device", device: "mine", name: "This phone" }));
    vi.advanceTimersByTime(1000);
    expect(heard.flatMap(({ changes }) => changes.map(({ words }) => words))).toEqual(["S01"]);
  });

  it("are not listened for while nobody looks, and gone on with after the last that was heard", () => {
    live.start();
    expect(source().url).toBe("/api/events");
    source().tell("ready", 7);
    page.hidden = true;
    page.dispatchEvent(new Event("visibilitychange"));
    expect(source().readyState).toBe(FakeSource.CLOSED);
    page.hidden = false;
    page.dispatchEvent(new Event("visibilitychange"));
    expect(source().url).toBe("/api/events?after=7");
    expect(FakeSource.opened.filter(({ readyState }) => readyState === 1)).toHaveLength(1);
  });

  it("are listened for again a good while after the bench would not have it", () => {
    live.start();
    source().close();
    source().dispatchEvent(new Event("error"));
    vi.advanceTimersByTime(20_000);
    expect(FakeSource.opened).toHaveLength(1);
    vi.advanceTimersByTime(20_000);
    expect(FakeSource.opened).toHaveLength(2);
  });

  it("touch everything where too much was missed to name it", () => {
    live.start();
    source().tell("reload", 900);
    vi.advanceTimersByTime(1000);
    expect(heard.map((news) => touches(news, ["costs"]))).toEqual([true]);
  });

  it("touch only the tables that they name, where they name all", () => {
    const news = (isWhole: boolean) =>
      ({ isAll: false, changes: [{ ...changeOf("S01"), isWhole }] }) as unknown as Elsewhere;
    expect(touches(news(true), ["parts"])).toBe(true);
    expect(touches(news(true), ["costs"])).toBe(false);
    expect(touches(news(false), ["costs"])).toBe(true);
  });

  it("are not asked for where the browser has no such stream", () => {
    vi.stubGlobal("EventSource", undefined);
    expect(() => live.start()).not.toThrow();
    expect(FakeSource.opened).toEqual([]);
  });
});
