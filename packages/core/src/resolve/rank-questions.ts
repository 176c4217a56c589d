import { questionKey } from "./open-questions.ts";
import type { Question } from "./result.ts";

/**
 * Every open question once, with the clubs that wait for its answer; those that an answer settles alone count first, for
 * a club with two open questions is not settled by one answer.
 */
export function rankQuestions(clubs: readonly { readonly questions: readonly Question[] }[]): Question[] {
  const found = new Map<string, { question: Question; alone: number; waiting: number }>();
  for (const { questions } of clubs) {
    for (const question of questions) {
      const key = questionKey(question);
      const entry = found.get(key) ?? { question, alone: 0, waiting: 0 };
      entry.waiting += 1;
      if (questions.length === 1) entry.alone += 1;
      found.set(key, entry);
    }
  }
  return [...found.entries()]
    .sort(([keyA, a], [keyB, b]) => b.alone - a.alone || b.waiting - a.waiting || (keyA < keyB ? -1 : 1))
    .map(([, { question, waiting, alone }]) => ({ ...question, clubs: waiting, settles: alone }));
}
