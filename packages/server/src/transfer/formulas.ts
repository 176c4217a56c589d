/**
 * What a spreadsheet would take for a formula: a cell that begins with one of these signs, also after spaces or apostrophes.
 * A plain number keeps its sign. Source of the list: OWASP, "CSV Injection".
 */
const formulaStart = /^[\s']*[=+\-@＝＋－＠]|^'*[\t\r\n]/;
const plainNumber = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

function looksLikeFormula(text: string): boolean {
  return formulaStart.test(text) && !plainNumber.test(text);
}

/** The cell with an apostrophe before what a spreadsheet would calculate. */
export function neutralised(cell: string): string {
  return looksLikeFormula(cell) ? `'${cell}` : cell;
}

/** The cell as it was before `neutralised`; any other cell is left as it is. */
export function restored(cell: string): string {
  return cell.startsWith("'") && looksLikeFormula(cell.slice(1)) ? cell.slice(1) : cell;
}
