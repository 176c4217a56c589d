import { cases } from "./cases.test-kit.ts";
import { gripSound } from "./grip-sound.ts";

// Common practice, no source.
cases(gripSound, [
  { title: "has nothing to say of a grip nobody found fault with", facts: {}, verdict: "fits" },
  {
    title: "wants a worn grip replaced",
    facts: { faults: ["grip-worn"] },
    verdict: "does-not-fit",
    code: "worn",
    because: ["faults"],
    says: /is worn, and may slip or turn in the hands.*replace the grip/,
  },
  {
    title: "wants a cracked grip replaced",
    facts: { faults: ["crack", "other"] },
    verdict: "does-not-fit",
    code: "worn",
    because: ["faults"],
    says: /is cracked/,
  },
  {
    title: "notes a fault that is not named",
    facts: { faults: ["other"] },
    verdict: "fits",
    code: "fault-unnamed",
    says: /not named: look at it/,
  },
]);
