import { doesNotFit, fits, type Outcome, unsettled } from "../findings/outcome.ts";
import { smallestRefusal } from "../findings/smallest-refusal.ts";
import { type Claim, evidenceRanks } from "../parts/claim.ts";
import { type ClubType, clubTypes, type Hand } from "../parts/part.ts";
import { defineRule } from "./rule.ts";

type Code =
  | "claimed-to-fit"
  | "only-seller-says-it-fits"
  | "disputed"
  | "claim-depends-on-hand"
  | "claim-depends-on-club-type"
  | "only-seller-says-it-does-not-fit"
  | "claimed-not-to-fit"
  | "other-family";

interface Facts {
  readonly receiverFamily: string;
  readonly adapterFamily: string;
  readonly hand?: Hand;
  readonly clubType?: ClubType;
}

/** A receiver takes adapters of its own family; anything else rests on what people have tried or said. */
export const receiverTakesAdapter = defineRule<Code>({
  id: "receiver-takes-adapter",
  intent:
    "A receiver takes adapters of its own family, because the interface is the maker's own; across families only a fit claim counts, the best evidence first.",
  strength: "must",
  grain: "interface",
  needs: { receiverFamily: "head.socket.family", adapterFamily: "adapter.family" },
  uses: { hand: "head.hand", clubType: "head.clubType" },
  readsClaims: true,
  source: { title: "common practice, no source" },
  check: ({ receiverFamily, adapterFamily, hand, clubType }, claims) =>
    smallestRefusal(
      (facts: Facts) => judge(facts, claims),
      { receiverFamily, adapterFamily, hand, clubType },
      ["receiverFamily", "adapterFamily"],
    ),
  say: {
    "claimed-to-fit": (d) =>
      `${evidenceWords[String(d.evidence)]} that family ${d.adapterFamily} fits a receiver of family ${d.receiverFamily}`,
    "only-seller-says-it-fits": (d) =>
      `only a seller says that family ${d.adapterFamily} fits a receiver of family ${d.receiverFamily}, and nobody has tried it`,
    "only-seller-says-it-does-not-fit": (d) =>
      `only a seller says that family ${d.adapterFamily} does not fit a receiver of family ${d.receiverFamily}, and nobody has tried it`,
    disputed: (d) =>
      `people disagree, on equally good evidence, whether family ${d.adapterFamily} fits a receiver of family ${d.receiverFamily}`,
    "claim-depends-on-hand": (d, t) =>
      `whether family ${d.adapterFamily} fits a receiver of family ${d.receiverFamily} depends on the hand of ${t.part("head")}, which nobody has said`,
    "claim-depends-on-club-type": (d, t) =>
      `whether family ${d.adapterFamily} fits a receiver of family ${d.receiverFamily} depends on what kind of club ${t.part("head")} is, which nobody has said`,
    "claimed-not-to-fit": (d) =>
      `${evidenceWords[String(d.evidence)]} that family ${d.adapterFamily} does not fit a receiver of family ${d.receiverFamily}`,
    "other-family": (d, t) =>
      `${t.part("head")} takes adapters of family ${d.receiverFamily}, ${t.part("adapter")} is of family ${d.adapterFamily}, and no fit claim says that the two fit`,
  },
  hint: {
    "other-family": (d) =>
      `an adapter of family ${d.receiverFamily}, or the word of somebody who has tried the two and found that they fit`,
    "claimed-not-to-fit": (d) => `an adapter of family ${d.receiverFamily} that is not claimed to fail here`,
  },
  ask: {
    receiverFamily:
      "Which family of adapter does the head take? It is often engraved beside the screw, or named in the maker's list.",
    adapterFamily: "Which family is the adapter of? Look for the name or code on its collar.",
    hand: "Is the head right-handed or left-handed?",
    clubType: "Is the head a driver, a fairway wood, a hybrid, an iron, a wedge or a putter?",
    tried:
      "Has anybody tried this adapter in this receiver, or does the maker say that it fits? Try it by hand, without force.",
    disputed:
      "Who is right about this pair? Try the adapter in the receiver by hand, without force, and record what you find.",
  },
});

const evidenceWords: Readonly<Record<string, string>> = {
  tried: "somebody who tried it says",
  "maker-stated": "the maker states",
  "seen-assembled": "somebody who saw the two assembled says",
  "seller-said": "a seller says",
};

/** Where the hand or the kind of club is unknown, every possibility is judged; only what they all come to is an answer. */
function judge(facts: Facts, claims: readonly Claim[]): Outcome<Code> {
  const joining = claims.filter(
    (claim) => claim.receiver === facts.receiverFamily && claim.adapter === facts.adapterFamily,
  );
  const hands: readonly Hand[] = facts.hand ? [facts.hand] : ["right", "left"];
  const types = facts.clubType ? [facts.clubType] : clubTypes;
  const outcomes = hands.map((hand) =>
    types.map((clubType) => judgeKnown(facts, joining.filter(concerns(hand, clubType)))),
  );
  const [first = judgeKnown(facts, [])] = outcomes.flat();
  if (outcomes.flat().every(({ code }) => code === first.code)) return first;
  const families = { receiverFamily: facts.receiverFamily, adapterFamily: facts.adapterFamily };
  if (outcomes.flat().every(({ verdict }) => verdict === "does-not-fit")) {
    return doesNotFit("claimed-not-to-fit", [], { ...families, evidence: evidenceOf(joining) });
  }
  if (outcomes.every((row) => row.every(({ code }) => code === row[0]?.code))) {
    return unsettled("claim-depends-on-hand", "hand", families);
  }
  return unsettled("claim-depends-on-club-type", "clubType", families);
}

function concerns(hand: Hand, clubType: ClubType): (claim: Claim) => boolean {
  return (claim) => (claim.hand ?? hand) === hand && (claim.clubType ?? clubType) === clubType;
}

function judgeKnown({ receiverFamily, adapterFamily }: Facts, relevant: readonly Claim[]): Outcome<Code> {
  const families = { receiverFamily, adapterFamily };
  const isSameFamily = receiverFamily === adapterFamily;
  if (relevant.length === 0) return isSameFamily ? fits() : doesNotFit("other-family", [], families);
  const evidence = evidenceOf(relevant);
  const verdicts = new Set(
    relevant.filter((claim) => claim.evidence === evidence).map((claim) => claim.verdict),
  );
  if (verdicts.size > 1) return unsettled("disputed", "disputed", families);
  if (verdicts.has("does-not-fit") && evidence === "seller-said")
    return isSameFamily
      ? unsettled("only-seller-says-it-does-not-fit", "tried", families)
      : doesNotFit("other-family", [], families);
  if (verdicts.has("does-not-fit")) return doesNotFit("claimed-not-to-fit", [], { ...families, evidence });
  if (isSameFamily) return fits();
  if (evidence === "seller-said") return unsettled("only-seller-says-it-fits", "tried", families);
  return fits("claimed-to-fit", { ...families, evidence });
}

function evidenceOf(claims: readonly Claim[]): Claim["evidence"] {
  return evidenceRanks.find((rank) => claims.some((claim) => claim.evidence === rank)) ?? "seller-said";
}
