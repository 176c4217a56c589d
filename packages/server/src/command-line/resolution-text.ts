import {
  type Club,
  type Estimate,
  type Part,
  type Resolution,
  type Skill,
  titleOfClub,
  type Verdict,
  type WorkStep,
} from "@ferrule/core";
import { bullets } from "./bullets.ts";
import { columns } from "./columns.ts";
import { wrapped } from "./wrapped.ts";

const verdictWords: Readonly<Record<Verdict, string>> = {
  fits: "fits",
  "fits-with-work": "fits with work",
  unsettled: "unsettled",
  "does-not-fit": "does not fit",
};

const skillWords: Readonly<Record<Skill, string>> = {
  screw: "a wrench",
  regrip: "changing grips",
  bond: "gluing shafts",
  machine: "reaming and turning",
};

const shownMost = 20;

/** What a bench comes to: its clubs, the refusals with what proves them, what is missing and what to ask. */
export function resolutionText(resolution: Resolution, parts: readonly Part[], width: number): string {
  const { clubs, nearMisses, wants, questions, counts, skill, skillOpens, notices } = resolution;
  const byId = new Map(parts.map((part) => [part.id, part]));
  const opens = skillOpens.filter(({ moreClubs }) => moreClubs > 0);
  return [
    `${counts.clubs} clubs with ${skillWords[skill]} at the most${counts.clubs > clubs.length ? `, ${clubs.length} shown` : ""}`,
    ...opens.map((one) => `  ${one.moreClubs} more with ${skillWords[one.skill]}`),
    ...(clubs.length === 0 ? [] : ["", clubColumns(clubs, byId, width)]),
    ...bullets("At the bench:", cautionsOf(clubs), width),
    ...some("What does not go together:", counts.nearMisses, nearMisses, ({ proof }) =>
      wrapped(proof.text, { width, first: "  - ", rest: "    " }),
    ),
    ...some("Missing:", counts.wants, wants, ({ text, count }) =>
      wrapped(`${text} (for ${count} ${count === 1 ? "club" : "clubs"})`, {
        width,
        first: "  - ",
        rest: "    ",
      }),
    ),
    ...some("To find out:", counts.questions, questions, ({ part, text, clubs: waiting }) =>
      wrapped(`${part}: ${text} (${waiting} ${waiting === 1 ? "club waits" : "clubs wait"})`, {
        width,
        first: "  - ",
        rest: "    ",
      }),
    ),
    ...bullets("Noticed:", notices, width),
  ].join("\n");
}

function clubColumns(clubs: readonly Club[], byId: ReadonlyMap<string, Part>, width: number): string {
  const header = [
    "VERDICT",
    "HEAD",
    "ADAPTER",
    "SHAFT",
    "GRIP",
    "LENGTH in",
    "SWING WEIGHT",
    "MASS g",
    "MINUTES",
    "CLUB",
    "WORK",
  ];
  const rows = clubs.map((club) => [
    verdictWords[club.verdict],
    club.head,
    club.adapter ?? "-",
    club.shaft,
    club.grip,
    figure(club.estimates.playingLengthIn, 2),
    club.estimates.swingWeight?.label ?? "?",
    figure(club.estimates.massG, 0),
    String(Math.round(club.minutes)),
    clubTitle(club, byId),
    stepsText(club.work),
  ]);
  return columns({ header, rows, figures: [5, 6, 7, 8], indent: 2, width });
}

/** Half of the interval is as much as the last decimal can bear. */
function figure(estimate: Estimate | null, decimals: number): string {
  if (estimate === null) return "?";
  const half = (estimate.high - estimate.low) / 2;
  return `${estimate.value.toFixed(decimals)} ±${half.toFixed(decimals)}`;
}

function clubTitle({ head, shaft }: Pick<Club, "head" | "shaft">, byId: ReadonlyMap<string, Part>): string {
  const [one, other] = [byId.get(head), byId.get(shaft)];
  return one && other ? titleOfClub(one, other) : `${head} with ${shaft}`;
}

/** The names of steps at the bench, in order. */
export const stepsText = (work: readonly WorkStep[]) => work.map(({ step }) => step).join(", ");

/** Every caution of the work on clubs, each once. */
export function cautionsOf(clubs: readonly { readonly work: readonly WorkStep[] }[]): Set<string> {
  return new Set(
    clubs.flatMap(({ work }) => work.flatMap(({ cautions }) => cautions.map(({ text }) => text))),
  );
}

/** The first few under a title, and how many there are besides. */
function some<T>(
  title: string,
  count: number,
  things: readonly T[],
  lines: (thing: T) => string[],
): string[] {
  if (things.length === 0) return [];
  const shown = things.slice(0, shownMost);
  const more = count - shown.length;
  return [
    "",
    title,
    ...shown.flatMap(lines),
    ...(more > 0 ? [`  and ${more} more; --json has ${things.length} of them`] : []),
  ];
}
