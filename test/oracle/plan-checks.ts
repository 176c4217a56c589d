import type { PlanChoice, PlanModel } from "../../packages/core/src/plan/plan-model.ts";

/** What a choice brings and everything it breaks, counted from the model as it was given. */
export function weighChoice(
  model: PlanModel,
  { uses, bundles }: PlanChoice,
): { net: number; breaks: string[] } {
  const stock = new Map(model.resources.map(({ id, count }) => [id, count]));
  const kinds = new Map<string, number>();
  const breaks: string[] = [];
  let [net, minutes, money] = [0, 0, 0];
  if (new Set(bundles).size !== bundles.length) breaks.push("a bundle is bought twice");
  const bought = bundles.map((id) => model.bundles.find((bundle) => bundle.id === id)!);
  for (const bundle of bought) {
    for (const { resource, count } of bundle.gives) stock.set(resource, stock.get(resource)! + count);
    net -= bundle.priceMinor + bundle.timeMinor;
    minutes += bundle.minutes;
    money += bundle.priceMinor;
  }
  for (const id of new Set(bought.flatMap(({ trip }) => trip ?? []))) {
    const trip = model.trips.find((one) => one.id === id)!;
    net -= trip.moneyMinor + trip.timeMinor;
    minutes += trip.minutes;
    money += trip.moneyMinor;
  }
  for (const [id, times] of Object.entries(uses)) {
    const use = model.uses.find((one) => one.id === id)!;
    if (!Number.isInteger(times) || times < 1) breaks.push(`${id} is done ${times} times`);
    for (const { resource, count } of use.takes) stock.set(resource, stock.get(resource)! - count * times);
    if (use.kind !== undefined) kinds.set(use.kind, (kinds.get(use.kind) ?? 0) + times);
    net += use.netMinor * times;
    minutes += use.minutes * times;
    money += use.outlayMinor * times;
  }
  for (const [id, left] of stock) if (left < 0) breaks.push(`${-left} too many of ${id}`);
  if (minutes > (model.limits.minutes ?? Infinity)) breaks.push(`${minutes} minutes`);
  if (money > (model.limits.budgetMinor ?? Infinity)) breaks.push(`${money} laid out`);
  for (const [kind, most] of Object.entries(model.limits.mostOfKind))
    if ((kinds.get(kind) ?? 0) > most) breaks.push(`${kinds.get(kind)} of kind ${kind}`);
  return { net, breaks };
}
