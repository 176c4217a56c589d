import { cases } from "./cases.test-kit.ts";
import { shaftSuitsClubType } from "./shaft-suits-club-type.ts";

// Common practice, no source, except that hybrids are bored for wood and for iron shafts: greenlanterngolf.com.
cases(shaftSuitsClubType, [
  { title: "a wood shaft suits a driver", facts: { suits: "wood", clubType: "driver" }, verdict: "fits" },
  {
    title: "a wood shaft suits a fairway wood",
    facts: { suits: "wood", clubType: "fairway" },
    verdict: "fits",
  },
  { title: "a hybrid shaft suits a hybrid", facts: { suits: "hybrid", clubType: "hybrid" }, verdict: "fits" },
  { title: "an iron shaft suits an iron", facts: { suits: "iron", clubType: "iron" }, verdict: "fits" },
  { title: "an iron shaft suits a wedge", facts: { suits: "iron", clubType: "wedge" }, verdict: "fits" },
  { title: "a putter shaft suits a putter", facts: { suits: "putter", clubType: "putter" }, verdict: "fits" },
  {
    title: "a wood shaft in a hybrid is done, and is remarked upon",
    facts: { suits: "wood", clubType: "hybrid" },
    verdict: "fits",
    code: "usable-but-made-for-other-clubs",
    says: /^the shaft is made for woods and the head is a hybrid, which is done but changes its length, weight and feel$/,
  },
  {
    title: "an iron shaft in a hybrid is remarked upon",
    facts: { suits: "iron", clubType: "hybrid" },
    verdict: "fits",
    code: "usable-but-made-for-other-clubs",
  },
  {
    title: "a hybrid shaft in an iron is remarked upon",
    facts: { suits: "hybrid", clubType: "iron" },
    verdict: "fits",
    code: "usable-but-made-for-other-clubs",
  },
  {
    title: "a wood shaft in an iron is refused",
    facts: { suits: "wood", clubType: "iron" },
    verdict: "does-not-fit",
    code: "made-for-other-clubs",
    because: ["suits", "clubType"],
    says: /^the shaft is made for woods and the head is an iron \/ a shaft made for an iron$/,
  },
  {
    title: "an iron shaft in a driver is refused",
    facts: { suits: "iron", clubType: "driver" },
    verdict: "does-not-fit",
    code: "made-for-other-clubs",
  },
  {
    title: "a hybrid shaft in a fairway wood is refused",
    facts: { suits: "hybrid", clubType: "fairway" },
    verdict: "does-not-fit",
    code: "made-for-other-clubs",
    says: /is a fairway wood \/ a shaft made for a fairway wood/,
  },
  {
    title: "an iron shaft in a putter is refused",
    facts: { suits: "iron", clubType: "putter" },
    verdict: "does-not-fit",
    code: "made-for-other-clubs",
  },
  {
    title: "what the shaft is made for is asked",
    facts: { clubType: "iron" },
    verdict: "unsettled",
    ask: "suits",
    says: /What is the shaft made for/,
  },
  {
    title: "what kind of club it is is asked",
    facts: { suits: "iron" },
    verdict: "unsettled",
    ask: "clubType",
    says: /Is the head a driver/,
  },
]);
