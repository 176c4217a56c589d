import { cases } from "./cases.test-kit.ts";
import { insertionDeepEnough } from "./insertion-deep-enough.ts";

// The floor and the usual depths are from memory: these rows hold the rule to its own defaults. The insertion of 1.125 in
// is the worked example of the Hireko blog, 2011-01, bottom of bore to ground line measurement.
cases(insertionDeepEnough, [
  {
    title: "the published example of 1.125 in is usual for a driver",
    facts: { depthIn: 1.125, clubType: "driver" },
    verdict: "fits",
  },
  { title: "a deep iron bore says nothing", facts: { depthIn: 1.5, clubType: "iron" }, verdict: "fits" },
  { title: "1.25 in is usual for an iron", facts: { depthIn: 1.25, clubType: "iron" }, verdict: "fits" },
  {
    title: "just under 1.25 in is remarked upon in an iron",
    facts: { depthIn: 1.24, clubType: "iron" },
    verdict: "fits",
    code: "shallower-than-usual",
    says: /^the bore of the holder takes 1\.24 in of shaft, and 1\.25 in is the usual least/,
  },
  {
    title: "just under 1.125 in is remarked upon in a fairway wood",
    facts: { depthIn: 1.12, clubType: "fairway" },
    verdict: "fits",
    code: "shallower-than-usual",
  },
  {
    title: "1.0 in is the floor for a putter, with nothing to say",
    facts: { depthIn: 1, clubType: "putter" },
    verdict: "fits",
  },
  {
    title: "1.0 in is enough where nobody has said the kind of club",
    facts: { depthIn: 1 },
    verdict: "fits",
  },
  {
    title: "just under 1.0 in is refused",
    facts: { depthIn: 0.99, clubType: "driver" },
    verdict: "does-not-fit",
    code: "too-shallow",
    because: ["depthIn"],
    says: /takes only 0\.99 in of shaft, and 1 in is the least that is bonded \/ clean old glue/,
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
]);
