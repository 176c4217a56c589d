import { describe, expect, it } from "vitest";
import type { Joint } from "../parts/joint.ts";
import type { Part } from "../parts/part.ts";
import { stockTypes } from "./stock.ts";

const grip = (id: string, more: object = {}) => ({ id, kind: "grip", ...more }) as Part;
const shaft = (id: string, more: object = {}) => ({ id, kind: "shaft", ...more }) as Part;
const gripped = (one: string, other: string): Joint => ({ type: "gripped", parts: [one, other] });
const groups = (parts: Part[], joints: Joint[] = []) =>
  stockTypes({ parts, joints }, []).map(({ instances }) =>
    instances.map((each) => each.parts.map(({ id }) => id).join("+")).join(" | "),
  );

describe("things of a bench", () => {
  it.each([
    ["of the same facts are alike", [grip("a"), grip("b")], [], ["a | b"]],
    [
      "are alike whatever was paid, noted or when they came",
      [grip("a", { note: "worn?" }), grip("b", { acquiredOn: "2026-01-01" })],
      [],
      ["a | b"],
    ],
    [
      "are alike in whatever order their facts were written down",
      [
        shaft("a", { tip: { diameterIn: 0.335, form: "parallel" }, flex: "stiff" }),
        shaft("b", { flex: "stiff", tip: { form: "parallel", diameterIn: 0.335 } }),
      ],
      [],
      ["a | b"],
    ],
    ["that differ in a fact are not alike", [grip("a"), grip("b", { model: "Tacky" })], [], ["a", "b"]],
    [
      "that are joined are one, and alike only what is joined in the same way",
      [shaft("s1"), grip("g1"), shaft("s2"), grip("g2"), shaft("s3")],
      [gripped("s1", "g1"), gripped("s2", "g2")],
      ["g1+s1 | g2+s2", "s3"],
    ],
  ])("%s", (_what, parts, joints, expected) => {
    expect(groups(parts, joints)).toEqual(expected);
  });

  it("are alike with what is offered, and know which bundle each comes with", () => {
    const bundle = { id: "lot", parts: [grip("b"), grip("c")], joints: [] };
    const [type] = stockTypes({ parts: [grip("a")], joints: [] }, [bundle]);
    expect(type?.instances.map((each) => each.bundle)).toEqual([undefined, "lot", "lot"]);
  });
});
