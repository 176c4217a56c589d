import Fuse from "../packages/core/node_modules/fuse.js/dist/fuse.mjs";

/** Plain fuzzy search: the id of the nearest model to any two words in a row, looked for among all. */
export function fuzzyModels(models) {
  const fuse = new Fuse(
    models.map((each) => ({ ...each, name: `${each.maker} ${each.model}` })),
    { keys: ["name", "model"], includeScore: true, ignoreLocation: true, threshold: 0.4 },
  );
  return (text) => {
    const words = text.match(/[\p{L}\d]+/gu) ?? [];
    const pairs = words.slice(0, 12).map((word, at) => [word, words[at + 1]].filter(Boolean).join(" "));
    const found = pairs.flatMap((pair) => fuse.search(pair, { limit: 1 }));
    return found.sort((a, b) => a.score - b.score)[0]?.item.id ?? null;
  };
}
