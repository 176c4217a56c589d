import { extname } from "node:path";

export type FileFormat = "csv" | "json";

/** What a file holds, by the end of its name, or else by the first sign in it. */
export function fileFormat(name: string, text: string): FileFormat {
  const end = extname(name).toLowerCase();
  if (end === ".json") return "json";
  if (end === ".csv" || end === ".tsv") return "csv";
  return /^[\s\ufeff]*[[{]/.test(text) ? "json" : "csv";
}
