import { type ChildProcess, fork } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";

const spare = fileURLToPath(new URL("./spare-server.test-kit.mjs", import.meta.url));

/** Servers in processes of their own, one after the other; the next has read its code while the one before still serves. */
export interface ServerRow {
  /** Starts the next one and returns its address; rejects with what it said where it ends before it has one. */
  start(dataFolder: string): Promise<string>;
  /** Where the present one is. */
  address(): Promise<string>;
  /** Ends the present one at once, as a crash would: by SIGKILL. */
  kill(): Promise<void>;
  /** Ends all of them. */
  end(): Promise<void>;
}

/** A row of the server whose built `main.js` this is. */
export function serverRow(mainModule: string): ServerRow {
  let waiting = forkSpare(mainModule);
  let present: { readonly child: ChildProcess; readonly address: Promise<string> } | undefined;
  const kill = async () => {
    if (present) await killed(present.child);
    present = undefined;
  };
  return {
    start: async (dataFolder) => {
      const { child, ready } = waiting;
      await ready;
      waiting = forkSpare(mainModule);
      present = { child, address: addressOf(child) };
      child.send({ FERRULE_PORT: "0", FERRULE_DATA: dataFolder, FERRULE_BACKUPS: "0" });
      return present.address;
    },
    address: async () => {
      if (present === undefined) throw new Error("No server has been started");
      return present.address;
    },
    kill,
    end: async () => {
      await kill();
      await killed(waiting.child);
    },
  };
}

function forkSpare(mainModule: string) {
  const child = fork(spare, [mainModule], { stdio: ["ignore", "pipe", "pipe", "ipc"] });
  return { child, ready: once(child, "message") };
}

async function killed(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const exit = once(child, "exit");
  child.kill("SIGKILL");
  await exit;
}

function addressOf(child: ChildProcess): Promise<string> {
  let said = "";
  const address = new Promise<string>((resolve, reject) => {
    const hear = (text: string) => {
      said += text;
      const found = /http:\/\/127\.0\.0\.1:\d+/.exec(said);
      if (found) resolve(found[0]);
    };
    child.stdout?.setEncoding("utf8").on("data", hear);
    child.stderr?.setEncoding("utf8").on("data", hear);
    child.once("exit", () => reject(new Error(`The server ended before it served: ${said}`)));
  });
  // Whoever kills a server does not wait for its address.
  address.catch(() => {});
  return address;
}
