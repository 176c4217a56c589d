import type { LinearAnswer, LinearProgramme, LinearSolver, SolverOptions } from "@ferrule/core";
import loadModule, { type Highs, type InitOptions, type Model, type ModelData } from "highs";

/** The package calls itself CommonJS, so the compiler does not see that its default export is the loader itself. */
const loadHighs = loadModule as unknown as (options?: InitOptions) => Promise<Highs>;

/** A solver of linear programmes by HiGHS, with and without whole columns. Solving blocks the thread it is called on. */
export async function loadHighsSolver(): Promise<LinearSolver> {
  let highs = await loadHighs();
  return async (programme, options) => {
    try {
      return solve(highs, programme, options);
    } catch {
      // After an abort of the machine code its memory cannot be trusted.
      highs = await loadHighs();
      return failed;
    }
  };
}

const failed: LinearAnswer = { status: "failed", values: null, objective: null, bound: null, prices: null };

function solve(highs: Highs, programme: LinearProgramme, options: SolverOptions): LinearAnswer {
  const whole = programme.columns.some((column) => column.whole);
  const model = highs.createModel(modelData(highs, programme));
  try {
    model.options.set({
      output_flag: false,
      time_limit: Math.max(options.seconds, 0.01),
      mip_rel_gap: options.relativeGap,
      mip_abs_gap: 0.5,
      ...(whole ? {} : linearOptions),
    });
    if (whole && options.start !== undefined) model.setSolution({ colValue: options.start });
    runUntil(highs, model, options.shouldStop);
    return answerOf(highs, model, whole);
  } finally {
    model.dispose();
  }
}

/**
 * Doing nothing is always allowed, so the primal simplex starts from it. On plans of 8,000 to 100,000 columns that is several
 * times faster than the dual simplex, the interior point method or either after presolving.
 */
const linearOptions = { solver: "simplex", simplex_strategy: 4, presolve: "off" };

function runUntil(highs: Highs, model: Model, shouldStop: (() => boolean) | undefined): void {
  const { simplexInterrupt, ipmInterrupt, mipInterrupt } = highs.constants.callbackType;
  const ask = (event: { interrupt(): void }): undefined => {
    if (shouldStop?.()) event.interrupt();
  };
  model.run(
    shouldStop === undefined
      ? undefined
      : { [simplexInterrupt]: ask, [ipmInterrupt]: ask, [mipInterrupt]: ask },
  );
}

function answerOf(highs: Highs, model: Model, whole: boolean): LinearAnswer {
  const status = statusOf(highs, model.getModelStatus());
  if (status !== "best" && status !== "stopped") return { ...failed, status };
  const feasible = model.info.get("primal_solution_status") === highs.constants.solutionStatus.feasible;
  const solution = model.getSolution();
  const bound = whole ? Number(model.info.get("mip_dual_bound")) : null;
  return {
    status,
    values: feasible ? Array.from(solution.colValue) : null,
    objective: feasible ? model.getObjectiveValue() : null,
    bound: bound !== null && Number.isFinite(bound) ? bound : null,
    prices: whole ? null : Array.from(solution.rowDual),
  };
}

function statusOf(highs: Highs, code: number): LinearAnswer["status"] {
  const status = highs.constants.modelStatus;
  if (code === status.optimal || code === status.empty) return "best";
  if (code === status.infeasible) return "impossible";
  if (code === status.unbounded || code === status.unboundedOrInfeasible) return "unbounded";
  const stops: number[] = [status.timeLimit, status.iterationLimit, status.interrupted, status.unknown];
  return stops.includes(code) ? "stopped" : "failed";
}

function modelData(highs: Highs, { columns, rows }: LinearProgramme): ModelData {
  const starts = [0];
  for (const { entries } of rows) starts.push((starts.at(-1) ?? 0) + entries.length);
  const { integer, continuous } = highs.constants.variableType;
  return {
    numCols: columns.length,
    numRows: rows.length,
    sense: highs.constants.objectiveSense.maximize,
    colCost: columns.map(({ cost }) => cost),
    colLower: columns.map(({ bounds }) => bounds.low),
    colUpper: columns.map(({ bounds }) => bounds.high),
    rowLower: rows.map(({ bounds }) => bounds.low),
    rowUpper: rows.map(({ bounds }) => bounds.high),
    matrix: {
      format: "csr",
      numRows: rows.length,
      numCols: columns.length,
      starts,
      indices: rows.flatMap(({ entries }) => entries.map(({ column }) => column)),
      values: rows.flatMap(({ entries }) => entries.map(({ factor }) => factor)),
    },
    ...(columns.some(({ whole }) => whole)
      ? { integrality: columns.map(({ whole }) => (whole ? integer : continuous)) }
      : {}),
  };
}
