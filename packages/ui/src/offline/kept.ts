import type { Snapshot } from "./snapshot.ts";
import type { WaitingChange } from "./waiting-change.ts";

/** What this browser keeps for when there is no signal. */
export interface Kept {
  snapshot(): Promise<KeptSnapshot | undefined>;
  keepSnapshot(kept: KeptSnapshot): Promise<void>;
  /** The bench says that the snapshot is how it still is: notes when, without writing all of it again. */
  stillHolds(asOf: string): Promise<void>;
  /** In the order in which it was entered. */
  changes(): Promise<WaitingChange[]>;
  /** Puts a change last, or makes more of the one that waits last, as `join` says. */
  add(
    change: Omit<WaitingChange, "place">,
    join: (last: WaitingChange) => WaitingChange | undefined,
  ): Promise<void>;
  put(change: WaitingChange): Promise<void>;
  drop(place: number): Promise<void>;
}

export interface KeptSnapshot {
  readonly stamp: string;
  /** When the bench last said that this is how it is, as an ISO 8601 moment. */
  readonly asOf: string;
  readonly snapshot: Snapshot;
}

/** Opens the browser's own database. Rejected where the browser has none, as in some private windows. */
export async function openKept(): Promise<Kept> {
  const database = await opened();
  const store = (name: "snapshot" | "changes", mode: IDBTransactionMode) => {
    const transaction = database.transaction(name, mode, { durability: "strict" });
    return { store: transaction.objectStore(name), done: finished(transaction) };
  };
  const write = async (name: "snapshot" | "changes", work: (store: IDBObjectStore) => unknown) => {
    const { store: open, done } = store(name, "readwrite");
    work(open);
    await done;
  };
  return {
    snapshot: async () => {
      const { store: open } = store("snapshot", "readonly");
      const [last, asOf] = await Promise.all([
        asked<KeptSnapshot | undefined>(open.get("last")),
        asked<string | undefined>(open.get("as-of")),
      ]);
      return last && { ...last, asOf: asOf ?? last.asOf };
    },
    keepSnapshot: (kept) =>
      write("snapshot", (open) => {
        open.put(kept, "last");
        open.put(kept.asOf, "as-of");
      }),
    stillHolds: (asOf) => write("snapshot", (open) => open.put(asOf, "as-of")),
    changes: () => asked<WaitingChange[]>(store("changes", "readonly").store.getAll()),
    add: async (change, join) => {
      const { store: open, done } = store("changes", "readwrite");
      const all = await asked<WaitingChange[]>(open.getAll());
      const last = all.findLast(({ list, id }) => list === change.list && id === change.id);
      const joined = last && join(last);
      open.put(joined ?? { ...change, place: 1 + (all.at(-1)?.place ?? 0) });
      await done;
    },
    put: (change) => write("changes", (open) => open.put(change)),
    drop: (place) => write("changes", (open) => open.delete(place)),
  };
}

function opened(): Promise<IDBDatabase> {
  const request = indexedDB.open("ferrule", 1);
  request.onupgradeneeded = () => {
    request.result.createObjectStore("snapshot");
    request.result.createObjectStore("changes", { keyPath: "place" });
  };
  return asked(request);
}

function asked<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

function finished(transaction: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error);
    transaction.onerror = () => reject(transaction.error);
  });
}
