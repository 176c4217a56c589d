import type { Build, ClubParts } from "../measure/build.ts";
import { clubSummary } from "../measure/club-summary.ts";
import type { Estimates } from "../measure/estimate.ts";
import { estimateClub } from "../measure/estimates.ts";
import { type Skill, skills } from "../parts/goal.ts";
import type { Part } from "../parts/part.ts";
import type { Reference } from "../parts/reference.ts";
import type { Refusal } from "../parts/refusal.ts";
import type { Club, WorkStep } from "../resolve/result.ts";
import { titleOfClub, titleOfPart } from "../worth/titles.ts";
import type { InspectionRow } from "./inspection.ts";
import { type Blank, blanksOf } from "./measured-back.ts";
import type { Measurement } from "./measurement.ts";
import { type SafetyStop, safetyStops } from "./safety-stops.ts";
import { type SheetCheck, sheetChecks } from "./sheet-checks.ts";
import { type SheetDimension, sheetDimensions } from "./sheet-dimensions.ts";
import { sheetSteps } from "./sheet-steps.ts";

/** What a sheet is written from. `build` is carried out on `parts`, which are those of `club`. */
export interface SheetInput {
  /** The resolver's answer for these parts. */
  readonly club: Club;
  readonly parts: ClubParts;
  readonly build: Build;
  readonly reference: Reference;
  readonly inspection: readonly InspectionRow[];
  /** Every club that this bench has measured so far. */
  readonly measurements: readonly Measurement[];
}

/** A part to lay out, with what to look at before it is used; `note` is null where nobody wrote one. */
export interface SheetPart {
  readonly role: "head" | "adapter" | "shaft" | "grip";
  readonly id: string;
  readonly title: string;
  readonly note: string | null;
  readonly checks: readonly SheetCheck[];
}

/** Everything to take to the bench for one club, on one page. */
export interface BuildSheet {
  readonly club: string;
  readonly title: string;
  readonly verdict: Club["verdict"];
  readonly parts: readonly SheetPart[];
  readonly dimensions: readonly SheetDimension[];
  readonly steps: readonly WorkStep[];
  readonly minutes: number;
  /** The longest wait for glue or grip tape; the club is not swung before it is over. */
  readonly cureMinutes: number;
  readonly skill: Skill;
  readonly blanks: readonly Blank[];
  readonly estimates: Estimates;
  readonly build: Build;
}

/** The sheet, or what stands against it: faults of safety, else a build that nobody could make. */
export type SheetAnswer =
  | { readonly ok: true; readonly sheet: BuildSheet }
  | { readonly ok: false; readonly stops: readonly SafetyStop[]; readonly refusals: readonly Refusal[] };

/**
 * The build sheet of one club with a chosen build. A part with a standing fault of safety stops it, and so does a build that
 * nobody could make.
 */
export function buildSheet(input: SheetInput): SheetAnswer {
  const { parts, build, reference } = input;
  const stops = safetyStops(partsOf(parts));
  if (stops.length > 0) return { ok: false, stops, refusals: [] };
  const estimated = estimateClub(parts, build, reference);
  if (!estimated.ok) return { ok: false, stops: [], refusals: estimated.refusals };
  return { ok: true, sheet: sheetOf(input, estimated.estimates) };
}

const roles = ["head", "adapter", "shaft", "grip"] as const;

function partsOf(parts: ClubParts): readonly Part[] {
  return roles.flatMap((role): Part[] => (parts[role] ? [parts[role]] : []));
}

function sheetOf(input: SheetInput, estimates: Estimates): BuildSheet {
  const { club, parts, build, reference, inspection, measurements } = input;
  const summary = clubSummary(parts, build, reference);
  const steps = sheetSteps(club, parts, build, summary.buttTrimIn ?? 0, reference);
  const { typical } = reference;
  return {
    club: club.id,
    title: titleOfClub(parts.head, parts.shaft),
    verdict: club.verdict,
    parts: roles.flatMap((role) => sheetPart(role, parts[role], inspection)),
    dimensions: sheetDimensions({ parts, build, summary, estimates, steps, typical }),
    steps,
    minutes: steps.reduce((sum, { minutes }) => sum + minutes, 0),
    cureMinutes: Math.max(0, ...steps.map(({ waitMinutes }) => waitMinutes)),
    skill: skills.findLast((skill) => steps.some((step) => step.skill === skill)) ?? "screw",
    blanks: blanksOf(estimates, parts.head.clubType, measurements),
    estimates,
    build,
  };
}

function sheetPart(
  role: SheetPart["role"],
  part: Part | undefined,
  rows: readonly InspectionRow[],
): SheetPart[] {
  if (!part) return [];
  const { id, note = null } = part;
  return [{ role, id, title: titleOfPart(part), note, checks: sheetChecks(part, rows) }];
}
