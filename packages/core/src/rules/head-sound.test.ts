import { cases } from "./cases.test-kit.ts";
import { headSound } from "./head-sound.ts";

// Common practice, no source.
cases(headSound, [
  {
    title: "passes a head with cracks and a caved face denied",
    facts: { deniedFaults: ["crack", "caved-face"] },
    verdict: "fits",
  },
  {
    title: "says that a head nobody spoke of has to be looked at",
    facts: {},
    verdict: "fits",
    code: "not-inspected",
    says: /the face, the crown's edge and the hosel/,
  },
  {
    title: "still wants a look when only cracks are denied",
    facts: { deniedFaults: ["crack"] },
    verdict: "fits",
    code: "not-inspected",
  },
  {
    title: "refuses a caved face",
    facts: { faults: ["caved-face"] },
    verdict: "does-not-fit",
    code: "damaged",
    because: ["faults"],
    says: /has a caved face: do not use it.*another head/,
  },
  {
    title: "refuses a cracked head, sky marks or not",
    facts: { faults: ["sky-mark", "crack"] },
    verdict: "does-not-fit",
    code: "damaged",
    because: ["faults"],
    says: /is cracked/,
  },
  {
    title: "refuses a crack that is denied and asserted at once",
    facts: { faults: ["crack"], deniedFaults: ["crack"] },
    verdict: "does-not-fit",
    code: "damaged",
    because: ["faults"],
  },
  {
    title: "asks what rattles",
    facts: { faults: ["rattle"] },
    verdict: "unsettled",
    code: "rattles",
    ask: "faults:rattle",
    says: /loose glue or a broken piece.*What rattles/,
  },
  {
    title: "asks where a dent is",
    facts: { faults: ["dent-head"] },
    verdict: "unsettled",
    code: "dented",
    ask: "faults:dent",
    says: /Where is the dent/,
  },
  {
    title: "asks what an unnamed fault is",
    facts: { faults: ["other"] },
    verdict: "unsettled",
    code: "fault-unnamed",
    ask: "faults:other",
    says: /wrong with the head/,
  },
  {
    title: "counts sky marks and scratches as money, not safety",
    facts: { faults: ["sky-mark", "crown-scratch"], deniedFaults: ["crack", "caved-face"] },
    verdict: "fits",
    code: "marked",
    says: /sky marks and scratches on the crown, which cost money, not safety/,
  },
  {
    title: "counts a worn face as money, not safety",
    facts: { faults: ["face-wear"], deniedFaults: ["crack", "caved-face"] },
    verdict: "fits",
    code: "marked",
    says: /a worn face/,
  },
  {
    title: "still wants a marked head looked at when nobody denied cracks",
    facts: { faults: ["sky-mark"], deniedFaults: ["caved-face"] },
    verdict: "fits",
    code: "marked-not-inspected",
    says: /sky marks, which cost money, not safety, but nobody has said whether it is free of cracks/,
  },
  {
    title: "notes rust on a head",
    facts: { faults: ["rust"], deniedFaults: ["crack", "caved-face"] },
    verdict: "fits",
    code: "marked",
    says: /has rust \(clean it out of any bore before bonding\)/,
  },
]);
