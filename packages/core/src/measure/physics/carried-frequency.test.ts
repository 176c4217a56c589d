import { describe, expect, test } from "vitest";
import { beamBeyondClamp, carriedFrequency } from "./carried-frequency.ts";

const reading = { cpm: 250, beamLengthIn: 40, beamMassG: 53, tipMassG: 205 };
const target = { beamLengthIn: 40, beamMassG: 53, tipMassG: 205 };

describe("carriedFrequency", () => {
  test("a reading carried to its own beam is itself", () => {
    expect(carriedFrequency({ reading, target }).cpm).toBeCloseTo(250, 9);
  });

  test("a reading carried there and back is itself", () => {
    const elsewhere = { beamLengthIn: 38.5, beamMassG: 50, tipMassG: 240 };
    const { cpm } = carriedFrequency({ reading, target: elsewhere });
    expect(carriedFrequency({ reading: { ...elsewhere, cpm }, target }).cpm).toBeCloseTo(250, 9);
  });

  test("a shorter beam, a lighter tip and a lighter shaft each swing faster", () => {
    for (const change of [{ beamLengthIn: 39.5 }, { tipMassG: 200 }, { beamMassG: 50 }]) {
      expect(carriedFrequency({ reading, target: { ...target, ...change } }).cpm).toBeGreaterThan(250);
    }
  });

  test("a longer clamp reads higher (tutelman.com/golf/measure/NF4_FreqFlex.php; Swing Surgeon, 2010)", () => {
    const shaft = { massG: 60, lengthIn: 45, balanceFromTipIn: 23 };
    const [short, long] = [2.5, 5].map((clampIn) => beamBeyondClamp({ ...shaft, clampIn }));
    if (!short?.ok || !long?.ok) throw new Error("refused");
    const cpm = carriedFrequency({
      reading: { ...short, tipMassG: 205, cpm: 220 },
      target: { ...long, tipMassG: 205 },
    }).cpm;
    expect(cpm).toBeGreaterThan(220);
  });
});

describe("beamBeyondClamp", () => {
  test("takes the clamped length and its share of a uniform shaft's mass off", () => {
    const beam = beamBeyondClamp({
      massG: 90,
      lengthIn: 45,
      balanceFromTipIn: 22.5,
      clampIn: 5,
    });
    if (!beam.ok) throw new Error(beam.code);
    expect(beam.beamLengthIn).toBe(40);
    expect(beam.beamMassG).toBeCloseTo(80, 10);
  });

  test("hands on the refusal of an unbelievable balance", () => {
    expect(
      beamBeyondClamp({
        massG: 60,
        lengthIn: 45,
        balanceFromTipIn: 9,
        clampIn: 5,
      }),
    ).toEqual({
      ok: false,
      code: "balance-out-of-range",
      beta: 0.2,
    });
  });
});
