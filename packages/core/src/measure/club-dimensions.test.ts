import { describe, expect, it } from "vitest";
import {
  adapter,
  driver,
  estimated,
  grip,
  receiverHead,
  shippedTypical,
  woodShaft,
} from "./club.test-kit.ts";
import { clubDimensions } from "./club-dimensions.ts";

const reference = { typical: shippedTypical };

describe("clubDimensions", () => {
  // tutelman.com/golf/design/flex4.php: a 43 in club with 1 in of BBGM takes a 42 in shaft, without a cap.
  it("has the cut length between the ground, the BBGM and the cap", () => {
    const parts = { ...driver, grip: { ...grip, capThicknessIn: 0 } };
    const { cutLengthIn, bbgmIn, capThicknessIn } = clubDimensions(parts, { playingLengthIn: 43 }, reference);
    expect([cutLengthIn, bbgmIn, capThicknessIn]).toEqual([42, 1, 0]);
  });

  // Derived, no published source: seat 2.4 in up less 0.9 in below it.
  it("stops the tip below the seat of an adapter", () => {
    const parts = { head: receiverHead, adapter, shaft: woodShaft, grip };
    const dimensions = clubDimensions(parts, {}, reference);
    expect(dimensions.bbgmIn).toBeCloseTo(1.5, 12);
    expect(dimensions).toMatchObject({ seatToGroundIn: 2.4, insertionIn: 1.1 });
    expect(dimensions.typical).not.toContain("bbgmIn");
  });

  it("gives the same lengths as the estimate", () => {
    const build = { buttTrimIn: 0.75, tipTrimIn: 0.5 };
    const dimensions = clubDimensions(driver, build, reference);
    const estimates = estimated(driver, build);
    expect(dimensions.playingLengthIn).toBeCloseTo(estimates.playingLengthIn?.value ?? Number.NaN, 9);
    expect(dimensions.cutLengthIn).toBeCloseTo(estimates.cutLengthIn?.value ?? Number.NaN, 9);
    expect(dimensions).toMatchObject({ buttTrimIn: 0.75, tipTrimIn: 0.5, uncutLengthIn: 44.5 });
  });

  it("names what rests on a typical figure, and says null for what nobody knows", () => {
    const { socket: _socket, ...head } = driver.head;
    const shaft = { ...woodShaft, length: undefined };
    const dimensions = clubDimensions({ ...driver, head, shaft }, {}, reference);
    expect(dimensions.typical).toEqual(expect.arrayContaining(["bbgmIn", "insertionIn"]));
    expect(dimensions).toMatchObject({ cutLengthIn: null, playingLengthIn: null, uncutLengthIn: null });
  });
});
