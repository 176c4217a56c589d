import { describe, expect, it } from "vitest";
import { withTypos } from "./typos.ts";

const isStiff = new RegExp(`^${withTypos("stiff", ["staff", "stuff"])}$`);

describe("withTypos", () => {
  it.each(["stiff", "stif", "stiif", "sttiff", "sitff", "stiffg", "stoff", "stifff"])(
    "knows %s for stiff",
    (word) => expect(word).toMatch(isStiff),
  );
  it.each(["staff", "stuff", "tiff", "skiffle", "cliff", "stf", "stiffens"])("leaves %s alone", (word) =>
    expect(word).not.toMatch(isStiff),
  );
});
