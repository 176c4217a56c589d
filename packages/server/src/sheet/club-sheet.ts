import {
  type Build,
  type BuildSheet,
  buildSheet,
  type Comparison,
  comparisonsOf,
  type Measurement,
} from "@ferrule/core";
import { done, type Outcome, problem } from "../errors.ts";
import { type FoundClub, findClub } from "./find-club.ts";
import type { SheetTools } from "./sheet-tools.ts";
import { stopRefusal } from "./unsafe-problem.ts";

/** A club that was measured, with estimate against measured. */
export interface Compared {
  readonly measurement: Measurement;
  readonly comparisons: readonly Comparison[];
}

export interface ClubSheet {
  readonly sheet: BuildSheet;
  /** What was measured of exactly this club before, the last first. */
  readonly measured: readonly Compared[];
}

/** The build sheet of a club of the bench, with what was measured of it before. */
export function clubSheet(tools: SheetTools, id: string, asked: Build): Outcome<ClubSheet> {
  const found = findClub(tools, id, asked);
  if (!found.ok) return found;
  const answer = sheetOfClub(tools, found.value);
  if (!answer.ok) return answer;
  const own = measurementsOf(tools).filter(({ club }) => club === id);
  return done({ sheet: answer.value, measured: own.toReversed().map(compared) });
}

export function sheetOfClub(tools: SheetTools, { club, parts, build }: FoundClub): Outcome<BuildSheet> {
  const { reference } = tools;
  const measurements = measurementsOf(tools);
  const input = { club, parts, build, reference, inspection: reference.inspection, measurements };
  const answer = buildSheet(input);
  if (answer.ok) return done(answer.sheet);
  if (answer.stops.length > 0) return problem("unsafe", undefined, answer.stops.map(stopRefusal));
  return problem("bad-request", "This club cannot be built so", answer.refusals);
}

export const compared = (measurement: Measurement): Compared => ({
  measurement,
  comparisons: comparisonsOf(measurement),
});

function measurementsOf({ tables }: SheetTools): readonly Measurement[] {
  return tables.measurements.all().map(({ value }) => value);
}
