import { adapterSound } from "./adapter-sound.ts";
import { flexAsWanted } from "./flex-as-wanted.ts";
import { gripCoreSuitsButt } from "./grip-core-suits-butt.ts";
import { gripSound } from "./grip-sound.ts";
import { gripWithinRules } from "./grip-within-rules.ts";
import { headHandWanted } from "./head-hand-wanted.ts";
import { headSizeWithinRules } from "./head-size-within-rules.ts";
import { headSound } from "./head-sound.ts";
import { headVolumeWithinRules } from "./head-volume-within-rules.ts";
import { insertionDeepEnough } from "./insertion-deep-enough.ts";
import { lengthReachable } from "./length-reachable.ts";
import { lengthWithinLocalRule } from "./length-within-local-rule.ts";
import { lengthWithinRules } from "./length-within-rules.ts";
import { neckWithinRules } from "./neck-within-rules.ts";
import { parallelSectionLongEnough } from "./parallel-section-long-enough.ts";
import { receiverTakesAdapter } from "./receiver-takes-adapter.ts";
import type { Rule } from "./rule.ts";
import { sameHand } from "./same-hand.ts";
import { shaftSound } from "./shaft-sound.ts";
import { shaftSuitsClubType } from "./shaft-suits-club-type.ts";
import { socketTypeKnown } from "./socket-type-known.ts";
import { swingWeightReachable } from "./swing-weight-reachable.ts";
import { tipEntersBore } from "./tip-enters-bore.ts";
import { tipFormSuitsBore } from "./tip-form-suits-bore.ts";
import { workWithinSkill } from "./work-within-skill.ts";

/** Every rule, the quickest to refuse first: a proof takes the first refusal it meets. */
export const rules: readonly Rule[] = [
  headHandWanted,
  headSound,
  shaftSound,
  adapterSound,
  shaftSuitsClubType,
  socketTypeKnown,
  receiverTakesAdapter,
  sameHand,
  tipEntersBore,
  tipFormSuitsBore,
  insertionDeepEnough,
  parallelSectionLongEnough,
  gripCoreSuitsButt,
  headVolumeWithinRules,
  headSizeWithinRules,
  neckWithinRules,
  gripWithinRules,
  lengthReachable,
  lengthWithinRules,
  lengthWithinLocalRule,
  gripSound,
  swingWeightReachable,
  flexAsWanted,
  workWithinSkill,
];
