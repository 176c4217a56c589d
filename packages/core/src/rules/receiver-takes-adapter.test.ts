import type { Claim } from "../parts/claim.ts";
import { cases } from "./cases.test-kit.ts";
import { receiverTakesAdapter } from "./receiver-takes-adapter.ts";

const unlike = { receiverFamily: "Weir 2", adapterFamily: "Weir 1", hand: "right", clubType: "driver" };
const alike = { ...unlike, adapterFamily: "Weir 2" };

function claim(verdict: Claim["verdict"], evidence: Claim["evidence"], more: Partial<Claim> = {}): Claim {
  return { receiver: "Weir 2", adapter: "Weir 1", verdict, evidence, ...more };
}

// The ranking of evidence is this project's own; families are common practice, no source.
cases(receiverTakesAdapter, [
  { title: "an adapter of the receiver's family fits", facts: alike, verdict: "fits" },
  {
    title: "the same family needs neither hand nor kind of club",
    facts: { receiverFamily: "Weir 2", adapterFamily: "Weir 2" },
    verdict: "fits",
  },
  {
    title: "another family without a claim is refused",
    facts: unlike,
    verdict: "does-not-fit",
    code: "other-family",
    because: ["receiverFamily", "adapterFamily"],
    says: /^the head takes adapters of family Weir 2, the adapter is of family Weir 1, and no fit claim says that the two fit \/ an adapter of family Weir 2/,
  },
  {
    title: "a claim about other families does not help",
    facts: unlike,
    claims: [
      claim("fits", "tried", { adapter: "Weir 3" }),
      claim("fits", "tried", { receiver: "Weir 1", adapter: "Weir 2" }),
    ],
    verdict: "does-not-fit",
    code: "other-family",
  },
  {
    title: "a pair that was tried fits, and says on what evidence",
    facts: unlike,
    claims: [claim("fits", "tried")],
    verdict: "fits",
    code: "claimed-to-fit",
    says: /^somebody who tried it says that family Weir 1 fits a receiver of family Weir 2$/,
  },
  {
    title: "a maker's word is enough",
    facts: unlike,
    claims: [claim("fits", "maker-stated")],
    verdict: "fits",
    code: "claimed-to-fit",
    says: /^the maker states that/,
  },
  {
    title: "a pair seen assembled is enough",
    facts: unlike,
    claims: [claim("fits", "seen-assembled")],
    verdict: "fits",
    code: "claimed-to-fit",
    says: /saw the two assembled/,
  },
  {
    title: "a seller's word alone leaves it unsettled",
    facts: unlike,
    claims: [claim("fits", "seller-said")],
    verdict: "unsettled",
    code: "only-seller-says-it-fits",
    ask: "tried",
    says: /only a seller says .* Has anybody tried/,
  },
  {
    title: "a seller's word against it is taken",
    facts: unlike,
    claims: [claim("does-not-fit", "seller-said")],
    verdict: "does-not-fit",
    code: "claimed-not-to-fit",
    says: /^a seller says that .* does not fit/,
  },
  {
    title: "a trial outranks the maker",
    facts: unlike,
    claims: [claim("fits", "maker-stated"), claim("does-not-fit", "tried")],
    verdict: "does-not-fit",
    code: "claimed-not-to-fit",
    because: ["receiverFamily", "adapterFamily"],
    says: /somebody who tried it says that .* does not fit a receiver of family Weir 2/,
  },
  {
    title: "the maker outranks what was seen",
    facts: unlike,
    claims: [claim("does-not-fit", "seen-assembled"), claim("fits", "maker-stated")],
    verdict: "fits",
    code: "claimed-to-fit",
  },
  {
    title: "what was seen outranks a seller",
    facts: unlike,
    claims: [claim("does-not-fit", "seller-said"), claim("fits", "seen-assembled")],
    verdict: "fits",
    code: "claimed-to-fit",
  },
  {
    title: "equal evidence that disagrees is disputed",
    facts: unlike,
    claims: [claim("fits", "tried"), claim("does-not-fit", "tried"), claim("fits", "maker-stated")],
    verdict: "unsettled",
    code: "disputed",
    ask: "disputed",
    says: /people disagree, on equally good evidence.*Who is right/,
  },
  {
    title: "a claim against the same family refuses it",
    facts: alike,
    claims: [claim("does-not-fit", "tried", { adapter: "Weir 2", clubType: "driver" })],
    verdict: "does-not-fit",
    code: "claimed-not-to-fit",
    because: ["receiverFamily", "adapterFamily", "clubType"],
  },
  {
    title: "a claim that agrees with the family adds nothing",
    facts: alike,
    claims: [claim("fits", "seller-said", { adapter: "Weir 2" })],
    verdict: "fits",
  },
  {
    title: "a claim for this hand counts",
    facts: unlike,
    claims: [claim("fits", "tried", { hand: "right" })],
    verdict: "fits",
    code: "claimed-to-fit",
  },
  {
    title: "a claim for the other hand does not count, and the hand belongs to the proof",
    facts: unlike,
    claims: [claim("fits", "tried", { hand: "left" })],
    verdict: "does-not-fit",
    code: "other-family",
    because: ["receiverFamily", "adapterFamily", "hand"],
  },
  {
    title: "a claim for another kind of club does not count, and the kind belongs to the proof",
    facts: unlike,
    claims: [claim("fits", "tried", { clubType: "hybrid" })],
    verdict: "does-not-fit",
    code: "other-family",
    because: ["receiverFamily", "adapterFamily", "clubType"],
  },
  {
    title: "a claim for one hand does not decide for a head of unknown hand",
    facts: { ...unlike, hand: undefined },
    claims: [claim("fits", "tried", { hand: "right" })],
    verdict: "unsettled",
    code: "claim-depends-on-hand",
    ask: "hand",
    says: /depends on the hand of the head.*right-handed or left-handed\?/,
  },
  {
    title: "a claim for one kind of club does not decide for an unknown kind",
    facts: { ...unlike, clubType: undefined },
    claims: [claim("fits", "tried", { clubType: "driver" })],
    verdict: "unsettled",
    code: "claim-depends-on-club-type",
    ask: "clubType",
    says: /what kind of club the head is/,
  },
  {
    title: "a claim that refuses either way needs no hand",
    facts: { ...unlike, hand: undefined },
    claims: [claim("does-not-fit", "tried", { hand: "left" })],
    verdict: "does-not-fit",
    code: "claimed-not-to-fit",
    because: ["receiverFamily", "adapterFamily"],
  },
  {
    title: "an unknown receiver family is asked for",
    facts: { ...unlike, receiverFamily: undefined },
    verdict: "unsettled",
    ask: "receiverFamily",
    says: /Which family of adapter does the head take\?/,
  },
  {
    title: "an unknown adapter family is asked for",
    facts: { ...unlike, adapterFamily: undefined },
    verdict: "unsettled",
    ask: "adapterFamily",
    says: /Which family is the adapter of\?/,
  },
]);
