import { createPrivateKey, X509Certificate } from "node:crypto";
import { chmodSync, mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { isIP } from "node:net";
import { join } from "node:path";
import type { generate as Generate } from "selfsigned";

/** A certificate and its key, as PEM. */
interface Signed {
  readonly cert: string;
  readonly key: string;
}

/** What an HTTPS server needs, and what a device has to trust. */
export interface ServerCertificate extends Signed {
  /** The certificate of the authority, as PEM; it signs this server's certificate and no other. */
  readonly authority: string;
  /** SHA-256 of the authority's certificate, for a person to compare. */
  readonly fingerprint: string;
}

const dayMs = 86_400_000;
/**
 * Phones refuse server certificates that last longer than 825 days, also of an authority that their owner trusts, and want
 * the serverAuth purpose and the names as subject alternative names (Apple, "Requirements for trusted certificates in
 * iOS 13 and macOS 10.15", HT210176).
 */
const serverDays = 397;
const authorityDays = 3650;
/** Replaced when less than this is left. */
const leastDays = 30;
const keys = { keyType: "ec", curve: "P-256", algorithm: "sha256" } as const;

/**
 * The certificate for these names and addresses, from a folder that only this account can read. Made when there is none that
 * covers them all for a month to come; the authority stays, so that a device has to trust it once.
 */
export async function readyCertificate(
  folder: string,
  names: readonly string[],
  now: Date,
): Promise<ServerCertificate> {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  chmodSync(folder, 0o700);
  const authority = await keptOrMade(folder, "authority", isSound(now), () => makeAuthority(now));
  const server = await keptOrMade(
    folder,
    "server",
    (kept) => isSound(now)(kept) && covers(kept, names) && isSignedBy(kept, authority),
    () => makeServer(authority, names, now),
  );
  const { fingerprint256 } = new X509Certificate(authority.cert);
  return { ...server, authority: authority.cert, fingerprint: fingerprint256 };
}

async function keptOrMade(
  folder: string,
  name: string,
  isGood: (kept: Signed) => boolean,
  make: () => Promise<Signed>,
): Promise<Signed> {
  const kept = readSigned(folder, name);
  if (kept && isGood(kept)) return kept;
  const made = await make();
  writePrivate(join(folder, `${name}.key`), made.key);
  writePrivate(join(folder, `${name}.crt`), made.cert);
  return made;
}

/** What is kept, where a key and a certificate that belong together are. */
function readSigned(folder: string, name: string): Signed | undefined {
  try {
    const key = readFileSync(join(folder, `${name}.key`), "utf8");
    const cert = readFileSync(join(folder, `${name}.crt`), "utf8");
    return new X509Certificate(cert).checkPrivateKey(createPrivateKey(key)) ? { key, cert } : undefined;
  } catch {
    // Missing or spoilt: it is made anew.
    return undefined;
  }
}

const isSound =
  (now: Date) =>
  ({ cert }: Signed): boolean => {
    const { validFrom, validTo } = new X509Certificate(cert);
    return Date.parse(validFrom) <= now.getTime() && Date.parse(validTo) - now.getTime() > leastDays * dayMs;
  };

function covers({ cert }: Signed, names: readonly string[]): boolean {
  const certificate = new X509Certificate(cert);
  return names.every(
    (name) => (isIP(name) ? certificate.checkIP(name) : certificate.checkHost(name)) !== undefined,
  );
}

function isSignedBy({ cert }: Signed, authority: Signed): boolean {
  const issuer = new X509Certificate(authority.cert);
  const certificate = new X509Certificate(cert);
  return certificate.checkIssued(issuer) && certificate.verify(issuer.publicKey);
}

/** Loaded when a certificate has to be made, which is once a year at most: it takes longer to load than all else of a start but the core. */
const generated: typeof Generate = async (...given) => (await import("selfsigned")).generate(...given);

async function makeAuthority(now: Date): Promise<Signed> {
  // The time keeps a later authority from having the name of an earlier one.
  const name = `Ferrule of ${now.toISOString().slice(0, 19)}Z`;
  const made = await generated([{ name: "commonName", value: name }], {
    ...keys,
    ...period(now, authorityDays),
    extensions: [
      { name: "basicConstraints", cA: true, pathLenConstraint: 0, critical: true },
      { name: "keyUsage", keyCertSign: true, cRLSign: true, critical: true },
    ],
  });
  return { cert: made.cert, key: made.private };
}

async function makeServer(authority: Signed, names: readonly string[], now: Date): Promise<Signed> {
  const altNames = names.map((name) =>
    isIP(name) ? ({ type: 7, ip: name } as const) : ({ type: 2, value: name } as const),
  );
  const made = await generated([{ name: "commonName", value: "Ferrule" }], {
    ...keys,
    ...period(now, serverDays),
    ca: { key: authority.key, cert: authority.cert },
    extensions: [
      { name: "basicConstraints", cA: false, critical: true },
      { name: "keyUsage", digitalSignature: true, critical: true },
      { name: "extKeyUsage", serverAuth: true },
      { name: "subjectAltName", altNames },
    ],
  });
  return { cert: made.cert, key: made.private };
}

/** From a day ago on, since the clock of a phone may be behind. */
function period(now: Date, days: number): { readonly notBeforeDate: Date; readonly notAfterDate: Date } {
  const start = now.getTime() - dayMs;
  return { notBeforeDate: new Date(start), notAfterDate: new Date(start + days * dayMs) };
}

/** A file that only this account can read, there whole or not at all. */
function writePrivate(file: string, text: string): void {
  const draft = `${file}.${process.pid}.part`;
  writeFileSync(draft, text, { mode: 0o600, flush: true });
  renameSync(draft, file);
}
