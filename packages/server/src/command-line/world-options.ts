import type { Options } from "./command.ts";

/** Options that put something of a file's in the place of what is stored. */
export const benchOption: Options = {
  bench: {
    takes: "FILE",
    text: "an exported bench (JSON or CSV) in the place of the stored one; nothing that is stored is then looked at",
  },
};

export const catalogueOption: Options = {
  catalogue: {
    takes: "FILE",
    text: "the models to read with (JSON or CSV), in the place of the stored ones",
  },
};

export const marketOptions: Options = {
  ...benchOption,
  ...catalogueOption,
  evidence: { takes: "FILE", text: "prices (JSON or CSV), in the place of the stored ones" },
  sightings: { takes: "FILE", text: "the log of listings (JSON), in the place of the stored one" },
  costs: {
    takes: "FILE",
    text: "costs (JSON); those that it leaves out are as stored, or as a new bench has them",
  },
  today: { takes: "DATE", text: "the day to reckon from, such as 2026-11-25; without it, today" },
};
