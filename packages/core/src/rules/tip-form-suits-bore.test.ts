import { cases } from "./cases.test-kit.ts";
import { tipFormSuitsBore } from "./tip-form-suits-bore.ts";

// Taper iron tips are 0.355 in, reaching 0.370 in about 2 in up; parallel iron tips are 0.370 in: marathonsportsagency.blog,
// 2024-12-09. Bores that measure over their name: greenlanterngolf.com.
cases(tipFormSuitsBore, [
  { title: "a parallel tip suits a parallel bore", facts: { tipForm: "parallel", boreForm: "parallel" }, verdict: "fits" },
  { title: "a taper tip suits a taper bore", facts: { tipForm: "taper", boreForm: "taper", tipDiameterIn: 0.355, boreDiameterIn: 0.355 }, verdict: "fits" },
  {
    title: "forms that nobody has said are taken from the sizes, and it says so",
    facts: { tipDiameterIn: 0.355, boreDiameterIn: 0.355 },
    verdict: "fits",
    code: "form-taken-from-size",
    says: /^by their sizes the tip of the shaft and the bore of the holder are both taper/,
  },
  { title: "a wood tip in a wood bore is parallel in parallel", facts: { tipDiameterIn: 0.335, boreDiameterIn: 0.339 }, verdict: "fits", code: "form-taken-from-size", says: /both parallel/ },
  {
    title: "a 0.355 taper tip goes into a 0.370 parallel bore in a sleeve",
    facts: { tipForm: "taper", boreForm: "parallel", tipDiameterIn: 0.355, boreDiameterIn: 0.37 },
    verdict: "fits",
    code: "taper-tip-in-sleeve",
    says: /only in a sleeve made for it, which is done, though one trade writer advises against it/,
  },
  {
    title: "a 0.370 parallel tip goes into a 0.355 taper bore once that is reamed",
    facts: { tipDiameterIn: 0.37, boreDiameterIn: 0.355 },
    verdict: "fits",
    code: "parallel-tip-after-reaming",
    says: /only once that has been reamed parallel/,
  },
  {
    title: "a taper tip in a small parallel bore is refused",
    facts: { tipForm: "taper", boreForm: "parallel", tipDiameterIn: 0.294, boreDiameterIn: 0.335 },
    verdict: "does-not-fit",
    code: "taper-tip-in-parallel-bore",
    because: ["tipForm", "boreDiameterIn"],
    says: /touch only in a ring.* \/ a shaft with a parallel tip of the bore's size/,
  },
  {
    title: "a 0.350 parallel tip in a 0.355 taper bore is refused",
    facts: { tipForm: "parallel", boreForm: "taper", tipDiameterIn: 0.35, boreDiameterIn: 0.355 },
    verdict: "does-not-fit",
    code: "parallel-tip-in-taper-bore",
    because: ["tipDiameterIn", "boreDiameterIn"],
    says: /parallel and the bore of the holder is taper.* \/ a shaft with a 0\.355 in taper tip/,
  },
  {
    title: "a 0.355 parallel label is the usual mix-up, and callipers settle it",
    facts: { tipForm: "parallel", tipDiameterIn: 0.355, boreForm: "parallel", boreDiameterIn: 0.37 },
    verdict: "unsettled",
    code: "tip-mislabelled",
    ask: "tipForm",
    says: /described as 0\.355 in parallel, which is the usual mix-up.*2 in up: a taper iron tip reads 0\.355 in and then 0\.370 in/,
  },
  { title: "a 0.370 taper label is the same mix-up", facts: { tipForm: "taper", tipDiameterIn: 0.37, boreForm: "taper" }, verdict: "unsettled", code: "tip-mislabelled", says: /0\.37 in taper/ },
  { title: "a bore can be mislabelled too", facts: { tipForm: "taper", boreForm: "taper", boreDiameterIn: 0.37 }, verdict: "unsettled", code: "bore-mislabelled", ask: "boreForm", says: /the bore of the holder is described as 0\.37 in taper/ },
  { title: "an unknown tip is asked for", facts: { boreForm: "parallel", boreDiameterIn: 0.335 }, verdict: "unsettled", code: "tip-form-unknown", ask: "tipForm", says: /a parallel one the same twice/ },
  { title: "an unknown bore is asked for", facts: { tipForm: "parallel", tipDiameterIn: 0.335 }, verdict: "unsettled", code: "bore-form-unknown", ask: "boreForm", says: /Is the bore taper or parallel\?/ },
  { title: "a bore of 0.354 does not tell its form", facts: { tipForm: "parallel", tipDiameterIn: 0.35, boreDiameterIn: 0.354 }, verdict: "unsettled", code: "bore-form-unknown" },
  { title: "a bore of 0.352 is a parallel 0.350", facts: { tipForm: "parallel", tipDiameterIn: 0.35, boreDiameterIn: 0.352 }, verdict: "fits", code: "form-taken-from-size" },
  { title: "an old wood tip below 0.300 does not tell its form", facts: { tipDiameterIn: 0.294, boreForm: "taper" }, verdict: "unsettled", code: "tip-form-unknown" },
  { title: "unlike forms of unknown tip size ask for it", facts: { tipForm: "parallel", boreForm: "taper", boreDiameterIn: 0.355 }, verdict: "unsettled", code: "tip-size-decides", ask: "tipDiameterIn", says: /the size of the tip decides/ },
  { title: "unlike forms of unknown bore size ask for it", facts: { tipForm: "taper", boreForm: "parallel", tipDiameterIn: 0.355 }, verdict: "unsettled", code: "bore-size-decides", ask: "boreDiameterIn", says: /the size of the bore decides/ },
]);
