/** Park–Miller minimal standard generator: the same numbers from the same seed on every machine. */
export function seeded(seed) {
  let state = seed;
  const next = () => {
    state = (state * 16807) % 2147483647;
    return (state - 1) / 2147483646;
  };
  return {
    next,
    pick: (list) => list[Math.floor(next() * list.length)],
    chance: (probability) => next() < probability,
    step: (from, to, by) => from + by * Math.floor(next() * ((to - from) / by + 1)),
  };
}
