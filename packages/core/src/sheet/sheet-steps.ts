import { partName } from "../explain/plain-teller.ts";
import { sayStep } from "../explain/say-step.ts";
import type { FindingData } from "../findings/outcome.ts";
import type { Build, ClubParts } from "../measure/build.ts";
import type { Part } from "../parts/part.ts";
import type { Reference, WorkRow } from "../parts/reference.ts";
import type { Club, WorkStep } from "../resolve/result.ts";

/** A step that the chosen build takes beside those of the club. */
interface Extra {
  readonly step: string;
  readonly parts: readonly Part[];
  readonly data: FindingData;
}

/** A butt within a hair of its mark is neither cut nor extended. */
const leastTrimIn = 0.01;

/**
 * The steps of a build sheet in the order of the bench: the club's own, those that the chosen build takes, and a last look with
 * the scales. The butt is cut or extended by what this build leaves, whatever the club's answer had said.
 */
export function sheetSteps(
  club: Pick<Club, "work">,
  parts: ClubParts,
  build: Build,
  buttTrimIn: number,
  reference: Pick<Reference, "work" | "cautions">,
): readonly WorkStep[] {
  const own = club.work.filter(({ step }) => step !== "butt-trim" && step !== "butt-extension");
  const has = (name: string) => own.some(({ step }) => step === name);
  const extras = [
    ...extrasOf(parts, build, buttTrimIn).filter(({ step }) => !has(step)),
    ...(has("check-club") ? [] : [{ step: "check-club", parts: [], data: {} }]),
  ];
  const isUnderGrip = Math.abs(buttTrimIn) > leastTrimIn || (build.counterweightG ?? 0) > 0;
  const regrip = parts.gripped && isUnderGrip ? regripping(parts).filter(({ step }) => !has(step)) : [];
  const steps = [...own, ...[...extras, ...regrip].map((extra) => stepOf(extra, reference))];
  const orderOf = ({ step }: WorkStep) => workRow(step, reference).order;
  return steps.sort((one, other) => orderOf(one) - orderOf(other));
}

function extrasOf({ head, shaft }: ClubParts, build: Build, buttTrimIn: number): readonly Extra[] {
  const { tipTrimIn = 0, extraHeadMassG = 0, counterweightG = 0 } = build;
  const steps: readonly (Extra | false)[] = [
    tipTrimIn > 0 && { step: "tip-trim", parts: [shaft], data: { trimIn: tipTrimIn } },
    extraHeadMassG > 0 && { step: "head-weight", parts: [head], data: { addG: extraHeadMassG } },
    buttTrimIn > leastTrimIn && { step: "butt-trim", parts: [shaft], data: { trimIn: buttTrimIn } },
    buttTrimIn < -leastTrimIn && {
      step: "butt-extension",
      parts: [shaft],
      data: { extensionIn: -buttTrimIn },
    },
    counterweightG > 0 && { step: "counterweight", parts: [shaft], data: { addG: counterweightG } },
  ];
  return steps.filter((step) => step !== false);
}

/** The butt cannot be worked on under a grip. */
function regripping({ shaft, grip }: ClubParts): readonly Extra[] {
  return ["grip-off", "grip-on"].map((step) => ({ step, parts: [shaft, grip], data: {} }));
}

function stepOf({ step, parts, data }: Extra, reference: Pick<Reference, "work" | "cautions">): WorkStep {
  const row = workRow(step, reference);
  return {
    step,
    parts: parts.map(({ id }) => id),
    minutes: row.minutes,
    waitMinutes: row.waitMinutes,
    costMinor: row.costMinor,
    skill: row.skill,
    cautions: row.cautions.map((code) => cautionOf(code, reference)),
    data,
    text: sayStep(row, parts.map(partName), data),
  };
}

function workRow(step: string, { work }: Pick<Reference, "work">): WorkRow {
  const row = work.find((one) => one.step === step);
  if (!row) throw new Error(`no row in the work table for "${step}"`);
  return row;
}

/** The words of a caution; a step that names one nobody has written is our bug. */
function cautionOf(code: string, { cautions }: Pick<Reference, "cautions">): WorkStep["cautions"][number] {
  const row = cautions.find((caution) => caution.code === code);
  if (!row) throw new Error(`no row in the caution table for "${code}"`);
  return { code, text: row.text };
}
