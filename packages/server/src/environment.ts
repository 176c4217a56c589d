import { homedir } from "node:os";
import { join, resolve } from "node:path";
import { StartupProblem } from "./startup-problem.ts";

export interface Environment {
  readonly port: number;
  readonly host: string;
  readonly dataFolder: string;
  /** Names besides the loopback ones that the browser may call this server by. */
  readonly allowedHosts: readonly string[];
  /** The port on the local network, where it is served there. */
  readonly networkPort?: number;
  /** Whether a backup is made every day. */
  readonly dailyBackups: boolean;
  /** How much this machine may ask for in a minute, where that is said. */
  readonly requestsPerMinute?: number;
}

/**
 * The settings a start takes from its environment:
 * FERRULE_PORT (4310; 0 takes any free port), FERRULE_HOST (127.0.0.1), FERRULE_DATA (the folder of the bench's database,
 * by default `ferrule` in XDG_DATA_HOME or else in ~/.local/share), FERRULE_ALLOWED_HOSTS (names, separated by commas),
 * FERRULE_NETWORK (1 to serve other devices on the local network too, by HTTPS), FERRULE_NETWORK_PORT (4311),
 * FERRULE_BACKUPS (0 to make no backups of its own accord every day) and FERRULE_REQUESTS_PER_MINUTE (6000: how much this
 * machine may ask for, which is everybody where a proxy on it stands before Ferrule).
 */
export function readEnvironment(env: Readonly<Record<string, string | undefined>>): Environment {
  const host = env.FERRULE_HOST || "127.0.0.1";
  const named = (env.FERRULE_ALLOWED_HOSTS ?? "")
    .split(",")
    .map((name) => name.trim())
    .filter((name) => name !== "");
  return {
    port: readPort("FERRULE_PORT", env.FERRULE_PORT, 4310),
    host,
    dataFolder: resolve(env.FERRULE_DATA || defaultDataFolder(env.XDG_DATA_HOME)),
    allowedHosts: [host, ...named],
    dailyBackups: isBackupWanted(env.FERRULE_BACKUPS),
    ...(env.FERRULE_REQUESTS_PER_MINUTE && {
      requestsPerMinute: readCount("FERRULE_REQUESTS_PER_MINUTE", env.FERRULE_REQUESTS_PER_MINUTE),
    }),
    ...(isNetworkWanted(env.FERRULE_NETWORK) && {
      networkPort: readPort("FERRULE_NETWORK_PORT", env.FERRULE_NETWORK_PORT, 4311),
    }),
  };
}

function isNetworkWanted(text: string | undefined): boolean {
  if (text === undefined || text === "" || text === "0") return false;
  if (text === "1") return true;
  throw new StartupProblem(
    `FERRULE_NETWORK is "${text}". Give 1 to serve other devices on the local network, or leave it out`,
  );
}

function isBackupWanted(text: string | undefined): boolean {
  if (text === undefined || text === "" || text === "1") return true;
  if (text === "0") return false;
  throw new StartupProblem(
    `FERRULE_BACKUPS is "${text}". Give 0 to make no backup of the bench every day, or leave it out`,
  );
}

function readPort(name: string, text: string | undefined, first: number): number {
  if (text === undefined || text === "") return first;
  const port = Number(text);
  if (/^\d+$/.test(text) && port <= 65535) return port;
  throw new StartupProblem(
    `${name} is "${text}", which is not a port. Give a whole number from 0 to 65535, or leave it out for ${first}`,
  );
}

function readCount(name: string, text: string): number {
  const count = Number(text);
  if (/^\d{1,9}$/.test(text) && count > 0) return count;
  throw new StartupProblem(`${name} is "${text}". Give a whole number from 1 to 999999999, or leave it out`);
}

function defaultDataFolder(xdgDataHome: string | undefined): string {
  return join(xdgDataHome || join(homedir(), ".local", "share"), "ferrule");
}
