import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { median } from "../measure.mjs";
import { seededBench } from "../seeded-bench.mjs";
import { importBench, inNewFolder, sent, startServer } from "../server-child.mjs";

export const sizes = [100, 1000, 10_000];
export const sizeText = (count) => `${count} parts`;
export const about =
  "From the start of the process to the last byte of the first answer to GET /api/bench, against Node opening the same file and reading every row.";
const rounds = 5;
const plainReader = fileURLToPath(new URL("../read-rows.mjs", import.meta.url));

export function ready() {
  return (count) =>
    inNewFolder(async (folder) => {
      const first = await startServer(folder);
      await sent(first.address, "POST", "/api/bench/start-own");
      await importBench(first.address, seededBench(count, 1));
      await first.stop();
      const taken = [];
      for (let at = 0; at < rounds; at += 1)
        taken.push({ ours: await firstAnswerMs(folder), plain: plainMs(join(folder, "bench.sqlite")) });
      const of = (name) => median(taken.map((each) => each[name]));
      return [
        {
          ...{ what: "start to first answer", unit: "ms", against: "Node reads the file's rows" },
          ...{ ours: of("ours"), baseline: of("plain") },
        },
      ];
    });
}

async function firstAnswerMs(folder) {
  const server = await startServer(folder);
  await (await fetch(`${server.address}/api/bench`)).arrayBuffer();
  const ms = performance.now() - server.began;
  await server.stop();
  return ms;
}

function plainMs(file) {
  const start = performance.now();
  const { status, stderr } = spawnSync(process.execPath, [plainReader, file]);
  if (status !== 0) throw new Error(String(stderr));
  return performance.now() - start;
}
