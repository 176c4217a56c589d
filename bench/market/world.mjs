import { readFileSync } from "node:fs";
import { arrivalsOf } from "./arrivals.mjs";

const table = (name) => JSON.parse(readFileSync(new URL(`../../data/${name}.json`, import.meta.url), "utf8"));

export const daysInYear = 365;
export const catalogue = table("demo/catalogue");
export const reference = {
  typical: table("reference/typical"),
  work: table("reference/work"),
  cautions: table("reference/cautions"),
};
/** There is no puller on this bench: what is glued stays glued. */
const outOfReach = { costMinor: 100_000 };
export const costs = {
  ...table("reference/first-costs"),
  work: { "pull-adapter": outOfReach, "pull-head": outOfReach, "ream-bore": outOfReach },
};
export const start = { cashMinor: 50_000, minutesPerWeek: 8 * 60 };

export function yearOf(seed, days = daysInYear) {
  return { listings: arrivalsOf(seed, days, catalogue), days, start, costs, work: reference.work };
}
