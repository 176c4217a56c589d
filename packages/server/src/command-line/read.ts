import { readListing, readyCatalogue } from "@ferrule/core";
import type { Answer, Command, Given, Surroundings } from "./command.ts";
import { exitCodes } from "./exit-code.ts";
import { givenWorld } from "./given-world.ts";
import { listingText } from "./listing-text.ts";
import { listingTexts, manyOption } from "./listing-texts.ts";
import { benchFolder, storedToRead } from "./open-bench.ts";
import { catalogueOption } from "./world-options.ts";

export const readCommand: Command = {
  name: "read",
  summary: "what a listing says, with the words that each fact was read from",
  takes: "[FILE…]",
  words: { least: 0, most: 1000 },
  options: { ...manyOption, ...catalogueOption },
  more: [
    "Each file is one listing. Without a file, or with -, the words come from standard input. Nothing is kept.",
  ],
  exits: [
    [exitCodes.done, "in every listing something was made out"],
    [exitCodes.no, "in one of them nothing was made out that could be bought"],
  ],
  examples: [
    { text: "A listing in a file", line: "ferrule read listing.txt", exit: exitCodes.done },
    {
      text: "Words on the way, and one fact out of the answer",
      line: "echo 'Ombrel driver head, RH, 10.5, 45 euros' | ferrule read --json | grep asking",
      exit: exitCodes.done,
    },
    {
      text: "Many listings in one file, with models from another",
      line: "ferrule read --many listings.txt --catalogue models.csv",
      exit: exitCodes.done,
    },
  ],
  run: runRead,
};

async function runRead(given: Given, around: Surroundings): Promise<Answer> {
  const texts = await listingTexts(given, around);
  const { catalogue } = await givenWorld(given, around);
  const ready = readyCatalogue(catalogue ?? storedModels(around));
  const listings = texts.map(({ from, text }) => ({ from, text, listing: readListing(text, ready) }));
  const isAll = listings.every(({ listing }) => listing.items.length > 0);
  return {
    exit: isAll ? exitCodes.done : exitCodes.no,
    json: { listings },
    text: (width) => listings.map((one) => listingText(one, listings.length > 1, width)).join("\n\n"),
  };
}

/** Without a bench there are no models, and reading goes on without them. */
function storedModels(around: Surroundings) {
  const stored = storedToRead(around);
  if (stored === undefined) {
    around.note(`There is no bench in ${benchFolder(around)}, so no models are known.`);
    return [];
  }
  try {
    return stored.tools.models.all();
  } finally {
    stored.close();
  }
}
