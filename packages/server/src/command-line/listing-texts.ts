import { splitListings } from "@ferrule/core";
import { ProblemError } from "../errors.ts";
import type { Given, Options, Surroundings } from "./command.ts";
import { type InputText, inputText } from "./input-text.ts";

export const manyOption: Options = {
  many: {
    short: "m",
    text: "each file holds many listings: apart by lines of dashes, else by blank lines, else one a line",
  },
};

const textMost = 20_000;

/** The listings in the files that are named, or in standard input; throws a `ProblemError` where one is empty or too long. */
export async function listingTexts(given: Given, around: Surroundings): Promise<InputText[]> {
  const names = given.words.length === 0 ? ["-"] : given.words;
  const inputs: InputText[] = [];
  for (const name of names) inputs.push(await inputText(name, around));
  const listings = inputs.flatMap((input) => (given.isOn("many") ? manyOf(input) : [input]));
  for (const listing of listings) checkText(listing);
  return listings;
}

function manyOf({ from, text }: InputText): InputText[] {
  const texts = splitListings(text);
  if (texts.length === 0) return [{ from, text }];
  return texts.map((one, at) => ({ from: `${from}, listing ${at + 1}`, text: one }));
}

function checkText({ from, text }: InputText): void {
  const got =
    text.trim() === "" ? "nothing" : text.length > textMost ? `${text.length} characters` : undefined;
  if (got === undefined) return;
  const expected = `the words of a listing, at most ${textMost} characters; with --many, of several`;
  throw new ProblemError({
    code: "bad-request",
    message: `${from} cannot be read as a listing`,
    refusals: [{ field: from, got, expected }],
  });
}
