import type { Build, ClubParts } from "../measure/build.ts";
import type { ClubSummary } from "../measure/club-summary.ts";
import type { Estimates } from "../measure/estimate.ts";
import { type ClubPart, partReading, writtenReading } from "../measure/part-reading.ts";
import type { ReadingSource } from "../parts/reading.ts";
import type { TypicalRow } from "../parts/typical.ts";
import type { WorkStep } from "../resolve/result.ts";
import { type WorkshopLength, workshopLength } from "./workshop-length.ts";

/** In the order in which the figures are needed; a sheet has those that apply and are known. */
export const sheetDimensionNames = [
  "playing-length",
  "cut-length",
  "butt-trim",
  "butt-extension",
  "tip-trim",
  "insertion",
  "bottom-of-bore-to-ground",
  "tip-diameter",
  "bore-diameter",
  "sleeve-wall",
  "butt-diameter",
  "grip-core",
] as const;
/** What a figure of the sheet is taken over. All of them are in inches. */
export type SheetDimensionName = (typeof sheetDimensionNames)[number];

/** One figure to work to. Lengths come rounded to the workshop's rules; diameters and walls stand as they are. */
export interface SheetDimension {
  readonly name: SheetDimensionName;
  readonly valueIn: number;
  /** Nothing for what callipers read. */
  readonly workshop: WorkshopLength | null;
  /** Half the width of its 95 % interval, where it was estimated. */
  readonly plusMinusIn: number | null;
  /** Where it comes from: chosen for this club, worked out, or read off a part. */
  readonly source: ReadingSource | "chosen" | "worked-out";
}

export interface DimensionsInput {
  readonly parts: ClubParts;
  readonly build: Build;
  readonly summary: ClubSummary;
  readonly estimates: Estimates;
  readonly steps: readonly WorkStep[];
  readonly typical: readonly TypicalRow[];
}

/** A butt within a hair of its mark is neither cut nor extended. */
const leastTrimIn = 0.01;

/** Everything to set out, saw and read with callipers, in the order it is needed; what nobody knows is left out. */
export function sheetDimensions(input: DimensionsInput): readonly SheetDimension[] {
  const { parts, build, summary, estimates, steps } = input;
  const { head, adapter, shaft, grip } = parts;
  const trimIn = summary.buttTrimIn ?? 0;
  const tipTrimIn = build.tipTrimIn ?? stepFigure(steps, "tip-trim", "trimIn");
  const wallIn = stepFigure(steps, "shim", "wallIn") ?? stepFigure(steps, "rolled-sleeve", "wallIn");
  const holder = adapter ?? head;
  const bore = adapter ? "bore" : "socket";
  const found: (SheetDimension | undefined)[] = [
    estimated("playing-length", estimates.playingLengthIn, build.playingLengthIn !== undefined),
    estimated("cut-length", estimates.cutLengthIn, false),
    trimIn > leastTrimIn ? worked("butt-trim", trimIn) : undefined,
    trimIn < -leastTrimIn ? worked("butt-extension", -trimIn) : undefined,
    tipTrimIn ? length("tip-trim", tipTrimIn, "chosen") : undefined,
    read("insertion", holder, `${bore}.depthIn`, input),
    adapter ? undefined : read("bottom-of-bore-to-ground", head, "socket.bbgmIn", input),
    calliper("tip-diameter", shaft, "tip.diameterIn"),
    calliper("bore-diameter", holder, `${bore}.diameterIn`),
    wallIn === undefined ? undefined : plain("sleeve-wall", wallIn, "worked-out"),
    calliper("butt-diameter", shaft, "buttDiameterIn"),
    calliper("grip-core", grip, "coreDiameterIn"),
  ];
  return found.filter((dimension) => dimension !== undefined);
}

function plain(name: SheetDimensionName, valueIn: number, source: SheetDimension["source"]): SheetDimension {
  return { name, valueIn, workshop: null, plusMinusIn: null, source };
}

function length(name: SheetDimensionName, valueIn: number, source: SheetDimension["source"]): SheetDimension {
  return { ...plain(name, valueIn, source), workshop: workshopLength(valueIn) };
}

const worked = (name: SheetDimensionName, valueIn: number) => length(name, valueIn, "worked-out");

function estimated(
  name: SheetDimensionName,
  estimate: Estimates["playingLengthIn"],
  isChosen: boolean,
): SheetDimension | undefined {
  if (!estimate) return undefined;
  const { value, low, high } = estimate;
  return { ...length(name, value, isChosen ? "chosen" : "worked-out"), plusMinusIn: (high - low) / 2 };
}

/** A length read off a part, or what such parts usually have, said to be so. */
function read(
  name: SheetDimensionName,
  part: ClubPart,
  path: string,
  { typical }: DimensionsInput,
): SheetDimension | undefined {
  const reading = partReading(part, path, typical);
  return reading && length(name, reading.value, reading.source);
}

/** What callipers read is never a typical figure: a tip is tried with its own bore. */
function calliper(name: SheetDimensionName, part: ClubPart, path: string): SheetDimension | undefined {
  const reading = writtenReading(part, path);
  return reading && plain(name, reading.value, reading.source);
}

function stepFigure(steps: readonly WorkStep[], step: string, figure: string): number | undefined {
  const value = steps.find((one) => one.step === step)?.data[figure];
  return typeof value === "number" ? value : undefined;
}
