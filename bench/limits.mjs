// How much one process with one SQLite file does, once built: `node bench/limits.mjs` (FOLDER= for another disk). Changes a second, what the
// disk alone would do, how large a bench may be until an answer takes a second. For docs/scale.md.
import { closeSync, fsyncSync, mkdtempSync, openSync, rmSync, writeSync } from "node:fs";
import { Agent, request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { median, timed } from "./measure.mjs";
import { seededBench } from "./seeded-bench.mjs";
import { importBench, startServer } from "./server-child.mjs";

const seconds = 5;
const say = (text) => process.stdout.write(`${text}\n`);

/** How often a second a page of 4 kB is written and forced to the disk: no change that is acknowledged can be quicker. */
function forcedASecond(folder) {
  const file = join(folder, "forced");
  const handle = openSync(file, "w");
  const page = Buffer.alloc(4096, 1);
  let count = 0;
  const began = performance.now();
  while (performance.now() - began < seconds * 1000) {
    writeSync(handle, page, 0, page.length, count * page.length);
    fsyncSync(handle);
    count += 1;
  }
  closeSync(handle);
  return count / seconds;
}

function ask(address, agent, method, path, body) {
  return new Promise((resolve, reject) => {
    const headers = body ? { "content-type": "application/json" } : {};
    const sending = request(address + path, { method, agent, headers }, (answer) => {
      let bytes = 0;
      answer.on("data", (chunk) => {
        bytes += chunk.length;
      });
      answer.once("end", () =>
        answer.statusCode < 300 ? resolve(bytes) : reject(new Error(`${path}: ${answer.statusCode}`)),
      );
    });
    sending.once("error", reject);
    sending.end(body && JSON.stringify(body));
  });
}

/** So many at once, each asking again as soon as it is answered, for some seconds; answers a second of all. */
async function closedLoop(clients, act) {
  let count = 0;
  const until = performance.now() + seconds * 1000;
  const one = async (client) => {
    while (performance.now() < until) {
      await act(client);
      count += 1;
    }
  };
  await Promise.all(Array.from({ length: clients }, (_, client) => one(client)));
  return count / seconds;
}

const folder = mkdtempSync(join(process.env.FOLDER ?? tmpdir(), "ferrule-limits-"));
try {
  say(
    `${Math.round(forcedASecond(folder))} pages a second written and forced to the disk one after the other`,
  );
  for (const parts of [2000, 10_000]) {
    const server = await startServer(join(folder, String(parts)), { FERRULE_REQUESTS_PER_MINUTE: "9999999" });
    const agent = new Agent({ keepAlive: true });
    try {
      const { address } = server;
      await ask(address, agent, "POST", "/api/bench/start-own");
      const bench = seededBench(parts, 1);
      const began = performance.now();
      await importBench(address, bench);
      say(`${parts} parts: taken in within ${((performance.now() - began) / 1000).toFixed(1)} s`);
      const grip = (client, massG) =>
        ask(address, agent, "PUT", `/api/bench/parts/limit-${client}`, {
          id: `limit-${client}`,
          kind: "grip",
          massG,
        });
      for (let client = 0; client < 16; client += 1)
        await ask(address, agent, "POST", "/api/bench/parts", {
          id: `limit-${client}`,
          kind: "grip",
          massG: 50,
        });
      let mass = 40;
      const change = (client) => {
        mass = mass === 40 ? 60 : 40;
        return grip(client, mass + client / 100);
      };
      for (const clients of [1, 16])
        say(
          `  ${clients} at once: ${Math.round(await closedLoop(clients, change))} changes a second, each on disk before it is answered`,
        );
      const read = () => ask(address, agent, "GET", "/api/bench");
      for (const clients of [1, 16])
        say(
          `  ${clients} at once: ${Math.round(await closedLoop(clients, read))} reads of the whole bench a second`,
        );
      for (const path of ["/api/bench", "/api/snapshot", "/api/bench/resolve?limit=50"]) {
        if (parts > 2000 && path.includes("resolve")) continue;
        const times = [];
        let bytes = 0;
        for (let at = 0; at < 3; at += 1) {
          await change(0);
          const start = performance.now();
          bytes = await ask(address, agent, "GET", path);
          times.push(performance.now() - start);
        }
        say(`  ${path} after a change: ${Math.round(median(times))} ms, ${(bytes / 1e6).toFixed(2)} MB`);
      }
      const text = JSON.stringify(bench);
      say(
        `  JSON.parse of its ${(text.length / 1e6).toFixed(1)} MB alone: ${timed(() => JSON.parse(text)).ms.toFixed(0)} ms`,
      );
    } finally {
      agent.destroy();
      await server.stop();
    }
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
