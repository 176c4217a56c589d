/** What the process ends with, so that a script can tell without reading. */
export const exitCodes = {
  /** Done; where a yes or a no was asked for, yes. */
  done: 0,
  /** Something given has to be put right; nothing was changed. */
  refused: 1,
  /** The command line itself was not understood. */
  wrongUse: 2,
  /** The answer is no. */
  no: 3,
  /** The answer depends on something that is still open. */
  open: 4,
  /** A fault of ours. */
  ourBug: 70,
} as const;

export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];

/** In words, for the help. */
export const exitWords: readonly (readonly [ExitCode, string])[] = [
  [exitCodes.done, "done; where a yes or a no was asked for, yes"],
  [
    exitCodes.refused,
    "something given has to be put right (a file, a row, the data folder); nothing was changed",
  ],
  [exitCodes.wrongUse, "the command line was not understood"],
  [exitCodes.no, "the answer is no"],
  [exitCodes.open, "the answer depends on something that is still open"],
  [exitCodes.ourBug, "a fault of ours"],
];
