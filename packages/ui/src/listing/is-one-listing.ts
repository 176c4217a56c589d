/** From so many blocks on, words with empty lines between them are more likely several listings than one. */
const blocksOfMany = 4;

/** Whether pasted words look like one listing, to be read without asking; a file's rows and many blocks do not. */
export function isOneListing(text: string): boolean {
  const words = text.trim();
  if (words === "" || /^[[{]/.test(words)) return false;
  return words.split(/\n\s*\n/).length < blocksOfMany;
}
