import type { Build, ClubParts, Reference, TuneSolution, WorkStep } from "@ferrule/core";

/**
 * The cautions of every step that one of the solutions takes, each once, in the order of the steps at the bench. A step that
 * no table has, or a caution that nobody has written, is our bug and throws.
 */
export function tuneCautions(
  { grip, gripped = false }: Pick<ClubParts, "grip" | "gripped">,
  solutions: readonly Pick<TuneSolution, "build" | "grip">[],
  { work, cautions }: Pick<Reference, "work" | "cautions">,
): WorkStep["cautions"] {
  const steps = new Set(
    solutions.flatMap((solution) => [
      ...buildSteps(solution.build),
      ...gripSteps(solution, grip.id, gripped),
    ]),
  );
  const rows = [...steps].map((step) => known(work, (row) => row.step === step, step));
  const codes = new Set(rows.sort((a, b) => a.order - b.order).flatMap((row) => row.cautions));
  return [...codes].map((code) => {
    const { text } = known(cautions, (row) => row.code === code, code);
    return { code, text };
  });
}

function buildSteps({
  tipTrimIn = 0,
  buttTrimIn = 0,
  extraHeadMassG = 0,
  counterweightG = 0,
}: Build): string[] {
  return [
    tipTrimIn > 0 && "tip-trim",
    buttTrimIn > 0 && "butt-trim",
    buttTrimIn < 0 && "butt-extension",
    extraHeadMassG !== 0 && "head-weight",
    counterweightG > 0 && "counterweight",
  ].filter((step) => step !== false);
}

/** Another grip goes on in the place of the old one, and the butt is not worked on under a grip. */
function gripSteps(
  { build, grip }: Pick<TuneSolution, "build" | "grip">,
  now: string,
  gripped: boolean,
): string[] {
  const isOther = grip !== now;
  const isWorkUnderGrip = gripped && (build.buttTrimIn ?? 0) !== 0;
  if (!isOther && !isWorkUnderGrip) return [];
  return gripped ? ["grip-off", "grip-on"] : ["grip-on"];
}

function known<T>(rows: readonly T[], isIt: (row: T) => boolean, name: string): T {
  const row = rows.find(isIt);
  if (row === undefined) throw new Error(`no row in the tables for "${name}"`);
  return row;
}
