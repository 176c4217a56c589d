import type { Shaft } from "../parts/part.ts";
import type { TypicalRow } from "../parts/typical.ts";
import { aloneLengthTerms, type LengthTerm } from "./alone-length.ts";
import { bbgmTerms } from "./bbgm.ts";
import type { Build, ClubParts } from "./build.ts";
import { buildClub } from "./built-club.ts";
import { type ClubNumbers, type NumberKey, noNumbers } from "./club-numbers.ts";
import type { ClubShape } from "./club-shape.ts";
import type { BasisEntry } from "./estimate.ts";
import { type ClubPart, partReading, writtenReading } from "./part-reading.ts";

/** One uncertain figure of a club and where it was read. */
export interface ClubInput {
  readonly key: NumberKey;
  readonly part: string;
  readonly field: string;
  readonly source: BasisEntry["source"];
  readonly value: number;
  readonly plusMinus: number;
}

/** A figure nobody knows and for which there is no typical one. */
export interface Gap {
  readonly key: NumberKey;
  readonly part: string;
  readonly field: string;
  readonly reason: string;
}

/** Everything known of one club with a build: the figures, those of them that are uncertain, and those that are missing. */
export interface ClubFacts {
  readonly numbers: ClubNumbers;
  readonly inputs: readonly ClubInput[];
  readonly gaps: readonly Gap[];
  readonly shape: ClubShape;
}

/** Standard uncertainty of a cut made to a mark, half a division of a 1/16 in rule: common practice, no source. */
const cutPlusMinusIn = 0.03;
/** Of a mass put on with a bench scale, as for a measured mass: common practice, no source. */
const weighedPlusMinusG = 0.5;

/** Reads every figure an estimate needs from the parts, typical readings filling what nobody stated. */
export function clubFacts(parts: ClubParts, build: Build, typical: readonly TypicalRow[]): ClubFacts {
  const reader = new FactReader(typical);
  const aloneTerms = readLength(reader, parts);
  readHead(reader, parts);
  readHolder(reader, parts);
  const shaft = readShaft(reader, parts.shaft);
  readGrip(reader, parts);
  readBuild(reader, build);
  const shape = {
    aloneTerms,
    ...shaft,
    extended: false,
    cutTo: build.playingLengthIn === undefined ? "butt-trim" : "playing-length",
  } as const;
  const { numbers, inputs, gaps } = reader;
  return { numbers, inputs, gaps, shape: { ...shape, extended: isExtended(numbers, shape) } };
}

/** A butt within a hair of its mark is neither cut nor extended. */
const leastExtensionIn = 0.01;

function isExtended(numbers: ClubNumbers, shape: ClubShape): boolean {
  return buildClub(numbers, shape).buttTrimIn < -leastExtensionIn;
}

/** Collects figures as they are read. */
class FactReader {
  readonly numbers = noNumbers();
  readonly inputs: ClubInput[] = [];
  readonly gaps: Gap[] = [];
  readonly typical: readonly TypicalRow[];
  /** By field, since every field of a club is looked up once. */
  private readonly typicalByField = new Map<string, TypicalRow[]>();

  constructor(typical: readonly TypicalRow[]) {
    this.typical = typical;
    for (const row of typical) {
      const alike = this.typicalByField.get(row.field);
      if (alike === undefined) this.typicalByField.set(row.field, [row]);
      else alike.push(row);
    }
  }

  /** Reads a part's field into a figure; an unknown one becomes a gap. */
  read(key: NumberKey, part: ClubPart, field: string): void {
    const reading = partReading(part, field, this.typicalByField.get(field) ?? []);
    if (reading === undefined) this.miss(key, part, field);
    else this.take({ key, part: part.id, field, ...reading });
  }

  take({ key, part, field, source, value, plusMinus }: ClubInput): void {
    this.numbers[key] = value;
    if (plusMinus > 0) this.inputs.push({ key, part, field, source, value, plusMinus });
  }

  has(key: NumberKey): boolean {
    return this.numbers[key] !== 0;
  }

  miss(
    key: NumberKey,
    part: ClubPart,
    field: string,
    reason = "nobody has stated it and there is no typical value",
  ): void {
    this.numbers[key] = Number.NaN;
    this.gaps.push({ key, part: part.id, field, reason });
  }
}

/** No terms at all stand for a length nobody knows. */
function readLength(reader: FactReader, parts: ClubParts): readonly LengthTerm[] {
  const terms = aloneLengthTerms(parts, reader.typical);
  if (terms === undefined) {
    reader.miss("statedLengthIn", parts.shaft, "length.lengthIn");
    return [
      {
        key: "statedLengthIn",
        weight: 1,
        part: parts.shaft.id,
        field: "length.lengthIn",
        reading: { value: Number.NaN, plusMinus: 0, source: "typical" },
      },
    ];
  }
  for (const { key, part, field, reading } of terms) {
    // The cap of the grip in hand is read once, with the grip.
    if (key !== "capThicknessIn") reader.take({ key, part, field, ...reading });
  }
  return terms;
}

function readHead(reader: FactReader, { head }: ClubParts): void {
  reader.read("headMassG", head, "massG");
  reader.read("cgAlongAxisIn", head, "cgAlongAxisIn");
  reader.read("headOwnMoiKgCm2", head, "moiAboutCgKgCm2");
  reader.read("loftDeg", head, "loftDeg");
  reader.read("lieDeg", head, "lieDeg");
  reader.read("faceAngleDeg", head, "faceAngleDeg");
  reader.read("soleRadiusIn", head, "soleRadiusIn");
  reader.read("contactFromAxisIn", head, "contactFromAxisIn");
  reader.read("epoxyMassG", head, "epoxyMassG");
}

