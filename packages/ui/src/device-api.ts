import { call } from "./api.ts";

/** A device that was paired with the bench. */
export interface Device {
  readonly id: string;
  readonly name: string;
  readonly pairedOn: string;
  readonly seenOn: string;
}

export interface DevicesReply {
  readonly devices: readonly Device[];
  readonly isThisMachine: boolean;
  readonly here: string | null;
  readonly urls: readonly string[];
  readonly fingerprint: string | null;
}

/** A code for one device. */
export interface Offer {
  readonly code: string;
  /** Milliseconds since 1970. */
  readonly endsAt: number;
}

const devicePath = (id: string) => `/api/devices/${encodeURIComponent(id)}`;

/** Every call about other devices. */
export const deviceApi = {
  devices: () => call<DevicesReply>("GET", "/api/devices"),
  offer: () => call<Offer>("POST", "/api/devices/offer"),
  stands: () => call<{ readonly stands: boolean }>("GET", "/api/devices/offer"),
  rename: (id: string, name: string) => call<Device>("PATCH", devicePath(id), { name }),
  revoke: (id: string) => call<Device>("DELETE", devicePath(id)),
};
