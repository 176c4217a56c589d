import { readListing, readyCatalogue } from "../../packages/core/dist/index.js";
import { fuzzyModels } from "../fuzzy-models.mjs";
import { timedCpu } from "../measure.mjs";
import { tuningCorpus } from "../tuning-corpus.mjs";

export const sizes = [500, 1500, 5000];
export const sizeText = (count) => `${count} models`;
export const about =
  "Which model a listing of one known thing offers: readListing, which reads all other facts as well, against Fuse.js over the whole catalogue.";
/** Plain fuzzy search takes so long that it is asked about so many listings. */
const asked = 30;

export async function ready() {
  const { among } = await tuningCorpus();
  return (count) => {
    const { models, listings } = among(count);
    const catalogue = readyCatalogue(models);
    const fuzzy = fuzzyModels(models);
    const known = listings.filter(
      ({ expected: { items } }) => items.length === 1 && items[0].modelId !== null,
    );
    // Spread over the files, so that those written as traps for the reader are among them.
    const some = known.filter((_, at) => at % Math.floor(known.length / asked) === 0).slice(0, asked);
    for (const { text } of known) readListing(text, catalogue);
    const ours = timedCpu(() =>
      some.map(({ text }) => readListing(`${text} `, catalogue).items[0]?.modelId ?? null),
    );
    const usual = timedCpu(() => some.map(({ text }) => fuzzy(text)));
    const right = ({ result }) =>
      (100 * result.filter((id, at) => id === some[at].expected.items[0].modelId).length) / some.length;
    const against = "Fuse.js over all";
    return [
      {
        ...{ what: "finding the model", unit: "ms of processor", against },
        ...{ ours: ours.ms / some.length, baseline: usual.ms / some.length },
      },
      {
        what: "right models (more is better)",
        unit: "%",
        against,
        ours: right(ours),
        baseline: right(usual),
      },
    ];
  };
}
