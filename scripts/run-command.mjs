import { spawn } from "node:child_process";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("..", import.meta.url));

const isWindows = process.platform === "win32";
const exitCodes = { SIGINT: 130, SIGTERM: 143, SIGHUP: 129 };

/** A command that ended with anything but success. */
export class CommandFailed extends Error {}

/** Runs one of the workspace's own tools, such as `tsc`. */
export function runTool(name, args) {
  return runCommand(join(root, "node_modules", ".bin", name), args);
}

/**
 * Runs a command to its end with our own output. A signal that stops us stops the command and everything it started,
 * and after a successful run our signals are as they were.
 */
export async function runCommand(command, args) {
  // A group of its own, so that what the command starts can be stopped with it.
  const child = spawn(command, args, { cwd: root, stdio: "inherit", detached: !isWindows, shell: isWindows });
  const stop = (signal) => {
    stopGroup(child, signal);
    process.exit(exitCodes[signal]);
  };
  for (const signal of Object.keys(exitCodes)) process.on(signal, stop);
  try {
    await ending(child, command);
  } finally {
    for (const signal of Object.keys(exitCodes)) process.off(signal, stop);
  }
}

function ending(child, command) {
  return new Promise((resolve, reject) => {
    child.once("error", (error) => reject(new CommandFailed(`${command} could not start: ${error.message}`)));
    child.once("exit", (code, signal) => {
      if (code === 0) resolve();
      else reject(new CommandFailed(`${command} ended with ${signal ?? `exit code ${code}`}`));
    });
  });
}

function stopGroup(child, signal) {
  try {
    if (isWindows) child.kill(signal);
    else process.kill(-child.pid, signal);
  } catch {
    // It ended by itself in the meantime.
  }
}
