import { minorDigits, roundMinor } from "../money.ts";
import { titleOfPart } from "../worth/titles.ts";
import type { MeaningfulUse } from "./meaningful-use.ts";
import { titleOfOffer } from "./offers.ts";
import { planActions } from "./plan-actions.ts";
import type { PlanInput, PlanWishes } from "./plan-input.ts";
import type { Bundle, PlanChoice, PlanModel, PlanSolution } from "./plan-model.ts";
import type { Plan, PlanAction, PlanBinding } from "./plan-result.ts";
import { type PlanGround, type PlanSetup, planGround, setupWithin } from "./plan-setup.ts";

/** Whatever solves a plan's model, from a choice that is known to be good where there is one: here, in a thread, or by trying. */
export type SolveModel = (model: PlanModel, start?: PlanChoice) => Promise<PlanSolution>;

/**
 * What to do with the whole bench and everything on offer: what to buy, build, sell and keep waiting, within the user's
 * limits, with a bound that no plan exceeds. Each part is used once, a listing is bought whole, and one drive fetches all
 * that is at one place. Throws when the bench does not hold together.
 */
export async function planBench(input: PlanInput, solve: SolveModel): Promise<Plan> {
  return planOn(planGround(input), input.wishes, solve);
}

/**
 * The same on a ground that is made already, so that other limits cost no more than another solve. `withNextBest` false leaves
 * out the plan that is next best, which is several solves more.
 */
export async function planOn(
  ground: PlanGround,
  wishes: PlanWishes,
  solve: SolveModel,
  withNextBest = true,
): Promise<Plan> {
  const setup = setupWithin(ground, wishes);
  const solution = await solve(setup.lean);
  const { actions, kept } = planActions(solution.choice, setup);
  const netMinor = netOf(actions);
  return {
    actions,
    kept,
    currency: ground.context.costs.currency,
    netMinor,
    outlayMinor: actions.reduce((sum, { outlayMinor }) => sum + outlayMinor, 0),
    minutes: actions.reduce((sum, { minutes }) => sum + minutes, 0),
    boundMinor: netMinor + solution.boundMinor - solution.netMinor,
    gap: solution.gap,
    stopped: solution.stopped,
    binding: solution.binding.flatMap((each) => bindingOf(each, setup) ?? []).slice(0, bindingsShown),
    leftOut: setup.leftOut,
    nextBest: withNextBest ? await nextBest(solution, setup, solve) : null,
  };
}

const netOf = (actions: readonly PlanAction[]) => actions.reduce((sum, action) => sum + action.netMinor, 0);

/** What binds most comes first; more than a few tell nothing. */
const bindingsShown = 8;

function bindingOf(
  { limit, worthMinor }: PlanSolution["binding"][number],
  setup: PlanSetup,
): PlanBinding | undefined {
  const unit = 10 ** minorDigits(setup.context.costs.currency);
  if (limit === "budget") return { limit, text: "the budget", worthMinor: roundMinor(worthMinor * unit) };
  if (limit === "minutes") return { limit, text: "your hours", worthMinor: roundMinor(worthMinor * 60) };
  const kind = limit.startsWith("kind:") ? limit.slice("kind:".length) : undefined;
  // How many can wait for one want is not the user's to say.
  if (kind !== undefined && !(kind in setup.wishes.mostOfType)) return undefined;
  if (kind !== undefined)
    return { limit: "clubs-of-type", text: `clubs of the type ${kind}`, worthMinor: roundMinor(worthMinor) };
  const [type, at] = limit.split(".");
  const part = setup.types.find(({ id }) => id === type)?.parts[Number(at)];
  return part && { limit: "part", text: titleOfPart(part), worthMinor: roundMinor(worthMinor) };
}

/** Decisions that give a plan its character, the weightiest first: what is bought, and what is built. */
const decisionsTried = 4;

interface Decision {
  readonly title: string;
  readonly isPartOf: (id: string) => boolean;
}

/** The best plan in which one of the most telling decisions of this one is not taken. */
async function nextBest(
  solution: PlanSolution,
  setup: PlanSetup,
  solve: SolveModel,
): Promise<Plan["nextBest"]> {
  let best: Plan["nextBest"] = null;
  let bestMinor = Number.NEGATIVE_INFINITY;
  for (const { title, isPartOf } of decisionsOf(solution, setup)) {
    const { uses, bundles } = setup.model;
    const other = await solve({
      ...setup.model,
      uses: uses.filter(({ id }) => !isPartOf(id)),
      bundles: bundles.filter(({ id }) => !isPartOf(id)),
    });
    if (bestMinor >= other.netMinor) continue;
    const { actions } = planActions(other.choice, setup);
    bestMinor = other.netMinor;
    best = { netMinor: netOf(actions), without: title, actions };
  }
  return best;
}

function decisionsOf({ choice }: PlanSolution, setup: PlanSetup): Decision[] {
  const bought = setup.offers
    .filter(({ id }) => choice.bundles.includes(id))
    .sort((one, other) => other.priceMinor - one.priceMinor)
    .map((offer) => {
      const alike = alikeBundles(offer.id, setup);
      return { title: titleOfOffer(offer), isPartOf: (other: string) => alike.has(other) };
    });
  const built = Object.keys(choice.uses)
    .flatMap((id) => setup.uses.get(id) ?? [])
    .filter((use) => use.do === "build")
    .sort((one, other) => other.netMinor - one.netMinor)
    .map((use) => ({ title: use.title, isPartOf: (id: string) => isSameClub(use, setup.uses.get(id)) }));
  // Half of each, and where there are fewer of one, more of the other.
  const half = decisionsTried / 2;
  const firstBought = bought.slice(0, Math.max(half, decisionsTried - built.length));
  return [...firstBought, ...built].slice(0, decisionsTried);
}

/** To buy the same things of somebody else is the same decision. */
function alikeBundles(id: string, { model }: PlanSetup): ReadonlySet<string> {
  const givesOf = ({ gives }: Bundle) => JSON.stringify(gives);
  const own = model.bundles.find((bundle) => bundle.id === id);
  return new Set(model.bundles.flatMap((each) => (own && givesOf(each) === givesOf(own) ? each.id : [])));
}

/** The same head on the same shaft is the same decision, whatever the grip. */
function isSameClub(one: MeaningfulUse, other: MeaningfulUse | undefined): boolean {
  return one.club?.head === other?.club?.head && one.club?.shaft === other?.club?.shaft;
}
