import type { Joint } from "@ferrule/core";
import { listPlace, thingsOf } from "./lists.ts";
import type { Snapshot } from "./snapshot.ts";
import type { Thing, WaitingChange } from "./waiting-change.ts";

/** A snapshot as it will be once all that waits has been taken. */
export function withChanges(snapshot: Snapshot, changes: readonly WaitingChange[]): Snapshot {
  return changes.reduce(withChange, snapshot);
}

function withChange(snapshot: Snapshot, { path, method, body, id }: WaitingChange): Snapshot {
  const at = listPlace(path);
  if (at === undefined) return snapshot;
  const things = thingsOf(snapshot, at.list);
  const put = (next: readonly Thing[]) => ({ ...snapshot, [at.list.name]: next });
  if (at.about === "buy")
    return put(things.map((thing) => (thing["id"] === id ? { ...thing, outcome: "bought" } : thing)));
  const others = things.filter((thing) => thing["id"] !== id);
  if (method === "DELETE") return withoutJoints(put(others), at.list.name === "parts" ? id : undefined);
  const thing = { ...(body as Thing), id };
  return put(
    others.length === things.length
      ? [...things, thing]
      : things.map((each) => (each["id"] === id ? thing : each)),
  );
}

/** A part that goes takes its joints with it. */
function withoutJoints(snapshot: Snapshot, part: string | undefined): Snapshot {
  if (part === undefined) return snapshot;
  const isLeft = ({ parts }: Joint) => !parts.includes(part);
  return { ...snapshot, joints: snapshot.joints.filter(isLeft) };
}
