/** So many columns of single parts are the most that is worth building for the plain model. */
const mostPlainColumns = 400_000;

/** The plan as one writes it down first: every part a thing of its own, and a yes or no for every club of such parts. */
export function plainModel(model) {
  const single = new Map(model.resources.map(({ id }) => [id, []]));
  const resources = [];
  const make = (id) => {
    const one = `${id} #${single.get(id).length}`;
    single.get(id).push(one);
    return one;
  };
  for (const { id, count } of model.resources)
    for (let at = 0; at < count; at += 1) resources.push({ id: make(id), count: 1 });
  const bundles = model.bundles.map((bundle) => ({
    ...bundle,
    gives: bundle.gives.map(({ resource }) => {
      const one = make(resource);
      resources.push({ id: one, count: 0 });
      return { resource: one, count: 1 };
    }),
  }));
  const columns = model.uses.reduce(
    (sum, { takes }) =>
      sum + takes.reduce((product, { resource }) => product * single.get(resource).length, 1),
    0,
  );
  if (columns > mostPlainColumns) return { columns, model: null };
  const uses = model.uses.flatMap((use) =>
    combinations(use.takes.map(({ resource }) => single.get(resource))).map((parts, at) => ({
      ...use,
      id: `${use.id} #${at}`,
      takes: parts.map((resource) => ({ resource, count: 1 })),
    })),
  );
  return { columns, model: { ...model, resources, bundles, uses } };
}

function combinations([first, ...rest]) {
  if (first === undefined) return [[]];
  const tails = combinations(rest);
  return first.flatMap((one) => tails.map((tail) => [one, ...tail]));
}
