/** How labels lie on their paper, in millimetres; kept by the server. On a roll each label is a page of its own. */
export interface LabelSetup {
  readonly paper: "a4" | "letter" | "roll";
  readonly widthMm: number;
  readonly heightMm: number;
  readonly gapAcrossMm: number;
  readonly gapDownMm: number;
  /** From the edges of the paper to the first label; null puts them in the middle of it. */
  readonly leftMm: number | null;
  readonly topMm: number | null;
}

export interface LabelPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly columns: number;
  readonly rows: number;
  readonly leftMm: number;
  readonly topMm: number;
}

/** A4 by ISO 216, Letter by ANSI/ASME Y14.1. */
const papers = { a4: { widthMm: 210, heightMm: 297 }, letter: { widthMm: 215.9, heightMm: 279.4 } } as const;

/** Next to the edge few printers print: common practice, no source. */
const edgeMm = 4;

/** Sizes that labels are sold in, by what they measure: common practice, no source. */
export const labelPresets: readonly { readonly name: string; readonly setup: LabelSetup }[] = [
  { name: "63.5 × 38.1 mm on A4, 21 to a sheet", setup: sheet("a4", 63.5, 38.1, 2.5) },
  { name: "38.1 × 21.2 mm on A4, 65 to a sheet", setup: sheet("a4", 38.1, 21.2, 2.5) },
  { name: "66.7 × 25.4 mm on Letter, 30 to a sheet", setup: sheet("letter", 66.7, 25.4, 3.2) },
  { name: "A roll 29 mm wide, cut every 62 mm", setup: sheet("roll", 62, 29, 0) },
];

function sheet(
  paper: LabelSetup["paper"],
  widthMm: number,
  heightMm: number,
  gapAcrossMm: number,
): LabelSetup {
  return { paper, widthMm, heightMm, gapAcrossMm, gapDownMm: 0, leftMm: null, topMm: null };
}

/** How many labels go on a page, and where the first one lies; nothing where not even one does. */
export function labelPage(setup: LabelSetup): LabelPage | undefined {
  const { widthMm, heightMm, gapAcrossMm, gapDownMm } = setup;
  if (setup.paper === "roll") return { widthMm, heightMm, columns: 1, rows: 1, leftMm: 0, topMm: 0 };
  const paper = papers[setup.paper];
  const across = along(paper.widthMm, widthMm, gapAcrossMm, setup.leftMm);
  const down = along(paper.heightMm, heightMm, gapDownMm, setup.topMm);
  if (across.count < 1 || down.count < 1) return undefined;
  return { ...paper, columns: across.count, rows: down.count, leftMm: across.fromMm, topMm: down.fromMm };
}

function along(paperMm: number, labelMm: number, gapMm: number, fromMm: number | null) {
  const roomMm = paperMm - (fromMm ?? edgeMm) - edgeMm;
  // Lengths in tenths of a millimetre do not divide without a rest in the last bits.
  const count = Math.floor((roomMm + gapMm) / (labelMm + gapMm) + 1e-9);
  const takenMm = count * labelMm + (count - 1) * gapMm;
  return { count, fromMm: fromMm ?? (paperMm - takenMm) / 2 };
}

/** The labels page by page, with empty places before the first where some of the sheet is used already. */
export function labelPages<T>(
  labels: readonly T[],
  { columns, rows }: LabelPage,
  used: number,
): (T | null)[][] {
  const perPage = columns * rows;
  const places = [...Array.from({ length: perPage === 1 ? 0 : used % perPage }, () => null), ...labels];
  const pages: (T | null)[][] = [];
  for (let at = 0; at < places.length; at += perPage) pages.push(places.slice(at, at + perPage));
  return pages;
}
