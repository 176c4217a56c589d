import { z } from "zod";
import { keptJson } from "./kept-json.ts";
import type { Database } from "./sqlite.ts";

const mm = z.number().min(0).max(400);

/** How labels lie on their paper, in millimetres. On a roll each label is a page of its own. */
export const labelSetupSchema = z.strictObject({
  paper: z.enum(["a4", "letter", "roll"]),
  widthMm: mm.min(15),
  heightMm: mm.min(10),
  gapAcrossMm: mm.max(50),
  gapDownMm: mm.max(50),
  /** How far the first label lies from the edges of the paper; null puts the labels in the middle of it. */
  leftMm: mm.max(100).nullable(),
  topMm: mm.max(100).nullable(),
});
export type LabelSetup = z.infer<typeof labelSetupSchema>;

/** 21 to a sheet of A4, a common size: common practice, no source. */
const firstLabelSetup: LabelSetup = {
  paper: "a4",
  widthMm: 63.5,
  heightMm: 38.1,
  gapAcrossMm: 2.5,
  gapDownMm: 0,
  leftMm: null,
  topMm: null,
};

/** The paper that labels are printed on, and which have been. */
export interface LabelsTable {
  setup(): LabelSetup;
  writeSetup(setup: LabelSetup): void;
  /** The places of the parts whose labels have been printed. */
  printed(): ReadonlySet<number>;
  writePrinted(places: Iterable<number>): void;
}

export function labelsTable(database: Database): LabelsTable {
  const read = database.prepare("SELECT body FROM settings WHERE name = ?");
  const write = database.prepare(
    "INSERT INTO settings (name, body) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET body = excluded.body",
  );
  const value = (name: string): unknown => {
    const row = read.get(name) as { body: string } | undefined;
    return row === undefined ? undefined : keptJson(row.body);
  };
  return {
    setup: () => ({ ...firstLabelSetup, ...(value("labels") as Partial<LabelSetup> | undefined) }),
    writeSetup: (setup) => void write.run("labels", JSON.stringify(setup)),
    printed: () => new Set((value("labels-printed") as number[] | undefined) ?? []),
    writePrinted: (places) => void write.run("labels-printed", JSON.stringify([...places])),
  };
}
