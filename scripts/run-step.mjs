import { spawn } from "node:child_process";
import { fileURLToPath } from "node:url";

/** The folder of the checkout, with a slash at its end. */
export const checkout = fileURLToPath(new URL("../", import.meta.url));

/** A step that ended badly. Its message names the step. */
export class StepFailed extends Error {}

/**
 * Runs one command in the checkout and waits for it; throws StepFailed where it fails.
 * `tool` is a name in node_modules/.bin, or `npx`. SIGTERM and SIGINT end the command with everything it started.
 */
export async function runStep(step, tool, args) {
  const command = tool === "npx" ? tool : `${checkout}node_modules/.bin/${tool}`;
  // A group of its own, so that a signal reaches what the command starts in its turn.
  const child = spawn(command, args, {
    cwd: checkout,
    detached: true,
    stdio: ["ignore", "inherit", "inherit"],
  });
  const letGo = endWithUs(child);
  try {
    await ended(step, child);
  } finally {
    letGo();
  }
}

function ended(step, child) {
  return new Promise((resolve, reject) => {
    child.once("error", (error) =>
      reject(new StepFailed(`The step "${step}" could not start: ${error.message}`)),
    );
    child.once("exit", (code, signal) => {
      if (code === 0) resolve();
      else reject(new StepFailed(`The step "${step}" failed (${signal ?? `exit code ${code}`})`));
    });
  });
}

function endWithUs(child) {
  const onSignal = (signal) => {
    try {
      if (child.pid !== undefined) process.kill(-child.pid, signal);
    } catch (error) {
      if (error.code !== "ESRCH") throw error;
    }
    process.exit(signal === "SIGINT" ? 130 : 143);
  };
  for (const signal of ["SIGTERM", "SIGINT"]) process.once(signal, onSignal);
  return () => {
    for (const signal of ["SIGTERM", "SIGINT"]) process.off(signal, onSignal);
  };
}

/** Runs `work`; a failed step is told in one line and ends the process with exit code 1. */
export async function orExit(work) {
  try {
    await work();
  } catch (error) {
    if (!(error instanceof StepFailed)) throw error;
    process.stderr.write(`${error.message}\n`);
    process.exit(1);
  }
}
