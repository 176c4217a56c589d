import { doesNotFit, fits, type Outcome } from "../findings/outcome.ts";
import type { ClubType } from "../parts/part.ts";
import { defineRule } from "./rule.ts";

type Code = "made-for-other-clubs" | "usable-but-made-for-other-clubs";
type Suits = "wood" | "hybrid" | "iron" | "putter";

interface Facts {
  readonly suits: Suits;
  readonly clubType: ClubType;
}

/** Club types a shaft is made for, and those it is also put into with care; common practice, no source. */
const uses: Readonly<
  Record<Suits, { readonly made: readonly ClubType[]; readonly usable: readonly ClubType[] }>
> = {
  wood: { made: ["driver", "fairway"], usable: ["hybrid"] },
  hybrid: { made: ["hybrid"], usable: ["iron"] },
  iron: { made: ["iron", "wedge"], usable: ["hybrid"] },
  putter: { made: ["putter"], usable: [] },
};

/** Shafts are made for a kind of club: their length, mass and stiffness follow from it. */
export const shaftSuitsClubType = defineRule<Code>({
  id: "shaft-suits-club-type",
  intent:
    "A shaft has to be made for this kind of club, because its length, mass and stiffness follow from the kind.",
  strength: "must",
  grain: "interface",
  needs: { suits: "shaft.suits", clubType: "head.clubType" },
  source: {
    title:
      "common practice, no source; that hybrids are bored for wood and for iron shafts (0.335, 0.350 and 0.370 in): greenlanterngolf.com",
  },
  check: (facts) => judge(facts as Facts),
  say: {
    "made-for-other-clubs": ({ suits, clubType }, t) =>
      `${t.part("shaft")} is made for ${kinds[suits as Suits]} and ${t.part("head")} is ${named(clubType as ClubType)}`,
    "usable-but-made-for-other-clubs": ({ suits, clubType }, t) =>
      `${t.part("shaft")} is made for ${kinds[suits as Suits]} and ${t.part("head")} is ${named(clubType as ClubType)}, which is done but changes its length, weight and feel`,
  },
  hint: { "made-for-other-clubs": ({ clubType }) => `a shaft made for ${named(clubType as ClubType)}` },
  ask: {
    suits: "What is the shaft made for: woods, hybrids, irons or putters?",
    clubType: "Is the head a driver, a fairway wood, a hybrid, an iron, a wedge or a putter?",
  },
});

const kinds: Readonly<Record<Suits, string>> = {
  wood: "woods",
  hybrid: "hybrids",
  iron: "irons",
  putter: "putters",
};

function named(clubType: ClubType): string {
  if (clubType === "fairway") return "a fairway wood";
  return clubType === "iron" ? "an iron" : `a ${clubType}`;
}

function judge({ suits, clubType }: Facts): Outcome<Code> {
  const { made, usable } = uses[suits];
  if (made.includes(clubType)) return fits();
  if (usable.includes(clubType)) return fits("usable-but-made-for-other-clubs", { suits, clubType });
  return doesNotFit("made-for-other-clubs", ["suits", "clubType"], { suits, clubType });
}
