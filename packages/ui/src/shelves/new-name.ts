/** A short id made of a name, unlike those that are taken: "an auction site" is "an-auction-site", then "an-auction-site-2". */
export function newName(name: string, taken: readonly string[]): string {
  const base =
    name
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, "-")
      .replace(/^-+|-+$/g, "")
      .slice(0, 60) || "one";
  const names = [base, ...taken.map((_id, at) => `${base}-${at + 2}`)];
  return names.find((one) => !taken.includes(one)) ?? base;
}
