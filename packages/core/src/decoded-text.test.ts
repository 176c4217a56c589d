import { describe, expect, it } from "vitest";
import { decodedText } from "./decoded-text.ts";

const bytes = (hex: string) => Uint8Array.from(Buffer.from(hex.replaceAll(" ", ""), "hex"));

// WHATWG Encoding Standard, 4.2 (names), 6.1 (byte order marks), index windows-1252; Unicode 16, table 2-4, for the bytes of U+20AC.
describe("the text of a file", () => {
  it.each([
    ["UTF-8", "e2 82 ac 31"],
    ["UTF-8 with a mark", "ef bb bf e2 82 ac 31"],
    ["UTF-16, the low byte first", "ff fe ac 20 31 00"],
    ["UTF-16, the high byte first", "fe ff 20 ac 00 31"],
    ["Windows-1252", "80 31"],
  ])("is read from %s", (_title, hex) => expect(decodedText(bytes(hex))).toBe("€1"));

  it("may be nothing", () => expect(decodedText(bytes(""))).toBe(""));

  it.each([
    ["half a character of UTF-16", "ff fe 00 d8"],
    ["an odd byte of UTF-16", "fe ff 00"],
    ["broken UTF-8 that says it is UTF-8", "ef bb bf ff"],
    ["a workbook, which is a packed folder", "50 4b 03 04 14 00 06 ff"],
    ["a byte that Windows-1252 has no sign for", "41 81"],
  ])("is nothing where there is %s", (_title, hex) => expect(decodedText(bytes(hex))).toBeUndefined());
});
