/** SQLite's primary result codes (https://sqlite.org/rescode.html) that Ferrule has words for. */
export const resultCodes = {
  busy: 5,
  locked: 6,
  readOnly: 8,
  ioError: 10,
  corrupt: 11,
  full: 13,
  cannotOpen: 14,
  notADatabase: 26,
} as const;

/** The primary result code of what SQLite threw; nothing of another error. */
export function resultCodeOf(error: unknown): number | undefined {
  const { errcode } = error as { errcode?: number };
  return errcode === undefined ? undefined : errcode & 0xff;
}
