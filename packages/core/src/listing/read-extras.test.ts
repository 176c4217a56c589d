import { describe, expect, it } from "vitest";
import { readExtras } from "./read-extras.ts";
import { checkReader } from "./read-table.test-kit.ts";
import { prepareWords } from "./words.ts";

checkReader(readExtras, [
  ["with headcover", "headcover = true"],
  ["head cover included", "head cover = true"],
  ["Headcover: yes", "Headcover = true"],
  ["headcver included", "headcver = true"],
  ["c/w h/c", "h/c = true"],
  ["RH, HC", "HC = true"],
  ["no hc", "hc = false"],
  ["no headcover", "headcover = false"],
  ["no cover, £70", "cover = false"],
  ["without cover", "cover = false"],
  ["w/o headcover", "headcover = false"],
  ["headcover not included", "headcover = false"],
  ["headcover missing", "headcover = false"],
  ["missing headcover", "headcover = false"],
  ["headcover - no", "headcover = false"],
  ["cover but no tool", "cover = true", "tool = false"],
  ["Headcover and tool included", "Headcover = true", "tool = true"],
  ["Comes with the headcover, no wrench im afraid", "headcover = true", "wrench = false"],
  ["no headcover or wrench", "headcover = false", "wrench = false"],
  ["no cover, wrench or grip", "cover = false", "wrench = false"],
  ["no headcover, wrench included", "headcover = false", "wrench = true"],
  ["without headcover and wrench", "headcover = false", "wrench = false"],
  ["torque wrench", "torque wrench = true"],
  ["Wrench: no", "Wrench = false"],
  ["spanner and cover", "spanner = true", "cover = true"],
  ["adjustment key included", "adjustment key = true"],
  ["cover & key", "cover = true", "key = true"],
  ["wrnech included", "wrnech = true"],
  ["mit Haube", "Haube = true"],
  ["ohne Headcover", "Headcover = false"],
  ["avec capuchon", "capuchon = true"],
  ["sans capuchon", "capuchon = false"],
  ["con funda", "funda = true"],
  ["sin funda", "funda = false"],

  ["I play off 12 h/c"],
  ["hc 14 golfer"],
  ["hcp 12"],
  ["£5 to cover postage"],
  ["covers p&p"],
  ["headcover available for £5"],
  ["wrench sold separately"],
  ["3 wood cover", "cover = true"],
  ["RH, w/hc, 45in", "hc = true"],
  ["45.5 in playing length, cover\nRH", "cover = true"],
  ["graphite, cover yes", "cover = true"],
  ["graphite, cover no", "cover = false"],
  ["no cracks comes with cover and the tool", "cover = true", "tool = true"],
  ["tool box"],
]);

describe("a cover and a wrench", () => {
  it("are told apart", () => {
    expect(readExtras(prepareWords("cover and wrench")).map(({ field }) => field)).toEqual([
      "cover",
      "wrench",
    ]);
  });
});
