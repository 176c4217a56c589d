import { seeded } from "../random.mjs";

/** Everything that is drawn, from one seed; neighbouring seeds are scattered first, since their first draws are alike. */
export function chances(seed) {
  const { next, pick, chance } = seeded(1 + ((seed * 48271 + 11) % 2147483645));
  for (let turn = 0; turn < 8; turn += 1) next();
  const normal = () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
  const exponential = (mean) => -mean * Math.log(1 - next());
  const between = (low, high) => low + (high - low) * next();
  /** The one of the list that the shares, which add up to one, give. */
  const byShare = (shares) => {
    let left = next();
    for (const [name, share] of Object.entries(shares)) {
      left -= share;
      if (left < 0) return name;
    }
    return Object.keys(shares).at(-1);
  };
  const poisson = (mean) => {
    let [count, product] = [0, next()];
    while (product > Math.exp(-mean)) [count, product] = [count + 1, product * next()];
    return count;
  };
  return { next, pick, chance, normal, exponential, between, byShare, poisson };
}
