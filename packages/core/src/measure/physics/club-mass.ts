import type { ClubComponent } from "./club-component.ts";

/** Mass in grams of everything together. */
export function clubMass(components: readonly Pick<ClubComponent, "massG">[]): number {
  let sumG = 0;
  for (const { massG } of components) sumG += massG;
  return sumG;
}
