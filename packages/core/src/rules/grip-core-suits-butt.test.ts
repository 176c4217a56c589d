import { cases } from "./cases.test-kit.ts";
import { buildUpMaxIn, gripCoreSuitsButt, sameSizeIn, stretchMaxIn } from "./grip-core-suits-butt.ts";

// The ladder and a core equal to its butt at 0.900 in: scratchgolfshop.com regripping. The limits are
// our own defaults, no source: their rows are built from them.
cases(gripCoreSuitsButt, [
  {
    title: "a core of the butt's size fits",
    facts: { buttDiameterIn: 0.6, coreDiameterIn: 0.6 },
    verdict: "fits",
  },
  {
    // esigolf.com and waggleweight.com part twenty-four: an M58 on 0.600 counts as 0.920 in, about 1/64 over.
    title: "an M58 on a 0.600 butt measures 0.920, about 1/64 over",
    facts: { buttDiameterIn: 0.6, coreDiameterIn: 0.58 },
    verdict: "fits",
    code: "plays-larger",
    says: /^the grip stretches 0\.02 in over the butt of the shaft, so a grip made to play standard would measure 0\.92 in, nearest to 1\/64 over$/,
  },
  {
    title: "a difference a thousandth below what is felt is not remarked upon",
    facts: { buttDiameterIn: 0.6 + sameSizeIn - 0.001, coreDiameterIn: 0.6 },
    verdict: "fits",
  },
  {
    title: "a difference that is felt is",
    facts: { buttDiameterIn: 0.6 + sameSizeIn, coreDiameterIn: 0.6 },
    verdict: "fits",
    code: "plays-larger",
  },
  {
    title: "the most that a core stretches is taken",
    facts: { buttDiameterIn: 0.58 + stretchMaxIn, coreDiameterIn: 0.58 },
    verdict: "fits",
    code: "plays-larger",
  },
  {
    title: "a thousandth more is refused",
    facts: { buttDiameterIn: 0.58 + stretchMaxIn + 0.001, coreDiameterIn: 0.58 },
    verdict: "does-not-fit",
    code: "core-too-small",
    because: ["buttDiameterIn", "coreDiameterIn"],
    says: /in wider than the core of the grip, and a grip stretches over .* in at most \/ a grip with a larger core/,
  },
  {
    title: "a butt thinner by less than is felt needs no tape",
    facts: { buttDiameterIn: 0.6 - sameSizeIn + 0.001, coreDiameterIn: 0.6 },
    verdict: "fits",
  },
  {
    title: "a butt thinner by what is felt takes a wrap",
    facts: { buttDiameterIn: 0.6 - sameSizeIn, coreDiameterIn: 0.6 },
    verdict: "fits-with-work",
    code: "build-up",
    steps: ["build-up-tape"],
    says: /about 1 wrap of build-up tape fills$/,
  },
  {
    title: "a butt 0.020 thinner takes two wraps",
    facts: { buttDiameterIn: 0.58, coreDiameterIn: 0.6 },
    verdict: "fits-with-work",
    code: "build-up",
    says: /0\.02 in wider than the butt of the shaft, which about 2 wraps of build-up tape fill$/,
  },
  {
    title: "the most that tape fills is filled",
    facts: { buttDiameterIn: 0.62 - buildUpMaxIn, coreDiameterIn: 0.62 },
    verdict: "fits-with-work",
    code: "build-up",
  },
  {
    title: "a thousandth more is refused",
    facts: { buttDiameterIn: 0.62 - buildUpMaxIn - 0.001, coreDiameterIn: 0.62 },
    verdict: "does-not-fit",
    code: "core-too-large",
    because: ["buttDiameterIn", "coreDiameterIn"],
    says: /in wider than the butt of the shaft, and tape fills .* in at most \/ a grip with a smaller core/,
  },
  {
    title: "a typical butt confirms",
    facts: { buttDiameterIn: { value: 0.6, plusMinus: 0.01, source: "typical" }, coreDiameterIn: 0.6 },
    verdict: "fits",
  },
  {
    title: "a typical butt never refuses",
    facts: { buttDiameterIn: { value: 0.6, plusMinus: 0.01, source: "typical" }, coreDiameterIn: 0.55 },
    verdict: "unsettled",
    ask: "buttDiameterIn",
  },
  {
    title: "an unknown butt is asked for",
    facts: { coreDiameterIn: 0.6 },
    verdict: "unsettled",
    ask: "buttDiameterIn",
    says: /2 in from its butt/,
  },
  {
    title: "an unknown core is asked for",
    facts: { buttDiameterIn: 0.6 },
    verdict: "unsettled",
    ask: "coreDiameterIn",
    says: /core size\?/,
  },
  {
    title: "says by how much a core is too large, and a smaller gap is built up in how many layers",
    facts: { buttDiameterIn: 0.58, coreDiameterIn: 0.58 + buildUpMaxIn + 0.001 },
    verdict: "does-not-fit",
    code: "core-too-large",
    figures: { underIn: buildUpMaxIn + 0.001 },
  },
  {
    title: "a gap is built up in whole layers",
    facts: { buttDiameterIn: 0.58, coreDiameterIn: 0.6 },
    verdict: "fits-with-work",
    code: "build-up",
    figures: { underIn: 0.02, wraps: 2, "build-up-tape.wraps": 2 },
  },
]);
