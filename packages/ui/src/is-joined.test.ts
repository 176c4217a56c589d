import type { Joint } from "@ferrule/core";
import { expect, it } from "vitest";
import { isJoined } from "./is-joined.ts";

it("tells a gripped shaft from a bonded one by the joints of the bench", () => {
  const joints: Joint[] = [
    { type: "gripped", parts: ["g1", "s1"] },
    { type: "bonded", parts: ["a1", "s2"] },
  ];
  expect(isJoined(joints, "s1", "gripped")).toBe(true);
  expect(isJoined(joints, "s1", "bonded")).toBe(false);
  expect(isJoined(joints, "s2", "gripped")).toBe(false);
  expect(isJoined(joints, "s2", "bonded")).toBe(true);
});
