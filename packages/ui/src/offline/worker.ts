import { dayText } from "../format/today.ts";
import type { JudgeRequest } from "../trade-api.ts";
import { answerFrom } from "./answer.ts";
import { type Entering, enterOffline, newId } from "./enter-offline.ts";
import { isQuestion } from "./is-question.ts";
import { judgeOffline } from "./judge-offline.ts";
import { type Kept, openKept } from "./kept.ts";
import { OfflineProblem } from "./offline-problem.ts";
import { sendWaiting } from "./send-waiting.ts";
import { settle } from "./settle.ts";
import type { Snapshot } from "./snapshot.ts";
import type { WaitingChange } from "./waiting-change.ts";
import { withChanges } from "./with-changes.ts";
import type { Asked, FromWorker, KeptUp, ToWorker } from "./worker-messages.ts";

const port = self as unknown as {
  postMessage(message: FromWorker): void;
  onmessage: ((event: MessageEvent<ToWorker>) => void) | null;
};

/** Does one thing after another, so that what is read holds until what follows from it is written. */
export function main(): void {
  const kept = openKept();
  let before: Promise<unknown> = Promise.resolve();
  port.onmessage = ({ data }) => {
    before = before.then(async () => {
      const answer = await kept
        .then((open) => doTask(open, data))
        .then(
          (value) => ({ ok: true, value }) as const,
          (error: unknown) => ({ ok: false, ...problemOf(error) }) as const,
        );
      port.postMessage({ number: data.number, answer });
    });
  };
}

function problemOf(error: unknown) {
  if (error instanceof OfflineProblem) {
    const { code, message, refusals } = error;
    return { code, message, refusals };
  }
  return { code: "our-bug", message: `Something went wrong here: ${String(error)}`, refusals: [] };
}

function doTask(kept: Kept, task: ToWorker): Promise<unknown> {
  if (task.do === "keep-up") return keepUp(kept, task.isLost);
  if (task.do === "changes") return kept.changes();
  if (task.do === "settle") return settle(kept, task.place, task.how);
  return answer(kept, task);
}

/** Sends what waits, then fetches what has changed. One page at a time does it. */
async function keepUp(kept: Kept, isLost: boolean): Promise<KeptUp> {
  const done = isLost ? undefined : await navigator.locks.request("ferrule-keep-up", () => upToDate(kept));
  const [changes, snapshot] = await Promise.all([kept.changes(), kept.snapshot()]);
  const isOnItsWay = ({ state }: WaitingChange) => state === "waiting";
  return {
    asOf: snapshot?.asOf ?? null,
    waiting: changes.filter(isOnItsWay).length,
    toSettle: changes.filter((change) => !isOnItsWay(change)).length,
    sent: done?.count ?? 0,
    renamed: done?.renamed ?? [],
    isPaired: done?.stopped !== "not-paired",
  };
}

async function upToDate(kept: Kept) {
  const sent = await sendWaiting(kept, (path, init) => fetch(path, init));
  const last = await kept.snapshot();
  const since = last ? `?since=${encodeURIComponent(last.stamp)}` : "";
  const reply = await fetch(`/api/snapshot${since}`).catch(() => undefined);
  if (!reply?.ok) return reply?.status === 401 ? { ...sent, stopped: "not-paired" as const } : sent;
  const { stamp, snapshot } = (await reply.json()) as { stamp: string; snapshot: Snapshot | null };
  const asOf = new Date().toISOString();
  if (snapshot) await kept.keepSnapshot({ stamp, asOf, snapshot });
  else await kept.stillHolds(asOf);
  return sent;
}

async function answer(kept: Kept, asked: Asked): Promise<unknown> {
  const [last, changes] = await Promise.all([kept.snapshot(), kept.changes()]);
  if (last === undefined)
    throw new OfflineProblem("unreachable", "The bench cannot be reached. Is Ferrule still running?");
  const world = withChanges(last.snapshot, changes);
  const { method, path, body } = asked;
  if (path === "/api/judge") return judged(kept, world, last.asOf, asked);
  return isQuestion(method, path)
    ? answerFrom(world, method, path, body)
    : enterOffline(kept, world, asked, new Date());
}

async function judged(kept: Kept, world: Snapshot, asOf: string, asked: Asked): Promise<unknown> {
  const request = asked.body as JudgeRequest;
  const now = new Date();
  const { known, ...reply } = judgeOffline(world, request, dayText(now), asOf, () => newId("sighting"));
  if (reply.sighting === null) return reply;
  const change: Entering = known
    ? {
        ...asked,
        method: "PUT",
        path: `/api/sightings/${encodeURIComponent(known.id)}`,
        body: reply.sighting,
      }
    : { ...asked, method: "POST", path: "/api/sightings", body: reply.sighting };
  const sighting = await enterOffline(kept, world, change, now);
  return { ...reply, sighting };
}

main();
