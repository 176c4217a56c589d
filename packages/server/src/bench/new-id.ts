/** The first of `head-1`, `head-2` … from `from` on that is not taken. */
export function newId(stem: string, isTaken: (id: string) => boolean, from = 1): string {
  let number = from;
  while (isTaken(`${stem}-${number}`)) number += 1;
  return `${stem}-${number}`;
}
