import { describe, expect, it } from "vitest";
import { clubBbgm } from "./bbgm.ts";
import { adapter, driver, driverHead, estimated, receiverHead, shippedTypical } from "./club.test-kit.ts";

describe("clubBbgm", () => {
  it("is the head's own for a bored head", () => {
    expect(clubBbgm({ head: driverHead }, shippedTypical)).toEqual({
      value: 1,
      plusMinus: 0.06,
      source: "stated",
    });
  });

  it("is the seat's height less the tip's stop for a head with an adapter", () => {
    const bbgm = clubBbgm({ head: receiverHead, adapter }, shippedTypical);
    expect(bbgm?.value).toBeCloseTo(1.5, 12);
    expect(bbgm?.plusMinus).toBeCloseTo(Math.hypot(0.06, 0.06), 12);
  });

  it("is 0 for a through bore of which nothing else is known (Hireko blog 2007-04)", () => {
    const head = { ...driverHead, socket: { type: "bore", throughBore: true } as const };
    expect(clubBbgm({ head }, shippedTypical)).toMatchObject({ value: 0, source: "typical" });
  });

  it("is unknown for a receiver without an adapter, and for a head of no known kind", () => {
    expect(clubBbgm({ head: receiverHead }, shippedTypical)).toBeUndefined();
    expect(clubBbgm({ head: { id: "H", kind: "head" } }, shippedTypical)).toBeUndefined();
  });

  it("makes the same shaft a quarter inch longer at 1.50 than at 1.25 in (Hireko blog 2011-01 BBGM)", () => {
    const at = (bbgmIn: number) =>
      estimated({ ...driver, head: { ...driverHead, socket: { type: "bore", bbgmIn } } }).playingLengthIn!
        .value;
    expect(at(1.5) - at(1.25)).toBeCloseTo(0.25, 12);
  });

  // Hireko blog 2007-04: a 45 in shaft plays at 45.5 in a blind bore, 46 and 46.5 in the two bores above it; no cap counted.
  it.each([
    [0.5, 45.5],
    [1, 46],
    [1.5, 46.5],
  ])("puts a 45 in shaft in a bore %f in up at %f in", (bbgmIn, playingIn) => {
    const shaft = { ...driver.shaft, length: { lengthIn: 45, basis: "shaft-alone" } as const };
    const head = { ...driverHead, socket: { type: "bore", bbgmIn } as const };
    expect(
      estimated({ head, shaft, grip: { ...driver.grip, capThicknessIn: 0 } }).playingLengthIn!.value,
    ).toBeCloseTo(playingIn, 9);
  });
});
