import type { Part, PlanAction } from "@ferrule/core";

export type Role = "head" | "adapter" | "shaft" | "grip";

/** A part in a club of the plan, and where it comes from. */
export interface RolePart {
  readonly role: Role;
  /** Null where it is still to be found. */
  readonly id: string | null;
  readonly part: Part | undefined;
  /** The listing it is bought with. */
  readonly sighting: string | undefined;
}

const roles: readonly Role[] = ["head", "adapter", "shaft", "grip"];

/** The parts of a club that is built, or waited for, from the head to the grip. */
export function clubRoles(
  action: PlanAction,
  parts: ReadonlyMap<string, Part>,
  boughtWith: ReadonlyMap<string, string>,
): RolePart[] {
  const found = action.parts.flatMap((id): RolePart[] => {
    const part = parts.get(id);
    const role = part?.kind ?? kindInName(id);
    const sighting = boughtWith.get(id);
    return isRole(role) ? [{ role, id, part, sighting }] : [];
  });
  const wanted = wantedRole(action);
  const missing = wanted ? [{ role: wanted, id: null, part: undefined, sighting: undefined }] : [];
  return [...found, ...missing].sort((one, other) => roles.indexOf(one.role) - roles.indexOf(other.role));
}

/** Which listing each bought part comes with. */
export function boughtParts(actions: readonly PlanAction[]): Map<string, string> {
  return new Map(
    actions
      .filter((action) => action.do === "buy")
      .flatMap(({ parts, sightings: [sighting] }) =>
        sighting === undefined ? [] : parts.map((id) => [id, sighting] as const),
      ),
  );
}

/** Parts of a listing are named for their kind: "offer-L41-head", "offer-L41-shaft-2". */
function kindInName(id: string): string | undefined {
  return /-([a-z]+)(?:-\d+)?$/.exec(id)?.[1];
}

const isRole = (role: string | undefined): role is Role => roles.some((one) => one === role);

/** A want is named for the kind of part that is missing: 'shaft {"suits":"wood"}'. */
function wantedRole({ waitsFor }: PlanAction): Role | undefined {
  const kind = waitsFor?.want.split(" ")[0];
  return isRole(kind) ? kind : undefined;
}
