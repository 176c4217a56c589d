/**
 * Whether these make a club, by the plain facts of the made-up market: nothing here asks the tool. A shaft for woods is cut down
 * for a hybrid; one for hybrids is too short for a wood.
 */
export function makesClub(head, shaft, adapter) {
  return (
    head.fault !== "crack" &&
    adapter.family === head.family &&
    adapter.hand === head.hand &&
    adapter.sort === shaft.sort &&
    (shaft.sort === head.sort || shaft.sort === "wood")
  );
}
