import type { Grip } from "../parts/part.ts";
import type { Reference } from "../parts/reference.ts";
import type { Refusal } from "../parts/refusal.ts";
import { aloneLength } from "./alone-length.ts";
import { type Build, buildSchema, type ClubParts } from "./build.ts";
import { type BuiltClub, buildClub } from "./built-club.ts";
import { clubFacts } from "./club-facts.ts";
import type { Estimates } from "./estimate.ts";
import { estimateClub } from "./estimates.ts";
import { massChanges } from "./mass-changes.ts";
import { swingWeightQuantity } from "./swing-weight-of-club.ts";

/** Length in inches, swing weight in points (D0 is 30). What is left out may come to anything. */
export interface TuneTarget {
  readonly playingLengthIn?: number;
  readonly swingWeightPoints?: number;
}

/** What may be changed besides the build itself. */
export interface TuneOptions {
  /** Grips that could go on instead of the one the club has. */
  readonly grips?: readonly Grip[];
}

/** A figure before and after; `null` where it could not be estimated. */
export interface TuneEffect {
  readonly before: number;
  readonly after: number;
  readonly change: number;
}

/** One way to reach the target. */
export interface TuneSolution {
  readonly build: Build;
  /** The id of the grip it takes. */
  readonly grip: string;
  /** See `tune`. */
  readonly change: number;
  readonly effects: Readonly<Record<EffectName, TuneEffect | null>>;
  readonly estimates: Estimates;
}

const effectNames = [
  "playingLengthIn",
  "swingWeightPoints",
  "massG",
  "balanceFromButtIn",
  "moiKgCm2",
  "frequencyCpm",
] as const;
/** A figure that every solution tells before and after, in the unit of its name. */
export type EffectName = (typeof effectNames)[number];

/** The club as it is and the ways from there, perhaps none; or why its build is refused. */
export type Tuned =
  | { readonly ok: true; readonly before: Estimates; readonly solutions: readonly TuneSolution[] }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** How near the target counts as reached: what a beam scale reads to and a rule shows (common practice, no source). */
export const tuneTolerance = { swingWeightPoints: 0.5, lengthIn: 1 / 32 } as const;

/** Half an inch of length is three points and two grams of head one (allbusinesspublishing.com t44071). */
const pointsPerInch = 6;
const pointsPerGram = 0.5;
/** Another grip is work, whatever it weighs: counted as one point, no source. */
const gripChangePoints = 1;

interface Candidate {
  readonly parts: ClubParts;
  readonly build: Build;
  readonly change: number;
}

/**
 * Ways to bring a club to a playing length, a swing weight or both: a butt trim or an extension, added head mass, another grip
 * and a counterweight, the smallest change first. A change is counted in the trade's points: six for every inch of shaft cut
 * or added, half a point for every gram put on or taken off, wherever it sits, and one for another grip. Every way is estimated again and kept only if it is within
 * half a point and 1/32 in of the target and its figures are ones a build may have. Refuses what `estimateClub` refuses; no way at all is an empty list.
 */
export function tune(
  parts: ClubParts,
  build: Build,
  target: TuneTarget,
  options: TuneOptions,
  reference: Pick<Reference, "typical">,
): Tuned {
  const before = estimateClub(parts, build, reference);
  if (!before.ok) return before;
  const others =
    target.swingWeightPoints === undefined
      ? []
      : (options.grips ?? []).filter(({ id }) => id !== parts.grip.id);
  const clubs = [parts, ...others.map((grip) => regripped(parts, grip, reference))];
  const startTrimIn = clubAt(parts, build, reference).buttTrimIn;
  const solutions = clubs
    .flatMap((club) => candidates(club, { start: parts, build, startTrimIn, target, reference }))
    .flatMap((candidate) => verified(candidate, before.estimates, target, reference))
    .sort((one, other) => one.change - other.change);
  return { ok: true, before: before.estimates, solutions };
}

interface Task {
  readonly start: ClubParts;
  readonly build: Build;
  readonly startTrimIn: number;
  readonly target: TuneTarget;
  readonly reference: Pick<Reference, "typical">;
}

function clubAt(parts: ClubParts, build: Build, reference: Pick<Reference, "typical">): BuiltClub {
  const { numbers, shape } = clubFacts(parts, build, reference.typical);
  return buildClub(numbers, shape);
}

/** The shaft's own length is kept as it was read with the old grip, whose cap may be in that reading. */
function regripped(parts: ClubParts, grip: Grip, { typical }: Pick<Reference, "typical">): ClubParts {
  const alone = aloneLength(parts, typical);
  if (alone === undefined) return { ...parts, grip, gripped: false };
  return {
    ...parts,
    grip,
    gripped: false,
    shaft: { ...parts.shaft, length: { lengthIn: alone, basis: "shaft-alone" } },
  };
}

