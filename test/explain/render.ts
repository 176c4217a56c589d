import type { Club, Finding, Resolution, WorkStep } from "@ferrule/core";

/** Everything that an answer says in words, in the order in which it says it. */
export function rendered({ clubs, nearMisses, wants, questions, skillOpens }: Resolution): string {
  return [
    ...clubs.flatMap(clubLines),
    ...nearMisses.flatMap(({ head, shaft, proof }) => ["", `NEAR MISS ${head} ${shaft}`, `  ${proof.text}`]),
    ...titled(
      "WANTED",
      wants.map(({ text, count }) => `${text} (completes ${count})`),
    ),
    ...titled(
      "QUESTIONS",
      questions.map(({ part, field, text }) => `${part} ${field}: ${text}`),
    ),
    ...titled(
      "MORE CLUBS BY SKILL",
      skillOpens
        .filter(({ moreClubs }) => moreClubs > 0)
        .map(({ skill, moreClubs }) => `${skill}: ${moreClubs}`),
    ),
  ].join("\n");
}

function titled(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ["", title, ...lines.map((line) => `  ${line}`)];
}

function clubLines({ id, verdict, minutes, skill, findings, work }: Club): string[] {
  const effort = work.length === 0 ? "" : `, ${minutes} minutes, skill ${skill}`;
  return ["", `CLUB ${id}: ${verdict}${effort}`, ...findings.map(findingLine), ...work.map(workLine)];
}

function findingLine({ rule, verdict, text, hint }: Finding): string {
  return `  [${rule}: ${verdict}] ${text}${hint ? ` → ${hint}` : ""}`;
}

function workLine({ text }: WorkStep, place: number): string {
  return `  ${place + 1}. ${text}`;
}
