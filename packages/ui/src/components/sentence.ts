/** A clause as a sentence of its own. */
export function sentence(clause: string): string {
  const text = clause.trim();
  const ended = /[.!?…]$/.test(text) ? text : `${text}.`;
  return ended.charAt(0).toUpperCase() + ended.slice(1);
}
