import { partName } from "../explain/plain-teller.ts";
import { sayStep } from "../explain/say-step.ts";
import { skills } from "../parts/goal.ts";
import type { Part } from "../parts/part.ts";
import type { Reference } from "../parts/reference.ts";
import type { WorkStep } from "../resolve/result.ts";
import type { CostSettings } from "../worth/cost-settings.ts";
import { titleOfPart } from "../worth/titles.ts";
import { type WorkCost, workCost } from "../worth/work-cost.ts";
import type { Bundle, Resource, Share } from "./plan-model.ts";
import type { StockType } from "./stock.ts";

/**
 * The joint that holds the head of a complete club, and what undoing it takes. Whoever wants only the head, or only what is on
 * the other side, needs it undone; it is undone and paid once for both.
 */
export interface Parting {
  readonly type: StockType;
  readonly head: Part;
  /** What is joined to the head: its adapter, or the shaft itself. */
  readonly other: Part;
  readonly title: string;
  readonly step: WorkStep;
  readonly cost: WorkCost;
}

/** The head joints of all complete clubs that may be undone with this skill. */
export function partingsOf(
  types: readonly StockType[],
  { skill, reference, costs }: { skill: WorkStep["skill"]; reference: Reference; costs: CostSettings },
): Parting[] {
  const allowed = skills.indexOf(skill);
  return types
    .flatMap((type) => partingOf(type, reference, costs) ?? [])
    .filter(({ step }) => skills.indexOf(step.skill) <= allowed);
}

function partingOf(type: StockType, reference: Reference, costs: CostSettings): Parting | undefined {
  const head = type.parts.find(({ kind }) => kind === "head");
  const joint = type.joints.find(({ type, parts }) => type !== "gripped" && parts.includes(head?.id ?? ""));
  const other = type.parts.find(({ id }) => id !== head?.id && joint?.parts.includes(id));
  if (!head || !joint || !other || !type.parts.some(({ kind }) => kind === "shaft")) return undefined;
  const step = undoingStep(joint.type === "screwed" ? "unscrew" : "pull-head", [head, other], reference);
  return {
    ...{ type, head, other, step, cost: workCost([step], costs) },
    title: `take the ${titleOfPart(other)} out of the ${titleOfPart(head)}`,
  };
}

/** A step of the work table done to these parts. A table without the step, or without a caution of it, is our bug. */
function undoingStep(name: string, parts: readonly Part[], { work, cautions }: Reference): WorkStep {
  const row = work.find(({ step }) => step === name);
  if (!row) throw new Error(`no row in the work table for "${name}"`);
  const { step, minutes, waitMinutes, costMinor, skill } = row;
  return {
    ...{ step, minutes, waitMinutes, costMinor, skill, data: {} },
    parts: parts.map(({ id }) => id),
    cautions: row.cautions.map((code) => {
      const caution = cautions.find((each) => each.code === code);
      if (!caution) throw new Error(`no row in the caution table for "${code}"`);
      return { code, text: caution.text };
    }),
    text: sayStep(row, parts.map(partName), {}),
  };
}

const freed = (side: "head" | "other", { type }: Parting) => `${type.id} freed ${side}`;

/** What says that a side of the joint is free: there is none of it until the joint is undone. */
export function freedResources(partings: readonly Parting[]): Resource[] {
  return partings.flatMap((parting) => [
    { id: freed("head", parting), count: 0 },
    { id: freed("other", parting), count: 0 },
  ]);
}

export const partingBundleId = ({ type }: Parting, number: number) => `apart ${type.id} ${number}`;

/** Undoing the joint of each club there is, as something that is paid and gives both sides free. */
export function partingBundles(partings: readonly Parting[]): Bundle[] {
  return partings.flatMap((parting) =>
    parting.type.instances.map((_, number) => ({
      id: partingBundleId(parting, number),
      gives: [
        { resource: freed("head", parting), count: 1 },
        { resource: freed("other", parting), count: 1 },
      ],
      priceMinor: parting.cost.materialMinor,
      minutes: parting.cost.minutes,
      timeMinor: parting.cost.timeMinor,
    })),
  );
}

/** The free sides that taking these parts asks for: the one that is taken where the other stays behind. */
export function freedShares(parts: ReadonlySet<string>, partings: readonly Parting[]): Share[] {
  return partings.flatMap((parting) => {
    const side = sideTaken(parts, parting);
    return side ? [{ resource: freed(side, parting), count: 1 }] : [];
  });
}

/** The side of the joint that these parts take alone. */
export function sideTaken(
  parts: ReadonlySet<string>,
  { head, other }: Parting,
): "head" | "other" | undefined {
  if (parts.has(head.id) === parts.has(other.id)) return undefined;
  return parts.has(head.id) ? "head" : "other";
}

/** Whether a step of other work undoes this joint. */
export const isUndoing = ({ step, parts }: WorkStep, parting: Parting) =>
  step === parting.step.step && parting.step.parts.every((id) => parts.includes(id));
