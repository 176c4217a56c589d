import fc from "fast-check";
import type {
  Bundle,
  PlanModel,
  PlanTrip,
  Resource,
  Share,
  Use,
} from "../../packages/core/src/plan/plan-model.ts";

const ids = (letter: string, count: number) => Array.from({ length: count }, (_, at) => `${letter}${at}`);

const shares = (resources: readonly string[], most: number): fc.Arbitrary<Share[]> =>
  fc
    .uniqueArray(fc.constantFrom(...resources), { minLength: 1, maxLength: most })
    .chain((chosen) =>
      fc.tuple(
        ...chosen.map((resource) =>
          fc.record({ resource: fc.constant(resource), count: fc.integer({ min: 1, max: 2 }) }),
        ),
      ),
    );

const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });

/** Models small enough to try everything, with counts, bundles, trips, a budget, minutes and kinds. */
export const smallPlan: fc.Arbitrary<PlanModel> = fc
  .record({
    resources: fc.integer({ min: 2, max: 5 }),
    uses: fc.integer({ min: 1, max: 7 }),
    bundles: fc.integer({ min: 0, max: 4 }),
    trips: fc.integer({ min: 1, max: 2 }),
  })
  .chain((sizes) => {
    const names = ids("r", sizes.resources);
    const resource = (id: string): fc.Arbitrary<Resource> =>
      fc.record({ id: fc.constant(id), count: fc.integer({ min: 0, max: 3 }) });
    const use = (id: string): fc.Arbitrary<Use> =>
      fc
        .record({
          takes: shares(names, 3),
          netMinor: fc.integer({ min: -5, max: 60 }),
          minutes: fc.integer({ min: 0, max: 20 }),
          outlayMinor: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 15 })),
          kind: maybe(fc.constantFrom("k0", "k1")),
        })
        .map(({ kind, ...rest }) => ({ id, ...rest, ...(kind === undefined ? {} : { kind }) }));
    const bundle = (id: string): fc.Arbitrary<Bundle> =>
      fc
        .record({
          gives: shares(names, 3),
          priceMinor: fc.integer({ min: 0, max: 40 }),
          minutes: fc.integer({ min: 0, max: 10 }),
          timeMinor: fc.integer({ min: 0, max: 5 }),
          trip: maybe(fc.constantFrom(...ids("t", sizes.trips))),
        })
        .map(({ trip, ...rest }) => ({ id, ...rest, ...(trip === undefined ? {} : { trip }) }));
    const trip = (id: string): fc.Arbitrary<PlanTrip> =>
      fc.record({
        id: fc.constant(id),
        moneyMinor: fc.integer({ min: 0, max: 20 }),
        minutes: fc.integer({ min: 0, max: 15 }),
        timeMinor: fc.integer({ min: 0, max: 10 }),
      });
    return fc.record({
      resources: fc.tuple(...names.map(resource)),
      uses: fc.tuple(...ids("u", sizes.uses).map(use)),
      bundles: fc.tuple(...ids("b", sizes.bundles).map(bundle)),
      trips: fc.tuple(...ids("t", sizes.trips).map(trip)),
      limits: fc.record({
        budgetMinor: fc.option(fc.integer({ min: 0, max: 80 })),
        minutes: fc.option(fc.integer({ min: 0, max: 60 })),
        mostOfKind: fc.dictionary(fc.constantFrom("k0", "k1"), fc.integer({ min: 0, max: 3 })),
      }),
    });
  });
