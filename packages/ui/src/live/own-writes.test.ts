import { describe, expect, it } from "vitest";
import { OwnWrites } from "./own-writes.ts";

describe("changes of the page itself", () => {
  it("are known while they are under way, each once", () => {
    const own = new OwnWrites();
    own.begin();
    expect(own.takes(0)).toBe(true);
    expect(own.takes(0)).toBe(false);
  });

  it("are known for a moment after the answer, and no longer", () => {
    const own = new OwnWrites();
    own.begin()(1000, true);
    own.begin()(1000, true);
    expect(own.takes(1500)).toBe(true);
    expect(own.takes(9000)).toBe(false);
  });

  it("are not expected where they were refused", () => {
    const own = new OwnWrites();
    own.begin()(1000, false);
    expect(own.takes(1000)).toBe(false);
  });
});
