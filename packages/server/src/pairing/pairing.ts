import { createHash, randomBytes, randomInt, randomUUID, timingSafeEqual } from "node:crypto";
import { done, type Outcome, problem } from "../errors.ts";
import type { Device, DevicesTable } from "../store/devices.ts";

/** A code that is shown on this machine, for one device and a few minutes. */
export interface Offer {
  readonly code: string;
  /** Milliseconds since 1970. */
  readonly endsAt: number;
}

/** Who may open the bench from another device. */
export interface Pairing {
  /** Makes a code; the one before it is void. */
  offer(): Offer;
  /** Whether a code stands that nobody has used yet. */
  isOffered(): boolean;
  /** Lets a device in for the code that stands. `from` is the address that asks. The token is told once and kept nowhere. */
  pair(
    code: string,
    name: string,
    from: string,
  ): Outcome<{ readonly device: Device; readonly token: string }>;
  /** The device that has this token. */
  deviceOf(token: string): Device | undefined;
  devices(): readonly Device[];
  rename(id: string, name: string): Outcome<Device>;
  revoke(id: string): Outcome<Device>;
}

/** No letter or digit that is taken for another: no I, L, O, 0, 1. */
const signs = "ABCDEFGHJKMNPQRSTUVWXYZ23456789";
const codeLength = 8;
export const offerMs = 5 * 60_000;
/** Wrong codes from one address within the life of a code, and from all of them until the code is withdrawn. */
const wrongMostFrom = 5;
const wrongMost = 20;

interface Clock {
  readonly now: () => number;
  readonly today: () => string;
}

export function openPairing(devices: DevicesTable, { now, today }: Clock): Pairing {
  let standing: { readonly codeHash: Buffer; readonly endsAt: number } | undefined;
  let wrong: { readonly from: string; readonly at: number }[] = [];
  const isOffered = () => standing !== undefined && now() < standing.endsAt;
  const found = (id: string): Outcome<Device> => {
    const device = devices.all().find((each) => each.id === id);
    return device ? done(device) : problem("not-found", `There is no device "${id}"`);
  };
  return {
    isOffered,
    offer: () => {
      const code = Array.from({ length: codeLength }, () => signs[randomInt(signs.length)]).join("");
      standing = { codeHash: hashOf(code), endsAt: now() + offerMs };
      return { code, endsAt: standing.endsAt };
    },
    pair: (code, name, from) => {
      wrong = wrong.filter(({ at }) => now() - at < offerMs);
      if (wrong.filter((each) => each.from === from).length >= wrongMostFrom) return problem("too-many");
      const isRight =
        standing !== undefined && isOffered() && timingSafeEqual(standing.codeHash, hashOf(plainCode(code)));
      if (!isRight) {
        wrong.push({ from, at: now() });
        if (wrong.length >= wrongMost) standing = undefined;
        return problem("wrong-code");
      }
      standing = undefined;
      const token = randomBytes(32).toString("base64url");
      const device = { id: randomUUID(), name, pairedOn: today(), seenOn: today() };
      devices.add(device, tokenHash(token));
      return done({ device, token });
    },
    deviceOf: (token) => {
      const device = devices.byToken(tokenHash(token));
      if (device && device.seenOn !== today()) devices.see(device.id, today());
      return device;
    },
    devices: () => devices.all(),
    rename: (id, name) => {
      const device = found(id);
      if (device.ok) devices.rename(id, name);
      return device.ok ? done({ ...device.value, name }) : device;
    },
    revoke: (id) => {
      const device = found(id);
      if (device.ok) devices.remove(id);
      return device;
    },
  };
}

/** As typed, in small letters and with anything between. */
function plainCode(typed: string): string {
  return typed.toUpperCase().replace(/[^A-Z0-9]/g, "");
}

const hashOf = (text: string) => createHash("sha256").update(text).digest();
const tokenHash = (token: string) => hashOf(token).toString("hex");
