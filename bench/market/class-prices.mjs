/**
 * What things of each class sell for on the average of the made-up market, in euro cents. From memory, near the prices noted in
 * `data/demo/evidence.json`; no published source.
 */
const clubOfType = { driver: 11500, fairway: 7200, hybrid: 6400 };
const newerByYear = 0.1;
const yearWhereUnknown = 2019;
const headShare = 0.42;
const shaftOfSort = { wood: { fitted: 4500, none: 2400 }, hybrid: { fitted: 3600, none: 1800 } };
const adapterMinor = 1400;
const leftHandShare = 0.85;
const flexShare = { senior: 0.85, regular: 1, stiff: 1 };
const faultShare = { "sky-mark": 0.8 };

export const typicalClub = (clubType) => clubOfType[clubType];

/** What a club of this head and this shaft sells for on the average; nothing where it must not be swung. */
export function clubPrice(head, shaft) {
  return headed(head) * (flexShare[shaft.flex] ?? 1);
}

export const headPrice = (head) => headShare * headed(head);

export function shaftPrice(shaft, isFitted) {
  return shaftOfSort[shaft.sort][isFitted ? "fitted" : "none"] * (flexShare[shaft.flex] ?? 1);
}

export const adapterPrice = () => adapterMinor;

function headed({ model, hand, fault }) {
  if (fault === "crack") return 0;
  const year = model.year ?? yearWhereUnknown;
  const ofAge = Math.exp(newerByYear * (year - 2020));
  return (
    clubOfType[model.clubType] * ofAge * (hand === "left" ? leftHandShare : 1) * (faultShare[fault] ?? 1)
  );
}
