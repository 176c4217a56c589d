import { readFileSync } from "node:fs";
import type { Reference } from "@ferrule/core";

function table(name: string): unknown {
  return JSON.parse(readFileSync(new URL(`../data/reference/${name}.json`, import.meta.url), "utf8"));
}

/** The reference tables as the server reads them. */
export const reference = {
  typical: table("typical"),
  work: table("work"),
  cautions: table("cautions"),
} as Reference;
