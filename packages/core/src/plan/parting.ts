import { partName } from "../explain/plain-teller.ts";
import { sayStep } from "../explain/say-step.ts";
import { joinKindOf } from "../graph/shape.ts";
import { skills } from "../parts/goal.ts";
import type { Joint } from "../parts/joint.ts";
import type { Part } from "../parts/part.ts";
import type { Reference } from "../parts/reference.ts";
import type { PlainClub } from "../resolve/club.ts";
import type { WorkStep } from "../resolve/result.ts";
import type { CostSettings } from "../worth/cost-settings.ts";
import { titleOfPart } from "../worth/titles.ts";
import { type WorkCost, workCost } from "../worth/work-cost.ts";
import type { Bundle, Resource, Share } from "./plan-model.ts";
import type { StockType } from "./stock.ts";

/** A joint, and what undoing it takes. Whoever wants only one side needs it undone; it is undone and paid once for both. */
export interface Parting {
  readonly type: StockType;
  /** The joined parts; of a head's joint the head is the one. */
  readonly one: Part;
  readonly other: Part;
  readonly title: string;
  readonly step: WorkStep;
  readonly cost: WorkCost;
}

/** What joints cost to undo, and with which skill that may be done. */
export interface PartingTerms {
  readonly skill: WorkStep["skill"];
  readonly reference: Reference;
  readonly costs: CostSettings;
}

/**
 * The joints that may be undone for more than one use: the head joints of complete clubs, whose pieces may be sold, and those
 * of which some club takes the one side alone and some club the other. Any other undoing belongs to the club that needs it.
 */
export function partingsOf(
  types: readonly StockType[],
  clubs: readonly PlainClub[],
  terms: PartingTerms,
): Parting[] {
  const allowed = skills.indexOf(terms.skill);
  const isShared = sharedJoints(clubs);
  return types
    .flatMap((type) => type.joints.flatMap((joint) => partingOf(joint, type, terms) ?? []))
    .filter(({ step }) => skills.indexOf(step.skill) <= allowed)
    .filter((parting) => isHeadOfClub(parting) || isShared(parting.one, parting.other));
}

export function isHeadOfClub({ type, one }: Parting): boolean {
  return one.kind === "head" && type.parts.some(({ kind }) => kind === "shaft");
}

/** Whether clubs undo the joint of these two for either side of it. */
function sharedJoints(clubs: readonly PlainClub[]): (one: Part, other: Part) => boolean {
  const takers = new Set<string>();
  for (const { head, adapter, shaft, grip, undoes } of clubs) {
    const taken = new Set([head, adapter, shaft, grip]);
    for (const { parts } of undoes) for (const id of parts) if (taken.has(id)) takers.add(takerOf(id, parts));
  }
  return (one, other) => [one, other].every(({ id }) => takers.has(takerOf(id, [one.id, other.id])));
}

const takerOf = (taken: string, parts: readonly string[]) => `${taken} of ${parts.toSorted().join(" and ")}`;

function partingOf(
  { type: jointType, parts: ids }: Joint,
  type: StockType,
  { reference, costs }: PartingTerms,
): Parting | undefined {
  const joined = ids.flatMap((id) => type.parts.find((part) => part.id === id) ?? []);
  const [a, b] = joined;
  if (!a || !b) return undefined;
  const kind = joinKindOf({ type: jointType }, [a.kind, b.kind]);
  if (!kind) return undefined;
  const [one, other] = a.kind === kind.a.place ? [a, b] : [b, a];
  const step = undoingStep(kind.undo, [one, other], reference);
  const title =
    other.kind === "grip"
      ? `take the ${titleOfPart(other)} off the ${titleOfPart(one)}`
      : `take the ${titleOfPart(other)} out of the ${titleOfPart(one)}`;
  return { type, one, other, step, title, cost: workCost([step], costs) };
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

/** A place of the type is free of the part at another one. */
function freed(side: "one" | "other", { type, one, other }: Parting): string {
  const [part, from] = side === "one" ? [one, other] : [other, one];
  return `${type.id} ${type.parts.indexOf(part)} free of ${type.parts.indexOf(from)}`;
}

/** What says that a side of the joint is free: there is none of it until the joint is undone. */
export function freedResources(partings: readonly Parting[]): Resource[] {
  return partings.flatMap((parting) => [
    { id: freed("one", parting), count: 0 },
    { id: freed("other", parting), count: 0 },
  ]);
}

export const partingBundleId = ({ type, one, other }: Parting, number: number) =>
  `apart ${type.id} ${type.parts.indexOf(one)}-${type.parts.indexOf(other)} ${number}`;

/** Undoing the joint of each club there is, as something that is paid and gives both sides free. */
export function partingBundles(partings: readonly Parting[]): Bundle[] {
  return partings.flatMap((parting) =>
    parting.type.instances.map((_, number) => ({
      id: partingBundleId(parting, number),
      gives: [
        { resource: freed("one", parting), count: 1 },
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
export function sideTaken(parts: ReadonlySet<string>, { one, other }: Parting): "one" | "other" | undefined {
  if (parts.has(one.id) === parts.has(other.id)) return undefined;
  return parts.has(one.id) ? "one" : "other";
}

/** Whether a step of other work undoes this joint. */
export const isUndoing = ({ step, parts }: WorkStep, parting: Parting) =>
  step === parting.step.step && parting.step.parts.every((id) => parts.includes(id));
