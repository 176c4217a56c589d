import { cases } from "./cases.test-kit.ts";
import { gripWithinRules } from "./grip-within-rules.ts";

const stated = (value: number, plusMinus: number) => ({ value, plusMinus, source: "stated" });

// USGA Equipment Rules Part 2 s.3b(iii): 1.75 in (44.45 mm) in any direction; interpretations of s.3: 7 in (177.8 mm) long.
cases(gripWithinRules, [
  {
    title: "passes a usual grip",
    facts: { clubType: "iron", outsideDiameterIn: 1.1, lengthIn: 10.5 },
    verdict: "fits",
  },
  {
    title: "passes a grip on both limits",
    facts: { clubType: "iron", outsideDiameterIn: 1.75, lengthIn: 7 },
    verdict: "fits",
  },
  {
    title: "refuses a grip 1.76 in thick",
    facts: { outsideDiameterIn: 1.76 },
    verdict: "does-not-fit",
    code: "grip-too-thick",
    because: ["outsideDiameterIn"],
    says: /1\.76 in thick, and the Rules allow 1\.75 in.*a thinner grip/,
  },
  {
    title: "asks about a grip about 1.76 in thick",
    facts: { outsideDiameterIn: stated(1.76, 0.01) },
    verdict: "unsettled",
    code: "grip-thickness-near-limit",
    ask: "outsideDiameterIn",
    says: /calliper/,
  },
  {
    title: "refuses a grip 6.99 in long",
    facts: { clubType: "iron", lengthIn: 6.99 },
    verdict: "does-not-fit",
    code: "grip-too-short",
    because: ["lengthIn", "clubType"],
    says: /6\.99 in long, and the Rules ask for 7 in.*a longer grip/,
  },
  {
    title: "asks about a grip about 6.95 in long",
    facts: { clubType: "iron", lengthIn: stated(6.95, 0.06) },
    verdict: "unsettled",
    code: "grip-length-near-limit",
    ask: "lengthIn",
    says: /end to end/,
  },
  {
    title: "asks what a club with a grip of 6 in is",
    facts: { lengthIn: 6 },
    verdict: "unsettled",
    code: "club-type-unknown",
    ask: "clubType",
    says: /unless the club is a putter/,
  },
  {
    title: "does not judge a putter grip by its length",
    facts: { clubType: "putter", lengthIn: 6 },
    verdict: "fits",
  },
  {
    title: "limits the thickness of a putter grip too",
    facts: { clubType: "putter", outsideDiameterIn: 1.8 },
    verdict: "does-not-fit",
    code: "grip-too-thick",
  },
  {
    title: "refuses before it asks",
    facts: { clubType: "iron", outsideDiameterIn: stated(1.76, 0.01), lengthIn: 5 },
    verdict: "does-not-fit",
    code: "grip-too-short",
  },
  { title: "has nothing to say of a grip nobody measured", facts: { clubType: "iron" }, verdict: "fits" },
]);
