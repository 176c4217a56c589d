import { expect, test } from "vitest";
import { isQuestion } from "./is-question.ts";

const cases = [
  ["GET", "/api/bench/parts/head-1", true],
  ["POST", "/api/estimate", true],
  ["POST", "/api/plan", true],
  ["POST", "/api/advert", true],
  ["POST", "/api/plan/jobs", false],
  ["POST", "/api/judge", false],
  ["POST", "/api/bench/parts", false],
  ["PUT", "/api/advert/template", false],
  ["DELETE", "/api/read", false],
] as const;

test.each(cases)("%s %s is a question: %s", (method, path, expected) => {
  expect(isQuestion(method, path)).toBe(expected);
});
