import {
  type Build,
  type Club,
  type ClubParts,
  clubSummary,
  type Goal,
  type Joint,
  type Part,
} from "@ferrule/core";
import { unsold } from "../bench/unsold.ts";
import { done, type Outcome, problem } from "../errors.ts";
import type { SheetTools } from "./sheet-tools.ts";
import { unsafeProblem } from "./unsafe-problem.ts";

/** A club of the bench with its parts, at the length that a build comes to. */
export interface FoundClub {
  readonly club: Club;
  readonly parts: ClubParts;
  readonly build: Build;
}

/** As many as core returns for one head. */
const widest = 5000;

type FindTools = Pick<SheetTools, "bench" | "answers" | "reference">;

/** The club of this name as the bench answers it now; a standing fault of safety is told before anything else. */
export function findClub(tools: FindTools, id: string, asked: Build): Outcome<FoundClub> {
  const { parts, joints, goal } = unsold(tools.bench.view());
  const named = parts.filter((part) => id.split("+").includes(part.id));
  const unsafe = unsafeProblem(named);
  if (unsafe) return unsafe;
  const club = answeredClub(tools, parts, goal, id);
  if (!club) return goneProblem(id);
  const clubParts = partsOfClub(club, parts, joints);
  const playingLengthIn = wantedLength(tools, clubParts, asked, goal);
  // What is wanted anyway has been answered already.
  const settled =
    playingLengthIn === goalLength(goal, clubParts)
      ? club
      : answeredClub(tools, parts, goalAt(goal, clubParts, playingLengthIn), id);
  if (!settled) return lengthProblem(playingLengthIn);
  const { buttTrimIn: _trim, ...rest } = asked;
  return done({
    club: settled,
    parts: clubParts,
    build: playingLengthIn === undefined ? rest : { ...rest, playingLengthIn },
  });
}

function answeredClub(
  { answers }: FindTools,
  parts: readonly Part[],
  goal: Goal,
  id: string,
): Club | undefined {
  const heads = parts.filter((part) => part.kind === "head" && id.startsWith(`${part.id}+`));
  for (const head of heads) {
    const answer = answers.resolve({ ...goal, limit: widest }, head.id);
    const club = answer.ok ? answer.value.clubs.find((one) => one.id === id) : undefined;
    if (club) return club;
  }
  return undefined;
}

function goneProblem(id: string) {
  return problem(
    "not-found",
    `The club "${id}" is not among those that the bench makes within the skill allowed`,
  );
}

function lengthProblem(playingLengthIn: number | undefined) {
  return problem("bad-request", "This club cannot be built so", [
    {
      field: "playingLengthIn",
      got: String(playingLengthIn),
      expected: "a length that the rules leave for these parts and the skill allowed",
    },
  ]);
}

function partsOfClub(
  { head, adapter, shaft, grip }: Club,
  parts: readonly Part[],
  joints: readonly Joint[],
): ClubParts {
  const part = (id: string) => parts.find((one) => one.id === id);
  const joined = (type: Joint["type"], a: string, b: string) =>
    joints.some((joint) => joint.type === type && joint.parts.includes(a) && joint.parts.includes(b));
  return {
    head: part(head) as ClubParts["head"],
    ...(adapter === null ? {} : { adapter: part(adapter) as NonNullable<ClubParts["adapter"]> }),
    shaft: part(shaft) as ClubParts["shaft"],
    grip: part(grip) as ClubParts["grip"],
    gripped: joined("gripped", shaft, grip),
    bonded: joined("bonded", shaft, adapter ?? head),
  };
}

/** The length asked for, or what a trim asked for comes to, or what the bench's goal wants of such clubs where it can be. */
function wantedLength(
  { reference }: FindTools,
  parts: ClubParts,
  asked: Build,
  goal: Goal,
): number | undefined {
  if (asked.playingLengthIn !== undefined) return asked.playingLengthIn;
  if (asked.buttTrimIn === 0) return undefined;
  if (asked.buttTrimIn !== undefined)
    return clubSummary(parts, asked, reference).playingLengthIn ?? undefined;
  return goalLength(goal, parts);
}

function goalLength(goal: Goal, { head: { clubType } }: ClubParts): number | undefined {
  return (clubType && goal.targets?.[clubType]?.playingLengthIn) ?? goal.playingLengthIn;
}

/** The goal with this length wanted of such a club, or none. */
function goalAt(goal: Goal, { head }: ClubParts, playingLengthIn: number | undefined): Goal {
  const { playingLengthIn: _all, targets = {}, ...rest } = goal;
  const { clubType } = head;
  if (!clubType) return { ...rest, targets, ...(playingLengthIn === undefined ? {} : { playingLengthIn }) };
  const { playingLengthIn: _own, ...target } = targets[clubType] ?? {};
  const own = playingLengthIn === undefined ? target : { ...target, playingLengthIn };
  return { ...rest, targets: { ...targets, [clubType]: own } };
}
