import { adapterSound } from "./adapter-sound.ts";
import { cases } from "./cases.test-kit.ts";

// Common practice, no source.
cases(adapterSound, [
  {
    title: "passes an adapter with damage and cracks denied",
    facts: { deniedFaults: ["crack", "adapter-damaged"] },
    verdict: "fits",
  },
  {
    title: "says that an adapter nobody spoke of has to be looked at",
    facts: {},
    verdict: "fits",
    code: "not-inspected",
    says: /its thread, its teeth and the bond/,
  },
  {
    title: "still wants a look when only cracks are denied",
    facts: { deniedFaults: ["crack"] },
    verdict: "fits",
    code: "not-inspected",
  },
  {
    title: "refuses a damaged adapter",
    facts: { faults: ["adapter-damaged"] },
    verdict: "does-not-fit",
    code: "damaged",
    because: ["faults"],
    says: /is damaged: do not use it, the head may come off.*same family/,
  },
  {
    title: "refuses a cracked adapter",
    facts: { faults: ["crack"] },
    verdict: "does-not-fit",
    code: "damaged",
    because: ["faults"],
    says: /is cracked/,
  },
  {
    title: "asks about the thread and the seat of a rusty adapter",
    facts: { faults: ["rust"] },
    verdict: "unsettled",
    code: "rusty",
    ask: "faults:rust",
    says: /eaten the thread or the seat.*Is the rust only on the surface/,
  },
  {
    title: "asks what an unnamed fault is",
    facts: { faults: ["other"] },
    verdict: "unsettled",
    code: "fault-unnamed",
    ask: "faults:other",
    says: /wrong with the adapter/,
  },
  {
    title: "refuses an adapter that moves or creaks where it is joined",
    facts: { faults: ["loose-joint"] },
    verdict: "does-not-fit",
    code: "joint-loose",
    because: ["faults"],
    says: /moves or creaks where it is joined: do not use it.*bonding it anew/,
  },
]);
