import { cases } from "./cases.test-kit.ts";
import { shaftSound } from "./shaft-sound.ts";

const composite = ["dent-shaft", "crease-shaft", "crack", "exposed-fibre"];
const steel = ["dent-shaft", "crease-shaft", "crack", "bent-shaft", "rust"];

// Dents, creases and torn fibres: aircraft manual 51-10 "Assessing composite damage". Bag wear: golf.com "Damage control".
// Bent steel: golfcourseinsider.com. Rust: sgbgolf.co.uk, component bonding 2009. The rest is common practice, no source.
cases(shaftSound, [
  { title: "passes a graphite shaft with every fault of its kind denied", facts: { material: "graphite", deniedFaults: composite }, verdict: "fits" },
  { title: "passes a steel shaft with every fault of its kind denied", facts: { material: "steel", deniedFaults: steel }, verdict: "fits" },
  { title: "passes a shaft of unknown material with dents, creases and cracks denied", facts: { deniedFaults: ["dent-shaft", "crease-shaft", "crack"] }, verdict: "fits" },
  { title: "says that a shaft nobody spoke of has to be looked at", facts: { material: "graphite" }, verdict: "fits", code: "not-inspected", says: /look along all of it.*before use/ },
  { title: "still wants a look when one fault of the kind is not mentioned", facts: { material: "graphite", deniedFaults: composite.slice(1) }, verdict: "fits", code: "not-inspected" },
  { title: "does not ask graphite about rust or a bend", facts: { material: "multi", deniedFaults: composite }, verdict: "fits" },
  { title: "takes worn paint alone as cosmetic", facts: { material: "graphite", faults: ["paint-wear-shaft"] }, verdict: "fits", code: "paint-wear", says: /cosmetic.*fingernail/ },
  { title: "refuses a dented graphite shaft", facts: { material: "graphite", faults: ["dent-shaft"] }, verdict: "does-not-fit", code: "damaged", because: ["faults"], says: /a dent: do not use it.*do not sell/ },
  { title: "refuses a creased shaft of several materials", facts: { material: "multi", faults: ["crease-shaft"] }, verdict: "does-not-fit", code: "damaged", because: ["faults"], says: /a crease: do not use/ },
  { title: "refuses a cracked graphite shaft although its paint is worn too", facts: { material: "graphite", faults: ["paint-wear-shaft", "crack"] }, verdict: "does-not-fit", code: "damaged", because: ["faults"], says: /a crack/ },
  { title: "refuses fibres showing in graphite", facts: { material: "graphite", faults: ["exposed-fibre"] }, verdict: "does-not-fit", code: "damaged", because: ["faults"], says: /fibres showing/ },
  { title: "refuses a dented steel shaft", facts: { material: "steel", faults: ["dent-shaft"] }, verdict: "does-not-fit", code: "damaged", because: ["faults"] },
  { title: "refuses a dent whatever the shaft is made of", facts: { faults: ["dent-shaft"] }, verdict: "does-not-fit", code: "damaged", because: ["faults"] },
  { title: "refuses fibres showing although nobody named the material", facts: { faults: ["exposed-fibre"] }, verdict: "does-not-fit", code: "damaged", because: ["faults"] },
  { title: "refuses a dent that is denied and asserted at once", facts: { faults: ["dent-shaft"], deniedFaults: ["dent-shaft"] }, verdict: "does-not-fit", code: "damaged", because: ["faults"] },
  { title: "refuses bent steel, by the fault and the material together", facts: { material: "steel", faults: ["bent-shaft"] }, verdict: "does-not-fit", code: "steel-bent", because: ["faults", "material"], says: /steel and bent.*straightens/ },
  { title: "asks about a bend in graphite", facts: { material: "graphite", faults: ["bent-shaft"] }, verdict: "unsettled", code: "bend-unexplained", ask: "bend", says: /Roll it on a flat table/ },
  { title: "asks about a bend when nobody named the material", facts: { faults: ["bent-shaft"] }, verdict: "unsettled", code: "bend-unexplained", ask: "bend" },
  { title: "asks how deep the rust on steel is", facts: { material: "steel", faults: ["rust"] }, verdict: "unsettled", code: "rusty", ask: "rust", says: /pits in the metal and none inside/ },
  { title: "asks about rust when nobody named the material", facts: { faults: ["rust"] }, verdict: "unsettled", code: "rusty", ask: "rust" },
  { title: "doubts the material of rusty graphite", facts: { material: "graphite", faults: ["rust"] }, verdict: "unsettled", code: "fault-and-material-disagree", ask: "material", says: /rust, which its material cannot have.*magnet/ },
  { title: "doubts the material of steel with fibres showing", facts: { material: "steel", faults: ["exposed-fibre"] }, verdict: "unsettled", code: "fault-and-material-disagree", ask: "material" },
  { title: "asks what an unnamed fault is", facts: { material: "graphite", faults: ["other"] }, verdict: "unsettled", code: "fault-unnamed", ask: "otherFault", says: /What exactly is wrong/ },
  { title: "does not mind faults that a shaft cannot have", facts: { material: "graphite", faults: ["sky-mark"], deniedFaults: composite }, verdict: "fits" },
]);
