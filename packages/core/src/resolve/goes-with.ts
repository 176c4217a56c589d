import type { Part } from "../parts/part.ts";
import type { Club, NearMiss, Question, Resolution, Want } from "./result.ts";

/** What one part goes with, and what it does not go with. */
export interface GoesWith {
  readonly part: Part;
  readonly clubs: readonly Club[];
  readonly nearMisses: readonly NearMiss[];
  readonly wants: readonly Want[];
  readonly questions: readonly Question[];
  readonly counts: Resolution["counts"];
}

/** The part of an answer that names this one, at most `limit` of each; the counts cover all that the answer held. */
export function goesWith(
  part: Part,
  { clubs, nearMisses, wants, questions }: Pick<Resolution, "clubs" | "nearMisses" | "wants" | "questions">,
  limit: number,
): GoesWith {
  const names = (one: Club | NearMiss) =>
    one.head === part.id || one.adapter === part.id || one.shaft === part.id;
  const own = {
    clubs: clubs.filter((club) => names(club) || club.grip === part.id),
    nearMisses: nearMisses.filter(names),
    wants: wants.filter(({ completes }) =>
      completes.some(({ head, shaft }) => head === part.id || shaft === part.id),
    ),
    questions: questions.filter((question) => question.part === part.id),
  };
  return {
    part,
    clubs: own.clubs.slice(0, limit),
    nearMisses: own.nearMisses.slice(0, limit),
    wants: own.wants.slice(0, limit),
    questions: own.questions.slice(0, limit),
    counts: {
      clubs: own.clubs.length,
      nearMisses: own.nearMisses.length,
      wants: own.wants.length,
      questions: own.questions.length,
    },
  };
}
