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
    ask: "rattle",
    says: /loose glue or a broken piece.*What rattles/,
  },
  {
    title: "asks where a dent is",
    facts: { faults: ["dent-head"] },
    verdict: "unsettled",
    code: "dented",
    ask: "dent",
    says: /Where is the dent/,
  },
  {
    title: "asks what an unnamed fault is",
    facts: { faults: ["other"] },
    verdict: "unsettled",
    code: "fault-unnamed",
    ask: "otherFault",
    says: /wrong with the head/,
  },
  {
    title: "counts sky marks and scratches as money, not safety",
    facts: { faults: ["sky-mark", "crown-scratch"] },
    verdict: "fits",
    code: "marked",
    says: /sky marks and scratches on the crown, which cost money, not safety/,
  },
  {
    title: "counts a worn face as money, not safety",
    facts: { faults: ["face-wear"] },
    verdict: "fits",
    code: "marked",
    says: /a worn face/,
  },
]);
