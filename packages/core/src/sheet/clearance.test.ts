import { describe, expect, it } from "vitest";
import type { Fault } from "../parts/fault.ts";
import type { Part } from "../parts/part.ts";
import { clearanceRefusals, clearanceSchema, clearedFaults } from "./clearance.ts";

const part = (kind: Part["kind"], fault: Fault, more: object = {}) =>
  ({ id: "x", kind, faults: [fault], ...more }) as Part;

// golfcourseinsider.com, bent shafts (smooth bends in steel); the rest common practice, no source.
describe("clearing a fault of safety", () => {
  it.each<[string, Part, Fault, "not-there" | "put-right", string | undefined]>([
    ["a joint bonded anew", part("adapter", "loose-joint"), "loose-joint", "put-right", undefined],
    [
      "a smooth bend in steel",
      part("shaft", "bent-shaft", { material: "steel" }),
      "bent-shaft",
      "put-right",
      undefined,
    ],
    [
      "a bend in graphite",
      part("shaft", "bent-shaft", { material: "graphite" }),
      "bent-shaft",
      "put-right",
      "because",
    ],
    ["a bend in nobody knows what", part("shaft", "bent-shaft"), "bent-shaft", "put-right", "because"],
    ["a crack put right", part("shaft", "crack"), "crack", "put-right", "because"],
    ["a crack that was none", part("shaft", "crack"), "crack", "not-there", undefined],
    ["a fault that is not said", part("shaft", "crack"), "dent-shaft", "not-there", "fault"],
    ["a mark", part("head", "sky-mark"), "sky-mark", "not-there", "fault"],
  ])("is as it should be for %s", (_what, of, fault, because, field) => {
    expect(clearanceRefusals(of, { fault, because })[0]?.field).toBe(field);
  });

  it("denies the fault and leaves the others", () => {
    const before = part("shaft", "crack", { faults: ["crack", "rust"], deniedFaults: ["dent-shaft"] });
    expect(clearedFaults(before, "crack")).toEqual({
      faults: ["rust"],
      deniedFaults: ["dent-shaft", "crack"],
    });
  });

  it("takes no clearing without a name and a note", () => {
    const whole = { id: "c", on: "2026-11-25", part: "x", fault: "crack", because: "not-there", by: "Ann" };
    const parses = (more: object) => clearanceSchema.safeParse({ ...whole, ...more }).success;
    expect(parses({ note: "Stripped the paint and looked with a glass" })).toBe(true);
    expect(parses({ note: "fine" })).toBe(false);
    expect(parses({ note: "Stripped the paint and looked", by: "  " })).toBe(false);
  });
});