function candidates(parts: ClubParts, task: Task): readonly Candidate[] {
  return trims(parts, task).flatMap((buttTrimIn) => {
    const build = withTrim(task.build, buttTrimIn);
    const club = clubAt(parts, build, task.reference);
    const { swingWeightPoints } = task.target;
    const { extraHeadMassG, counterweightG } = club.numbers;
    const ways =
      swingWeightPoints === undefined
        ? [{ extraHeadMassG, counterweightG }]
        : massChanges(club, swingWeightPoints, tuneTolerance.swingWeightPoints);
    return ways.map((masses) => candidate(parts, { ...build, ...masses }, club, task));
  });
}

function withTrim({ playingLengthIn: _replaced, ...build }: Build, buttTrimIn: number): Build {
  return { ...build, buttTrimIn };
}

function candidate(
  parts: ClubParts,
  build: Build,
  { numbers }: BuiltClub,
  { start, startTrimIn }: Task,
): Candidate {
  const trimmedIn = Math.abs((build.buttTrimIn ?? 0) - startTrimIn);
  const addedG =
    Math.abs((build.extraHeadMassG ?? 0) - numbers.extraHeadMassG) +
    Math.abs((build.counterweightG ?? 0) - numbers.counterweightG);
  const gripPoints = parts.grip.id === start.grip.id ? 0 : gripChangePoints;
  return { parts, build, change: pointsPerInch * trimmedIn + pointsPerGram * addedG + gripPoints };
}

/** The butt trims to try: the one that gives the length; without a length to reach, none, and the one that alone does it. */
function trims(parts: ClubParts, task: Task): readonly number[] {
  const { target, startTrimIn, reference } = task;
  const asItIs = clubAt(parts, withTrim(task.build, startTrimIn), reference);
  const { playingLengthIn, swingWeightPoints } = target;
  if (playingLengthIn !== undefined) {
    const longIn = asItIs.playingLengthIn - playingLengthIn;
    return Math.abs(longIn) <= tuneTolerance.lengthIn ? [startTrimIn] : [startTrimIn + longIn];
  }
  const byTrim = swingWeightPoints === undefined ? undefined : trimForPoints(parts, task, swingWeightPoints);
  return byTrim === undefined ? [startTrimIn] : [startTrimIn, byTrim];
}

const mostSecantSteps = 20;

/** The butt trim at which the swing weight is the target's, by the secant rule; `undefined` where there is none to find. */
function trimForPoints(
  parts: ClubParts,
  { build, startTrimIn, reference }: Task,
  targetPoints: number,
): number | undefined {
  const over = (trimIn: number): number =>
    swingWeightQuantity.of(clubAt(parts, withTrim(build, trimIn), reference)) - targetPoints;
  let [lastIn, trimIn] = [startTrimIn, startTrimIn + 0.5];
  let [lastOver, nowOver] = [over(lastIn), over(trimIn)];
  for (let step = 0; step < mostSecantSteps && Math.abs(nowOver) > 1e-6; step++) {
    const nextIn = trimIn - (nowOver * (trimIn - lastIn)) / (nowOver - lastOver);
    if (!Number.isFinite(nextIn)) return undefined;
    [lastIn, lastOver, trimIn] = [trimIn, nowOver, nextIn];
    nowOver = over(trimIn);
  }
  return Math.abs(nowOver) <= tuneTolerance.swingWeightPoints ? trimIn : undefined;
}

function verified(
  { parts, build, change }: Candidate,
  before: Estimates,
  target: TuneTarget,
  reference: Pick<Reference, "typical">,
): readonly TuneSolution[] {
  if (!buildSchema.safeParse(build).success) return [];
  const after = estimateClub(parts, build, reference);
  if (!after.ok || !reaches(after.estimates, target)) return [];
  const { estimates } = after;
  const effects = Object.fromEntries(
    effectNames.map((name) => [name, effect(figure(before, name), figure(estimates, name))]),
  );
  return [{ build, grip: parts.grip.id, change, effects: effects as TuneSolution["effects"], estimates }];
}

/** A rounding error beyond the tolerance is still within it. */
const slack = 1e-9;

function reaches(estimates: Estimates, { playingLengthIn, swingWeightPoints }: TuneTarget): boolean {
  return (
    isNear(estimates.playingLengthIn?.value, playingLengthIn, tuneTolerance.lengthIn) &&
    isNear(estimates.swingWeight?.points, swingWeightPoints, tuneTolerance.swingWeightPoints)
  );
}

function isNear(value: number | undefined, wanted: number | undefined, tolerance: number): boolean {
  return wanted === undefined || (value !== undefined && Math.abs(value - wanted) <= tolerance + slack);
}

function figure(estimates: Estimates, name: EffectName): number | undefined {
  return name === "swingWeightPoints" ? estimates.swingWeight?.points : estimates[name]?.value;
}

function effect(before: number | undefined, after: number | undefined): TuneEffect | null {
  return before === undefined || after === undefined ? null : { before, after, change: after - before };
}
