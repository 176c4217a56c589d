import { expect, test } from "vitest";
import { diskProblem } from "./disk-problem.ts";
import { keptJson } from "./kept-json.ts";

test("gives a text as what it stands for", () => {
  expect(keptJson('{"id":"h1"}')).toEqual({ id: "h1" });
});

test.each(["", '{"id":"h', "\u00a5\u00a5\u00a5"])(
  "takes a text that is no JSON (%j) for damage of the database",
  (text) => {
    let thrown: unknown;
    try {
      keptJson(text);
    } catch (error) {
      thrown = error;
    }
    expect(diskProblem(thrown)?.message).toMatch(/The database is damaged/);
  },
);
