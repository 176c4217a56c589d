import { hostname, networkInterfaces } from "node:os";

/** What this machine is called on the local network: its addresses there, and its own name. */
export interface LanNames {
  readonly addresses: readonly string[];
  readonly hosts: readonly string[];
  /** The networks that it is on, such as 192.168.1.4/24. */
  readonly subnets: readonly string[];
}

/** As things stand now; a laptop that is carried to another network has other addresses there. */
export function lanNames(): LanNames {
  const outward = Object.values(networkInterfaces())
    .flatMap((all) => all ?? [])
    .filter(({ family, internal }) => family === "IPv4" && !internal);
  return {
    addresses: [...new Set(outward.map(({ address }) => address))],
    hosts: ownHosts(hostname()),
    subnets: outward.flatMap(({ cidr }) => cidr ?? []),
  };
}

/** A name without a dot is also told on the local network by multicast DNS, as name.local (RFC 6762). */
export function ownHosts(name: string): string[] {
  const plain = name.toLowerCase();
  if (!/^[a-z0-9]([a-z0-9.-]*[a-z0-9])?$/.test(plain) || plain === "localhost") return [];
  return plain.includes(".") ? [plain] : [plain, `${plain}.local`];
}
