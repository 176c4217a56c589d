/** Marks that turn the direction of writing until another one ends it (Unicode Standard Annex 9, 2.1 to 2.5). */
const turns = /[\u202a-\u202e\u2066-\u2069]/g;

/** Somebody else's words as they may stand within a line of ours: they turn no word of it round. */
export function withoutTurns(words: string): string {
  return words.replace(turns, "");
}
