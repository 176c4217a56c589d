import { describe, expect, test } from "vitest";
import { shaftAfterTrim } from "./shaft-after-trim.ts";

const uncut = {
  massG: 60,
  lengthIn: 46,
  balanceFromTipIn: 24,
  tipTrimIn: 0,
  buttTrimIn: 0,
};

describe("shaftAfterTrim", () => {
  test("leaves an uncut shaft as it was", () => {
    const left = shaftAfterTrim(uncut);
    if (!left.ok) throw new Error(left.code);
    expect(left.massG).toBeCloseTo(60, 10);
    expect(left.balanceFromTipIn).toBeCloseTo(24, 10);
    expect(left.lengthIn).toBe(46);
  });

  test("what is cut off in two goes is what is cut off in one", () => {
    const once = shaftAfterTrim({ ...uncut, tipTrimIn: 1.5, buttTrimIn: 2 });
    const first = shaftAfterTrim({ ...uncut, tipTrimIn: 1.5 });
    if (!once.ok || !first.ok) throw new Error("refused");
    const second = shaftAfterTrim({ ...first, tipTrimIn: 0, buttTrimIn: 2 });
    if (!second.ok) throw new Error("refused");
    expect(second.massG).toBeCloseTo(once.massG, 9);
    expect(second.balanceFromTipIn).toBeCloseTo(once.balanceFromTipIn, 9);
    expect(second.moiAboutTipGIn2).toBeCloseTo(once.moiAboutTipGIn2, 6);
  });

  test.each([
    [46 / 3 + 0.001, true],
    [46 / 3 - 0.001, false],
    [92 / 3 - 0.001, true],
    [92 / 3 + 0.001, false],
  ])("a balance of %d in of 46 in is taken: %s", (balanceFromTipIn, ok) => {
    const left = shaftAfterTrim({ ...uncut, balanceFromTipIn });
    expect(left.ok).toBe(ok);
    if (!left.ok)
      expect(left).toEqual({
        ok: false,
        code: "balance-out-of-range",
        beta: balanceFromTipIn / 46,
      });
  });

  test("refuses to cut off more than there is", () => {
    expect(shaftAfterTrim({ ...uncut, tipTrimIn: 6, buttTrimIn: 40 })).toEqual({
      ok: false,
      code: "nothing-left",
      lengthIn: 0,
    });
  });
});
