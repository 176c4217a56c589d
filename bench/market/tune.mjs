import { completesToday } from "./policies/completes-today.mjs";
import { fixedPrice } from "./policies/fixed-price.mjs";
import { costs, yearOf } from "./world.mjs";
import { livedYear } from "./year.mjs";

/** Seeds that no reported year is lived with. */
export const tuningSeeds = Array.from({ length: 8 }, (_, at) => 9001 + at);

const every = (from, to, by) =>
  Array.from({ length: Math.round((to - from) / by) + 1 }, (_, at) => from + at * by);

const families = {
  "fixed price": grid("all"),
  "fixed price by type": grid("type"),
  "fixed price by model": grid("model"),
  "completes today": every(0.4, 0.75, 0.05).map((share) => ({ share })),
};

function grid(by) {
  const shares = every(0.12, 0.4, 0.04);
  return shares.flatMap((headShare) =>
    every(0.12, 0.48, 0.06).flatMap((shaftShare) =>
      [30, 120, 400].map((patienceDays) => ({ by, headShare, shaftShare, patienceDays })),
    ),
  );
}

export const simplePolicy = (name, settings) =>
  name === "completes today" ? completesToday({ ...settings, costs }) : fixedPrice({ ...settings, costs });

/** Each simple rule with the settings that earn most on years of their own, so that it is seen at its best. */
export async function tunedRules(report = () => {}) {
  const years = tuningSeeds.map((seed) => yearOf(seed));
  const tuned = {};
  for (const [name, settings] of Object.entries(families)) {
    let best;
    for (const one of settings) {
      let netMinor = 0;
      for (const year of years)
        netMinor += (await livedYear(simplePolicy(name, one), year)).netMinor / years.length;
      if (!best || netMinor > best.netMinor) best = { ...one, netMinor: Math.round(netMinor) };
    }
    tuned[name] = best;
    report(name, best);
  }
  return tuned;
}
