/** A line of three or more dashes, equals signs, stars or the like, that stands between two adverts. */
const separatorLine = /^[ \t]*(?:[-=_*~#•—–]{3,}|[-*=_](?: [-*=_]){2,})[ \t]*$/u;

/** What a line has that is an advert of its own: a price or how it is sold. */
const soundsLikeAdvert =
  /[£€$]|\d ?(?:quid|euros?|eur|gbp|usd|aud|bucks|sek|chf)(?!\p{L})|(?<!\p{L})(?:wtb|wts|wtt|wanted|for sale|selling|swap|trade|iso|looking for|ono|obo|vb|vhb|posted|collection|verkaufe|suche|vends|cherche|vendo|busco)(?!\p{L})/iu;

const isBlank = (line: string) => line.trim() === "";

function blocksOf(lines: readonly string[], ends: (line: string) => boolean): string[] {
  const blocks: string[][] = [[]];
  for (const line of lines) {
    if (ends(line)) blocks.push([]);
    else blocks.at(-1)?.push(line);
  }
  return blocks.map((block) => block.join("\n").trim()).filter((block) => block !== "");
}

/**
 * Splits a text of many adverts into one text each: at lines of dashes where there are any, else at blank lines, else at
 * every line where each line by itself sounds like an advert (has a price or says that it sells or wants). A text that gives
 * no such sign is one advert.
 */
export function splitListings(text: string): string[] {
  const lines = text.split(/\r\n|\n|\r/u);
  if (lines.some((line) => separatorLine.test(line)))
    return blocksOf(lines, (line) => separatorLine.test(line));
  const said = lines.filter((line) => !isBlank(line));
  const oneEach =
    said.length > 1 && said.every((line) => soundsLikeAdvert.test(line) && line.trim().length >= 15);
  if (oneEach) return said.map((line) => line.trim());
  return blocksOf(lines, isBlank);
}
