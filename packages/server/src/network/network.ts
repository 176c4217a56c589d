import { createServer, type Server } from "node:https";
import type { AddressInfo, Socket } from "node:net";
import { join } from "node:path";
import type { App } from "../routes/context.ts";
import { readyCertificate } from "./certificate.ts";
import { type LanNames, lanNames } from "./lan-names.ts";
import { nearAddresses } from "./near-addresses.ts";
import type { NetworkPlace } from "./network-place.ts";
import { refuseBroken } from "./refuse-broken.ts";
import { connectionsMost, timedServer, timeLimits } from "./time-limits.ts";

/** The server's place on the local network, and the way to start there. */
export interface Network extends NetworkPlace {
  /** Starts to answer there. Rejected where the port cannot be had. */
  listen(app: App, port: number): Promise<void>;
}

/** How often the addresses and the certificate are looked at again. */
const lookMs = 60_000;

/** Makes ready what the local network needs; the certificate is kept in the data folder. `names` is this machine's by default. */
export async function openNetwork(
  dataFolder: string,
  now: () => Date = () => new Date(),
  names: () => LanNames = lanNames,
): Promise<Network> {
  const folder = join(dataFolder, "network");
  let known = names();
  let port = 0;
  const certificateFor = ({ addresses, hosts }: LanNames) =>
    readyCertificate(folder, ["localhost", "127.0.0.1", ...addresses, ...hosts], now());
  let certificate = await certificateFor(known);
  const lookAgain = async (server: Server): Promise<void> => {
    const next = names();
    const ready = await certificateFor(next);
    known = next;
    if (ready.cert === certificate.cert) return;
    certificate = ready;
    server.setSecureContext({ key: ready.key, cert: ready.cert });
  };
  return {
    names: () => [...known.addresses, ...known.hosts],
    urls: () => [...known.addresses, ...known.hosts.slice(-1)].map((name) => `https://${name}:${port}`),
    certificate: () => certificate,
    listen: async (app, wanted) => {
      await app.ready();
      const { key, cert } = certificate;
      const server = createServer({ key, cert, ...timedServer(timeLimits) }, app.routing);
      server.maxConnections = connectionsMost;
      server.on("clientError", refuseBroken);
      server.on("connection", (socket) => {
        if (!nearAddresses(known.subnets)((socket as Socket).remoteAddress ?? "")) socket.destroy();
      });
      await listening(server, wanted);
      port = (server.address() as AddressInfo).port;
      const timer = setInterval(() => void lookAgain(server).catch((error) => app.log.error(error)), lookMs);
      timer.unref();
      app.server.once("close", () => {
        clearInterval(timer);
        server.close();
        server.closeAllConnections();
      });
    },
  };
}

function listening(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen({ port }, () => {
      server.off("error", reject);
      resolve();
    });
  });
}
