import { readListing, readyCatalogue } from "../../packages/core/dist/index.js";
import { median, timedCpu } from "../measure.mjs";
import { regexReader } from "../regex-reader.mjs";
import { tuningCorpus } from "../tuning-corpus.mjs";

export const sizes = [500, 1500, 5000];
export const sizeText = (count) => `${count} models`;
export const about =
  "Annotated listings read with a catalogue of so many models; right on the files for tuning, which flatters both (docs/reading.md has those held out).";
const [rounds, warmUps] = [5, 3];

export async function ready() {
  const { among, f1 } = await tuningCorpus();
  return (count) => {
    const { models, listings } = among(count);
    const ready = readyCatalogue(models);
    const readers = { ours: (text) => readListing(text, ready), usual: regexReader(models) };
    const round = (at) =>
      Object.entries(readers).map(([name, read]) => [
        name,
        // Another blank at the end, so that nothing that was kept from the round before can answer.
        timedCpu(() => listings.map(({ text }) => read(text + " ".repeat(at)))),
      ]);
    const taken = Array.from({ length: warmUps + rounds }, (_, at) => Object.fromEntries(round(at))).slice(
      warmUps,
    );
    const ms = (name) => median(taken.map((each) => each[name].ms)) / listings.length;
    const right = (name) => f1(listings, taken[0][name].result);
    const against = "a pattern a field";
    return [
      {
        what: "reading a listing",
        unit: "ms of processor",
        against,
        ours: ms("ours"),
        baseline: ms("usual"),
      },
      {
        what: "facts read right (more is better)",
        unit: "F1",
        against,
        ours: right("ours"),
        baseline: right("usual"),
      },
    ];
  };
}
