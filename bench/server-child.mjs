import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const main = fileURLToPath(new URL("../packages/server/bundle/main.js", import.meta.url));

/** Does something with a new folder of its own, which is gone afterwards. */
export async function inNewFolder(work) {
  const folder = mkdtempSync(join(tmpdir(), "ferrule-bench-"));
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The built server as a process of its own, and how long it was from its start until it said where it is. */
export async function startServer(dataFolder, env = {}, nodeOptions = []) {
  const began = performance.now();
  const child = spawn(process.execPath, [...nodeOptions, main], {
    env: {
      ...process.env,
      ...{ FERRULE_PORT: "0", FERRULE_DATA: dataFolder, FERRULE_BACKUPS: "0", FERRULE_NETWORK: "0" },
      ...env,
    },
    stdio: ["ignore", "pipe", "inherit"],
  });
  const ended = once(child, "exit");
  const address = await new Promise((resolve, reject) => {
    let said = "";
    child.stdout.setEncoding("utf8").on("data", (text) => {
      said += text;
      const found = /http:\/\/127\.0\.0\.1:\d+/.exec(said);
      if (found) resolve(found[0]);
    });
    child.once("exit", () => reject(new Error(`the server ended before it served: ${said}`)));
  });
  const stop = async () => {
    if (child.exitCode === null && child.signalCode === null) child.kill("SIGTERM");
    await ended;
  };
  return { address, pid: child.pid, began, listeningMs: performance.now() - began, stop };
}

/** Puts these parts and joints on the bench, as somebody would who imports files. */
export async function importBench(address, { parts, joints }) {
  // A body may have eight megabytes, and joints name parts that have to be there.
  for (let from = 0; from < parts.length; from += 2000)
    await take(address, { parts: parts.slice(from, from + 2000) });
  for (let from = 0; from < joints.length; from += 2000)
    await take(address, { parts: [], joints: joints.slice(from, from + 2000) });
}

async function take(address, contents) {
  const text = JSON.stringify(contents);
  const { refused } = await sent(address, "POST", "/api/bench/import", {
    format: "json",
    text,
    take: "all-or-none",
  });
  if (refused.length > 0) throw new Error(`the bench was not taken: ${JSON.stringify(refused[0])}`);
}

export async function sent(address, method, path, body) {
  const headers = body === undefined ? {} : { "content-type": "application/json" };
  const answer = await fetch(address + path, { method, headers, body: body && JSON.stringify(body) });
  if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${await answer.text()}`);
  return answer.json();
}
