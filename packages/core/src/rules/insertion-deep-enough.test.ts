import { cases } from "./cases.test-kit.ts";
import { floorIn, insertionDeepEnough, usualIn } from "./insertion-deep-enough.ts";

// The floor and the usual depths are our own defaults, no source: their rows are built from them. The insertion of 1.125 in
// is the worked example of the Hireko blog, 2011-01, bottom of bore to ground line measurement.
cases(insertionDeepEnough, [
  {
    title: "the published example of 1.125 in is usual for a driver",
    facts: { depthIn: 1.125, clubType: "driver" },
    verdict: "fits",
  },
  { title: "a deep iron bore says nothing", facts: { depthIn: 1.5, clubType: "iron" }, verdict: "fits" },
  {
    title: "the usual depth of an iron says nothing",
    facts: { depthIn: usualIn.iron, clubType: "iron" },
    verdict: "fits",
  },
  {
    title: "just under the usual depth is remarked upon in an iron",
    facts: { depthIn: usualIn.iron - 0.01, clubType: "iron" },
    verdict: "fits",
    code: "shallower-than-usual",
    says: /^the bore of the holder takes .* in of shaft, and .* in is the usual least/,
  },
  {
    title: "just under the usual depth is remarked upon in a fairway wood",
    facts: { depthIn: usualIn.fairway - 0.005, clubType: "fairway" },
    verdict: "fits",
    code: "shallower-than-usual",
  },
  {
    title: "the floor is enough for a putter, with nothing to say",
    facts: { depthIn: floorIn, clubType: "putter" },
    verdict: "fits",
  },
  {
    title: "the floor is enough where nobody has said the kind of club",
    facts: { depthIn: floorIn },
    verdict: "fits",
  },
  {
    title: "under the floor by more than the reading can be off is refused",
    facts: { depthIn: floorIn - 0.01, clubType: "driver" },
    verdict: "does-not-fit",
    code: "too-shallow",
    because: ["depthIn"],
    says: /takes only .* in of shaft, and .* in is the least that is bonded \/ clean old glue/,
  },
  {
    title: "under the floor by less than a stated depth can be off is measured first",
    facts: {
      depthIn: { value: floorIn - 0.01, plusMinus: 0.06, source: "stated" },
      clubType: "driver",
    },
    verdict: "unsettled",
    code: "maybe-too-shallow",
    ask: "depthIn",
    says: /too vague a reading.*How deep does the bore/,
  },
  {
    title: "a stated depth clear of the floor is refused",
    facts: { depthIn: { value: floorIn - 0.12, plusMinus: 0.06, source: "stated" } },
    verdict: "does-not-fit",
    code: "too-shallow",
    because: ["depthIn"],
  },
  {
    title: "a typical depth confirms",
    facts: { depthIn: { value: 1.2, plusMinus: 0.15, source: "typical" }, clubType: "driver" },
    verdict: "fits",
  },
  {
    title: "a typical depth never refuses",
    facts: { depthIn: { value: 0.9, plusMinus: 0.15, source: "typical" } },
    verdict: "unsettled",
    ask: "depthIn",
  },
  {
    title: "an unknown depth is asked for",
    facts: { clubType: "iron" },
    verdict: "unsettled",
    ask: "depthIn",
    says: /How deep does the bore take the shaft\?/,
  },
  {
    title: "a depth of exactly the floor is enough, though less than is usual",
    facts: { depthIn: { value: floorIn, plusMinus: 0, source: "measured" }, clubType: "iron" },
    verdict: "fits",
    code: "shallower-than-usual",
  },
]);
