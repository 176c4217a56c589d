import { type CostSettings, convertMinor } from "@ferrule/core";

/**
 * The same costs in another currency, of which one unit of the present one is worth `rate`: every amount is converted and
 * rounded once. Rates of other currencies are left to whoever types them in.
 */
export function inCurrency(costs: CostSettings, currency: string, rate: number): CostSettings {
  const to = (minor: number) => convertMinor(minor, costs.currency, currency, rate);
  const orNull = (minor: number | null) => (minor === null ? null : to(minor));
  return {
    ...costs,
    currency,
    hourValueMinor: to(costs.hourValueMinor),
    leastNetMinor: to(costs.leastNetMinor),
    packagingMinor: to(costs.packagingMinor),
    perKmMinor: to(costs.perKmMinor),
    holdingPerWeekMinor: to(costs.holdingPerWeekMinor),
    services: costs.services.map((service) => ({ ...service, priceMinor: to(service.priceMinor) })),
    feeTables: costs.feeTables.map((table) => ({
      ...table,
      listingMinor: to(table.listingMinor),
      tiers: table.tiers.map((tier) => ({ ...tier, upToMinor: orNull(tier.upToMinor) })),
      fixedMinor: to(table.fixedMinor),
      capMinor: orNull(table.capMinor),
      paymentFixedMinor: to(table.paymentFixedMinor),
    })),
    work: Object.fromEntries(
      Object.entries(costs.work).map(([step, { costMinor, ...rest }]) => [
        step,
        { ...rest, ...(costMinor === undefined ? {} : { costMinor: to(costMinor) }) },
      ]),
    ),
  };
}
