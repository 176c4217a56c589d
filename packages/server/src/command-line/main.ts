import { buffer } from "node:stream/consumers";
import { localToday } from "../clock.ts";
import { exitCodes } from "./exit-code.ts";
import { runCommandLine } from "./run-command-line.ts";

/** The command line as a process: what was typed, standard input and output, and the exit code. `checkout` ends in a slash. */
export async function main(checkout: string): Promise<void> {
  const { stdout, stderr, stdin } = process;
  // Whoever reads along may have read enough.
  stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code !== "EPIPE") throw error;
    process.exit(exitCodes.done);
  });
  process.exitCode = await runCommandLine({
    args: process.argv.slice(2),
    env: process.env,
    tablesFolder: `${checkout}data`,
    today: localToday,
    width: stdout.isTTY ? stdout.columns : Number.POSITIVE_INFINITY,
    out: (text) => void stdout.write(text),
    err: (text) => void stderr.write(text),
    readInput: async () => {
      if (stdin.isTTY)
        stderr.write("ferrule: reading what you type; end it with Ctrl-D on a line of its own\n");
      return buffer(stdin);
    },
    onInterrupt: (stop) => {
      process.once("SIGINT", stop);
      return () => process.off("SIGINT", stop);
    },
  });
}
