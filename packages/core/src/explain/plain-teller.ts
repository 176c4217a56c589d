import { swingWeightLabel } from "../measure/physics/swing-weight.ts";
import type { Part } from "../parts/part.ts";
import type { Role, Teller } from "../rules/rule.ts";

/** How numbers are written where nobody has said otherwise: inches to four places at most, masses and angles to one or two, a swing weight by its letter. */
export const plainFormats: Omit<Teller, "part"> = {
  inches: (valueIn) => `${trimmed(valueIn, 4)} in`,
  grams: (valueG) => `${trimmed(valueG, 1)} g`,
  degrees: (valueDeg) => `${trimmed(valueDeg, 2)}°`,
  points: swingWeightLabel,
};

function trimmed(value: number, places: number): string {
  return String(Number(value.toFixed(places)));
}

/** A part by what somebody would call it: kind, id, and maker and model where they are known. */
export function partName(part: Part): string {
  const names = [part.maker, part.model].filter((name) => name !== undefined).join(" ");
  return names === "" ? `${part.kind} ${part.id}` : `${part.kind} ${part.id} (${names})`;
}

/** A teller for the parts in these roles. */
export function plainTeller(partIn: (role: Role) => Part | undefined): Teller {
  return {
    ...plainFormats,
    part: (role) => {
      const part = partIn(role);
      return part ? `the ${partName(part)}` : `the ${role}`;
    },
  };
}
