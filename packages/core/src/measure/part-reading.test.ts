import { describe, expect, it } from "vitest";
import { driverHead, shippedTypical } from "./club.test-kit.ts";
import { partReading, writtenReading } from "./part-reading.ts";

describe("partReading", () => {
  it("takes a nested field as it was written, with its default uncertainty", () => {
    expect(partReading(driverHead, "socket.bbgmIn", shippedTypical)).toEqual({
      value: 1,
      plusMinus: 0.06,
      source: "stated",
    });
  });

  it("keeps what was said of the uncertainty and the source", () => {
    const reading = { value: 201.5, plusMinus: 0.1, source: "measured" as const };
    expect(partReading({ ...driverHead, massG: reading }, "massG", shippedTypical)).toEqual(reading);
  });

  it("falls back to a typical reading and marks it as one", () => {
    const nineIron = { id: "H", kind: "head", clubType: "iron", clubNumber: "9" } as const;
    expect(partReading(nineIron, "massG", shippedTypical)).toMatchObject({ value: 282, source: "typical" });
  });

  it("reads a name that only the typical table has", () => {
    expect(partReading({ id: "S", kind: "shaft" }, "balanceFraction", shippedTypical)?.value).toBe(0.5);
  });

  it("gives nothing where neither is known", () => {
    expect(partReading({ id: "H", kind: "head" }, "massG", shippedTypical)).toBeUndefined();
    expect(
      partReading({ id: "H", kind: "head", clubType: "driver" }, "loftDeg", shippedTypical),
    ).toBeUndefined();
  });

  it("never lets a typical reading pass for a written one", () => {
    expect(writtenReading({ id: "G", kind: "grip" }, "massG")).toBeUndefined();
  });
});
