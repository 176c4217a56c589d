import type { Finding } from "@ferrule/core";
import type { JointFacts } from "./joint-facts.ts";

/** Where in the joint something is in the way: at the mouth, along the wall, in the gap, at the bottom, or at the seat. */
export type ClashPlace = "mouth" | "wall" | "gap" | "bottom" | "seat";

export interface Clash {
  readonly place: ClashPlace;
  /** The finding's own clause. */
  readonly text: string;
}

/** By the code of a refusal, where it is to be seen. What is not here is not at the joint. */
const places: Readonly<Record<string, ClashPlace>> = {
  "tip-too-wide": "mouth",
  "adapter-is-not-reamed": "mouth",
  "graphite-must-not-be-sanded": "mouth",
  "wall-too-thin": "wall",
  "bore-too-wide": "gap",
  "section-too-short": "mouth",
  "taper-tip-trimmed": "mouth",
  "too-shallow": "bottom",
  "taper-tip-in-parallel-bore": "mouth",
  "parallel-tip-in-taper-bore": "bottom",
  "other-family": "seat",
  "claimed-not-to-fit": "seat",
  "adapter-other-hand": "seat",
};

/** The joint as the reaming that was thought of would leave it, where it is refused for the wall that would be left. */
export function asReamed(facts: JointFacts, findings: readonly Pick<Finding, "code" | "data">[]): JointFacts {
  const wallIn = findings.find(({ code }) => code === "wall-too-thin")?.data["wallIn"];
  if (typeof wallIn !== "number" || facts.outsideIn === undefined) return facts;
  return { ...facts, reamedToIn: facts.outsideIn - 2 * wallIn };
}

/** The refusals of these findings that are to be seen in the joint, each once. */
export function jointClashes(
  findings: readonly Pick<Finding, "verdict" | "code" | "text">[],
): readonly Clash[] {
  return findings.flatMap(({ verdict, code, text }) => {
    const place = places[code];
    return verdict === "does-not-fit" && place ? [{ place, text }] : [];
  });
}