function readHolder(reader: FactReader, parts: ClubParts): void {
  const { head, adapter } = parts;
  const terms = bbgmTerms(parts, reader.typical);
  for (const { key, part, field, reading } of terms ?? []) reader.take({ key, part, field, ...reading });
  if (terms === undefined) missBbgm(reader, parts);
  if (adapter === undefined) {
    reader.read("holderDepthIn", head, "socket.depthIn");
    reader.read("ferruleMassG", head, "ferruleMassG");
    return;
  }
  reader.read("holderDepthIn", adapter, "bore.depthIn");
  reader.read("adapterMassG", adapter, "massG");
  reader.read("adapterCgAboveTipStopIn", adapter, "cgAboveTipStopIn");
  reader.read("tiltDeg", adapter, "tiltDeg");
}

function missBbgm(reader: FactReader, { head, adapter }: ClubParts): void {
  if (adapter !== undefined) reader.miss("bbgmIn", head, "socket.seatToGroundIn");
  else if (head.socket?.type === "receiver")
    reader.miss("bbgmIn", head, "socket", "the head takes an adapter and none was given");
  else reader.miss("bbgmIn", head, "socket.bbgmIn");
}

function readShaft(
  reader: FactReader,
  shaft: Shaft,
): Pick<ClubShape, "massRead" | "balanceRead" | "beamRead"> {
  const massRead = readShaftMass(reader, shaft);
  const balanceRead = writtenReading(shaft, "balanceFromTipIn") !== undefined;
  if (balanceRead) reader.read("balanceFromTipIn", shaft, "balanceFromTipIn");
  if (!balanceRead || massRead === "raw") reader.read("balanceFraction", shaft, "balanceFraction");
  reader.read("extensionMassG", shaft, "extensionMassG");
  return { massRead, balanceRead, beamRead: readFrequency(reader, shaft) };
}

/** How far today's mass may lie from a raw mass whose raw length is not known: one to three inches of shaft, from memory. */
const unknownTrimPlusMinusG = 3;
/** Standard uncertainty of a tip trim that nobody mentioned: from memory. */
const unknownTipTrimPlusMinusIn = 0.5;

function readShaftMass(reader: FactReader, shaft: Shaft): ClubShape["massRead"] {
  const raw = writtenReading(shaft, "rawMassG");
  if (raw === undefined || writtenReading(shaft, "massG") !== undefined) {
    reader.read("shaftMassG", shaft, "massG");
    return "now";
  }
  if (writtenReading(shaft, "rawLengthIn") === undefined) {
    const plusMinus = Math.hypot(raw.plusMinus, unknownTrimPlusMinusG);
    reader.take({ key: "shaftMassG", part: shaft.id, field: "rawMassG", ...raw, plusMinus });
    return "now";
  }
  reader.read("rawMassG", shaft, "rawMassG");
  if (!reader.has("rawLengthIn")) reader.read("rawLengthIn", shaft, "rawLengthIn");
  if (!reader.has("tipTrimmedIn")) readTipTrimmed(reader, shaft);
  return "raw";
}

function readTipTrimmed(reader: FactReader, shaft: Shaft): void {
  const unknown = { value: 0, plusMinus: unknownTipTrimPlusMinusIn, source: "typical" } as const;
  reader.take({
    key: "tipTrimmedIn",
    part: shaft.id,
    field: "tip.trimmedIn",
    ...(writtenReading(shaft, "tip.trimmedIn") ?? unknown),
  });
}

/** Whether the reading says its own free length. */
function readFrequency(reader: FactReader, shaft: Shaft): boolean {
  if (shaft.frequency === undefined) {
    reader.miss(
      "frequencyCpm",
      shaft,
      "frequency.cpm",
      "the shaft has no frequency reading to carry to this club",
    );
    return false;
  }
  reader.read("frequencyCpm", shaft, "frequency.cpm");
  reader.read("frequencyTipMassG", shaft, "frequency.tipMassG");
  const beamRead = shaft.frequency.beamLengthIn !== undefined;
  if (beamRead) reader.read("frequencyBeamIn", shaft, "frequency.beamLengthIn");
  else reader.read("frequencyClampIn", shaft, "frequency.clampIn");
  return beamRead;
}

function readGrip(reader: FactReader, { grip }: ClubParts): void {
  reader.read("gripMassG", grip, "massG");
  reader.read("gripLengthIn", grip, "lengthIn");
  reader.read("gripCgFromCapIn", grip, "cgFromCapIn");
  reader.read("capThicknessIn", grip, "capThicknessIn");
  reader.read("tapeMassG", grip, "tapeMassG");
}

function readBuild(reader: FactReader, build: Build): void {
  choose(reader, "tipTrimIn", build.tipTrimIn, cutPlusMinusIn);
  choose(reader, "buttTrimIn", build.buttTrimIn, cutPlusMinusIn);
  choose(reader, "extraHeadMassG", build.extraHeadMassG, weighedPlusMinusG);
  choose(reader, "counterweightG", build.counterweightG, weighedPlusMinusG);
  if (build.playingLengthIn === undefined) return;
  reader.take({ key: "chosenLengthIn", ...chosen("playingLengthIn", build.playingLengthIn, cutPlusMinusIn) });
}

/** Nothing chosen and a choice of nothing are both certain. */
function choose(
  reader: FactReader,
  key: keyof Build & NumberKey,
  value: number | undefined,
  plusMinus: number,
): void {
  if (value !== undefined && value !== 0) reader.take({ key, ...chosen(key, value, plusMinus) });
}

function chosen(field: string, value: number, plusMinus: number): Omit<ClubInput, "key"> {
  return { part: "build", field, source: "chosen", value, plusMinus };
}
