import { describe, expect, it } from "vitest";
import { fieldChanges } from "./field-changes.ts";
import { historyField, thingHref, thingText, whoText } from "./history-words.ts";
import { namedValue } from "./named-value.ts";

describe("what a change made other than it was", () => {
  it("is told field by field, with quantities and money whole", () => {
    const before = {
      id: "H01",
      massG: { value: 198, plusMinus: 1 },
      socket: { type: "bore", depthIn: 1 },
      year: 2019,
    };
    const after = {
      id: "H01",
      massG: { value: 199, plusMinus: 1 },
      socket: { type: "bore", depthIn: 1.5 },
      note: "weighed",
    };
    expect(fieldChanges(before, after)).toEqual([
      { field: "massG", before: { value: 198, plusMinus: 1 }, after: { value: 199, plusMinus: 1 } },
      { field: "socket.depthIn", before: 1, after: 1.5 },
      { field: "year", before: 2019, after: undefined },
      { field: "note", before: undefined, after: "weighed" },
    ]);
  });

  it("is all of it where the thing came or went, and the text itself where only a text is kept", () => {
    expect(fieldChanges(null, { id: "c1" })).toEqual([{ field: "id", before: undefined, after: "c1" }]);
    expect(fieldChanges("old words", "new words")).toEqual([
      { field: "text", before: "old words", after: "new words" },
    ]);
  });
});

describe("words of the history", () => {
  it("say a value in its unit, and what is no quantity as it stands", () => {
    expect(namedValue("massG", { value: 198, plusMinus: 2 }, "in", "EUR")).toBe("198 g ± 2");
    expect(namedValue("paid", { amountMinor: 4550, currency: "GBP" }, "in", "EUR")).toBe("£45.50");
    expect(namedValue("hourValueMinor", 1200, "in", "EUR")).toBe("€12.00");
    expect(namedValue("year", 2021, "in", "EUR")).toBe("2021");
    expect(namedValue("faults", ["sky-mark"], "in", "EUR")).toBe("Sky mark on the crown");
    expect(namedValue("note", undefined, "in", "EUR")).toBe("nothing");
  });

  it("call things and fields by the page's names", () => {
    expect(thingText({ table: "parts", id: "H01" })).toBe("the part H01");
    expect(thingText({ table: "costs", id: "bench" })).toBe("the costs");
    expect(historyField("costs", "hourValueMinor")).toBe("An hour of yours is worth");
    expect(historyField("parts", "socket.depthIn")).toBe("Depth of the bore");
  });

  it("lead to where a thing is shown, a joint to the first of its parts", () => {
    expect(thingHref({ table: "parts", id: "H 1", before: null, after: {} })).toBe("/parts/H%201");
    expect(thingHref({ table: "joints", id: "j1", before: { parts: ["S01", "G01"] }, after: null })).toBe(
      "/parts/S01",
    );
  });

  it("name who made it, or what it was made with", () => {
    expect(whoText({ means: "device", device: "d1", name: "Workshop phone" })).toBe("Workshop phone");
    expect(whoText({ means: "here", device: null, name: null })).toBe("This machine");
    expect(whoText({ means: "command-line", device: null, name: null })).toBe("The command line");
  });
});
