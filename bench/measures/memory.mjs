import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";

export const sizes = [1000, 3000, 10_000];
export const sizeText = (count) => `${count} parts`;
export const about =
  "Heap after collecting, for each 10,000 parts, in a process of its own: the bench with its index, asked about 20 heads, against its parts from JSON alone.";

const script = fileURLToPath(new URL("../memory-of.mjs", import.meta.url));

export function ready() {
  const megabytes = (way, count) =>
    Number(execFileSync(process.execPath, ["--expose-gc", script, way, String(count)])) / 2 ** 20;
  return (count) => {
    const each = 10_000 / count;
    return [
      {
        ...{ what: "memory per 10,000 parts", unit: "MB", against: "JSON.parse of the parts" },
        ...{ ours: each * megabytes("index", count), baseline: each * megabytes("parse", count) },
      },
    ];
  };
}
