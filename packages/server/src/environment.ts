import { homedir } from "node:os";
import { join, resolve } from "node:path";
import { StartupProblem } from "./startup-problem.ts";

export interface Environment {
  readonly port: number;
  readonly host: string;
  readonly dataFolder: string;
  /** Names besides the loopback ones that the browser may call this server by. */
  readonly allowedHosts: readonly string[];
}

/**
 * The settings a start takes from its environment:
 * FERRULE_PORT (4310; 0 takes any free port), FERRULE_HOST (127.0.0.1), FERRULE_DATA (the folder of the bench's database,
 * by default `ferrule` in XDG_DATA_HOME or else in ~/.local/share) and FERRULE_ALLOWED_HOSTS (names, separated by commas).
 */
export function readEnvironment(env: Readonly<Record<string, string | undefined>>): Environment {
  const host = env.FERRULE_HOST || "127.0.0.1";
  const named = (env.FERRULE_ALLOWED_HOSTS ?? "")
    .split(",")
    .map((name) => name.trim())
    .filter((name) => name !== "");
  return {
    port: readPort(env.FERRULE_PORT),
    host,
    dataFolder: resolve(env.FERRULE_DATA || defaultDataFolder(env.XDG_DATA_HOME)),
    allowedHosts: [host, ...named],
  };
}

function readPort(text: string | undefined): number {
  if (text === undefined || text === "") return 4310;
  const port = Number(text);
  if (/^\d+$/.test(text) && port <= 65535) return port;
  throw new StartupProblem(
    `FERRULE_PORT is "${text}", which is not a port. Give a whole number from 0 to 65535, or leave it out for 4310`,
  );
}

function defaultDataFolder(xdgDataHome: string | undefined): string {
  return join(xdgDataHome || join(homedir(), ".local", "share"), "ferrule");
}
