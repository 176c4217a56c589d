import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkValue, codesNear, shortCode, typedCode } from "./short-code.ts";

const alphabet = "123456789ABCDEFGHJKMNPQRSTVWXYZ";
const numbers = fc.integer({ min: 1, max: 31 ** 5 - 1 });

describe("the check", () => {
  // Numbers as they are printed with the ten-figure rule of ISO 2108:1992: ISBN Users' Manual, 4th ed., and
  // en.wikipedia.org/wiki/ISBN. X is ten.
  it.each(["0571089895", "9070002345", "0306406152", "080442957X"])(
    "agrees with the printed ISBN %s",
    (isbn) => {
      const values = [...isbn].map((figure) => (figure === "X" ? 10 : Number(figure)));
      expect(checkValue(values.slice(0, -1), 11)).toBe(values.at(-1));
    },
  );
});

describe("a code", () => {
  it("has five characters, six after the first 31⁴, and none that looks like another", () => {
    expect(shortCode(1)).toHaveLength(5);
    expect(shortCode(31 ** 4 - 1)).toHaveLength(5);
    expect(shortCode(31 ** 4)).toHaveLength(6);
    fc.assert(fc.property(numbers, (number) => !/[^1-9A-Z]|[ILOU]/.test(shortCode(number))));
  });

  it("is one number's alone", () => {
    const codes = new Set(Array.from({ length: 20_000 }, (_, at) => shortCode(at + 1)));
    expect(codes.size).toBe(20_000);
    fc.assert(
      fc.property(numbers, numbers, (one, other) => one === other || shortCode(one) !== shortCode(other)),
    );
  });

  it.each([0, -1, 1.5, 31 ** 5, Number.NaN])("is not made of %s", (number) =>
    expect(() => shortCode(number)).toThrow(RangeError),
  );

  // That 31 is prime makes it so: derived, no published source; here every one of the slips is tried.
  it("lets no other character and no two swapped pass", () => {
    fc.assert(
      fc.property(numbers, (number) => {
        const code = shortCode(number);
        for (let at = 0; at < code.length; at += 1) {
          for (const character of alphabet) {
            if (character === code[at]) continue;
            expect(typedCode(code.slice(0, at) + character + code.slice(at + 1)).is).toBe("misread");
          }
          for (let then = at + 1; then < code.length; then += 1) {
            if (code[at] === code[then]) continue;
            const swapped = [...code];
            [swapped[at], swapped[then]] = [swapped[then] as string, swapped[at] as string];
            expect(typedCode(swapped.join("")).is).toBe("misread");
          }
        }
      }),
      { numRuns: 15 },
    );
  });
});

describe("what is typed", () => {
  const code = shortCode(7);
  it.each<[string, string]>([
    ["as it is printed", code],
    ["in small letters, with spaces", ` ${code.slice(0, 2).toLowerCase()} ${code.slice(2).toLowerCase()} `],
    ["with a dash", `${code.slice(0, 3)}-${code.slice(3)}`],
    ["as an address from a label", `https://192.168.1.20:4311/code/${code}`],
    ["as an address with a slash at its end", `http://bench.local/code/${code.toLowerCase()}/`],
  ])("is read %s", (_how, text) => expect(typedCode(text)).toEqual({ is: "code", code }));

  it("takes I and L for the one", () => {
    const withOne = Array.from({ length: 200 }, (_, at) => shortCode(at + 1)).find((each) =>
      each.includes("1"),
    );
    expect(typedCode((withOne as string).replace("1", "l"))).toEqual({ is: "code", code: withOne });
  });

  it.each(["", "head", "headed for", "Tarn 10.5", "née12", "https://elsewhere/parts/H01"])(
    "is no code where it is %j",
    (text) => expect(typedCode(text).is).toBe("no-code"),
  );

  it("is a code misread where it has a character that no code has", () =>
    expect(typedCode("0OOO0")).toEqual({ is: "misread", code: "0OOO0" }));
});

describe("codes near", () => {
  const codes = ["7K2QX", "AAB3C", "7K2QZ"];
  it.each<[string, string, string[]]>([
    ["another character", "7K3QX", ["7K2QX"]],
    ["two swapped", "K72QX", ["7K2QX"]],
    ["one missing", "7KQX", ["7K2QX"]],
    ["one too many", "AABB3C", ["AAB3C"]],
    ["a last one that is two codes'", "7K2QY", ["7K2QX", "7K2QZ"]],
    ["two others", "7K33X", []],
  ])("are told by %s", (_slip, typed, near) => expect(codesNear(typed, codes)).toEqual(near));

  it("leave out the code itself", () => expect(codesNear("AAB3C", codes)).toEqual([]));
});
