import { seeded } from "./random.mjs";

const syllables =
  "bar bel bor bram cal cor dar del dor dral fal fen gar gel gor grim hal hel jor kel kor kran lan lor mar mel mor nal ner nol pel por quel ral rin ros sel sor tal tel tor tran val vel vor wen wil yar zan zel".split(
    " ",
  );
const endings = "ack by el en ey id in ith ock on or um und wick".split(" ");
const variants = ["", "", "", " II", " Lite", " Max", " 3", " 9", " 10", " 60", " 75", " 460"];
const kinds = [
  ["head", "driver"],
  ["head", "driver"],
  ["head", "fairway"],
  ["head", "hybrid"],
  ["head", "iron"],
  ["head", "wedge"],
  ["head", "putter"],
  ["shaft", null],
  ["shaft", null],
  ["grip", null],
];

/** Names of the demo's catalogue that no other word is, which can be swapped for others wherever they stand. */
const swappable =
  "Northmoor Haldenbach Kestrelyn Orvane Pellowick Vexholm Brunsgaard Larkspindle Thistlemere Gormwell Ashgrove Dunmarrow Ombrel Skerrick Dimity Fenwrack Quernby Gorsewick Lapwick Thrumble Pothook Mottle Calder Tindle Wyvel Brindle Reedlace Sedgeline Wickerfen Tussock Bluebell Knarl".split(
    " ",
  );

function wordMaker(random) {
  const made = new Set();
  return () => {
    for (;;) {
      const stem = Array.from({ length: random.chance(0.5) ? 1 : 2 }, () => random.pick(syllables)).join("");
      const word = stem[0].toUpperCase() + stem.slice(1) + random.pick(endings);
      if (made.has(word)) continue;
      made.add(word);
      return word;
    }
  };
}

/** The word in the case in which the other one stood. */
function inCaseOf(found, word) {
  if (found === found.toUpperCase()) return word.toUpperCase();
  return found === found.toLowerCase() ? word.toLowerCase() : word;
}

function swapper(word) {
  const swaps = new Map(swappable.map((name) => [name.toLowerCase(), word()]));
  const pattern = new RegExp(`\\b(?:${swappable.join("|")})(?=s?\\b|\\d)`, "giu");
  return (text) => text.replace(pattern, (found) => inCaseOf(found, swaps.get(found.toLowerCase())));
}

function inventedModels(count, random, word) {
  const makers = Array.from({ length: 60 }, word);
  const models = [];
  const taken = new Set();
  while (models.length < count) {
    const maker = random.pick(makers);
    const base = word();
    for (let generation = random.step(1, 4, 1); generation > 0 && models.length < count; generation -= 1) {
      const [kind, clubType] = random.pick(kinds);
      const model = base + random.pick(variants);
      if (taken.has(`${kind} ${clubType} ${model}`)) continue;
      taken.add(`${kind} ${clubType} ${model}`);
      models.push({ id: `invented-${models.length}`, kind, maker, model, ...(clubType && { clubType }) });
    }
  }
  return models;
}

/**
 * A catalogue of `count` models and the corpus with its makers and models under other invented names: those of the demo,
 * renamed, with all their traps, among thousands made of syllables.
 */
export function swappedCorpus({ catalogue, corpus, count, seed }) {
  const random = seeded(seed);
  const word = wordMaker(random);
  const swap = swapper(word);
  const renamed = catalogue.map((each) => ({
    ...each,
    maker: swap(each.maker),
    model: swap(each.model),
    ...(each.aliases && { aliases: each.aliases.map(swap) }),
  }));
  const item = (each) => ({
    ...each,
    maker: each.maker && swap(each.maker),
    model: each.model && swap(each.model),
  });
  return {
    models: [...renamed, ...inventedModels(count - renamed.length, random, word)],
    listings: corpus.map(({ text, expect }) => ({
      text: swap(text),
      expected: { ...expect, items: expect.items.map(item) },
    })),
  };
}
