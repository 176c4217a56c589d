import loadGlpk, { type GLPK } from "glpk.js/node";
import type { PlanModel } from "../../packages/core/src/plan/plan-model.ts";

/** The most a model can bring by GLPK, with the model written down anew: nothing of the project's reading of it is used. */
export async function glpkBest(): Promise<(model: PlanModel, relaxed?: boolean) => number> {
  const glpk = await loadGlpk();
  return (model, relaxed = false) => solve(glpk, model, relaxed);
}

interface Term {
  readonly name: string;
  readonly coef: number;
}

function solve(glpk: GLPK, { resources, uses, bundles, trips, limits }: PlanModel, relaxed: boolean): number {
  const atMost = (name: string, vars: Term[], ub: number) => ({
    name,
    vars,
    bnds: { type: glpk.GLP_UP, ub, lb: 0 },
  });
  const use = (at: number) => `x${at}`;
  const bundle = (at: number) => `y${at}`;
  const trip = (id: string) => `z${trips.findIndex((one) => one.id === id)}`;
  const shareOf = (shares: readonly { resource: string; count: number }[], id: string) =>
    shares.filter(({ resource }) => resource === id).reduce((sum, { count }) => sum + count, 0);
  const terms = (of: {
    use: (at: number) => number;
    bundle: (at: number) => number;
    trip: (at: number) => number;
  }) =>
    [
      ...uses.map((_, at) => ({ name: use(at), coef: of.use(at) })),
      ...bundles.map((_, at) => ({ name: bundle(at), coef: of.bundle(at) })),
      ...trips.map(({ id }, at) => ({ name: trip(id), coef: of.trip(at) })),
    ].filter(({ coef }) => coef !== 0);
  const rows = [
    ...resources.map(({ id, count }, at) =>
      atMost(
        `r${at}`,
        terms({
          use: (one) => shareOf(uses[one]!.takes, id),
          bundle: (one) => -shareOf(bundles[one]!.gives, id),
          trip: () => 0,
        }),
        count,
      ),
    ),
    ...bundles.flatMap((one, at) =>
      one.trip === undefined
        ? []
        : [
            atMost(
              `t${at}`,
              [
                { name: bundle(at), coef: 1 },
                { name: trip(one.trip), coef: -1 },
              ],
              0,
            ),
          ],
    ),
    ...Object.entries(limits.mostOfKind).map(([kind, most]) =>
      atMost(
        `k ${kind}`,
        terms({ use: (at) => (uses[at]!.kind === kind ? 1 : 0), bundle: () => 0, trip: () => 0 }),
        most,
      ),
    ),
    atMost(
      "budget",
      terms({
        use: (at) => uses[at]!.outlayMinor,
        bundle: (at) => bundles[at]!.priceMinor,
        trip: (at) => trips[at]!.moneyMinor,
      }),
      limits.budgetMinor ?? 1e12,
    ),
    atMost(
      "minutes",
      terms({
        use: (at) => uses[at]!.minutes,
        bundle: (at) => bundles[at]!.minutes,
        trip: (at) => trips[at]!.minutes,
      }),
      limits.minutes ?? 1e12,
    ),
  ].filter(({ vars }) => vars.length > 0);
  const chosen = [...bundles.map((_, at) => bundle(at)), ...trips.map(({ id }) => trip(id))];
  const { result } = glpk.solve(
    {
      name: "plan",
      objective: {
        direction: glpk.GLP_MAX,
        name: "net",
        vars: terms({
          use: (at) => uses[at]!.netMinor,
          bundle: (at) => -bundles[at]!.priceMinor - bundles[at]!.timeMinor,
          trip: (at) => -trips[at]!.moneyMinor - trips[at]!.timeMinor,
        }),
      },
      subjectTo: rows,
      ...(relaxed
        ? { bounds: chosen.map((name) => ({ name, type: glpk.GLP_DB, lb: 0, ub: 1 })) }
        : { generals: uses.map((_, at) => use(at)), binaries: chosen }),
    },
    { msglev: glpk.GLP_MSG_OFF, mipgap: 0, tmlim: 60 },
  );
  if (result.status !== glpk.GLP_OPT) throw new Error(`GLPK ended with status ${result.status}`);
  return result.z;
}
