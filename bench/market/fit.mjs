/** Whether these make a club, by the plain facts of the made-up market: nothing here asks the tool. */
export function makesClub(head, shaft, adapter) {
  return (
    head.fault !== "crack" &&
    adapter.family === head.family &&
    adapter.hand === head.hand &&
    adapter.sort === head.sort &&
    shaft.sort === head.sort
  );
}
