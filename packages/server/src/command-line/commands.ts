import { backupCommand } from "./backup.ts";
import type { Command } from "./command.ts";
import { exportCommand } from "./export.ts";
import { importCommand } from "./import.ts";
import { judgeCommand } from "./judge.ts";
import { planCommand } from "./plan.ts";
import { readCommand } from "./read.ts";
import { resolveCommand } from "./resolve.ts";
import { restoreCommand } from "./restore.ts";

/** Every command, in the order of the help. */
export const commands: readonly Command[] = [
  readCommand,
  judgeCommand,
  resolveCommand,
  planCommand,
  importCommand,
  exportCommand,
  backupCommand,
  restoreCommand,
];
