import type { Joint, Part } from "@ferrule/core";

/** The clubs that are put together: every head with all that is joined to it, the head first. Heads by themselves are none. */
export function clubsOnBench(
  parts: readonly Part[],
  joints: readonly Joint[],
): readonly (readonly string[])[] {
  const here = new Set(parts.map(({ id }) => id));
  const made = joints.filter(({ parts: [one, other] }) => here.has(one) && here.has(other));
  return parts
    .filter(({ kind }) => kind === "head")
    .map(({ id }) => joinedTo(id, made))
    .filter((ids) => ids.some((id) => parts.find((part) => part.id === id)?.kind === "shaft"));
}

function joinedTo(id: string, joints: readonly Joint[]): string[] {
  const found = [id];
  for (const at of found)
    for (const { parts } of joints) {
      const other = parts[0] === at ? parts[1] : parts[1] === at ? parts[0] : undefined;
      if (other !== undefined && !found.includes(other)) found.push(other);
    }
  return found;
}
