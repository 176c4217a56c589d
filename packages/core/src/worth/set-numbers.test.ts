import { describe, expect, it } from "vitest";
import { setNumbers } from "./set-numbers.ts";

describe("setNumbers", () => {
  // How the trade names a set; common practice, no source.
  it.each([
    ["4-PW", ["4", "5", "6", "7", "8", "9", "PW"]],
    ["5-sw", ["5", "6", "7", "8", "9", "PW", "AW", "SW"]],
    ["6-GW", ["6", "7", "8", "9", "PW", "GW"]],
    ["7", ["7"]],
    ["9-4", ["9-4"]],
    ["4-6-8", ["4-6-8"]],
    ["H-2", ["H-2"]],
  ])("%s is %j", (written, numbers) => expect(setNumbers(written)).toEqual(numbers));
});
