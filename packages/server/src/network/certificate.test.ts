import { X509Certificate } from "node:crypto";
import { mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { createServer, get } from "node:https";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it, onTestFinished } from "vitest";
import { readyCertificate, type ServerCertificate } from "./certificate.ts";
import { ownHosts } from "./lan-names.ts";
import { nearAddresses } from "./near-addresses.ts";

const names = ["localhost", "127.0.0.1", "192.168.1.4", "shed", "shed.local"];
const dayMs = 86_400_000;

function folder(): string {
  const made = mkdtempSync(join(tmpdir(), "ferrule-certificate-"));
  onTestFinished(() => rmSync(made, { recursive: true, force: true }));
  return join(made, "network");
}

/** What Node, as any TLS client, says of a server with this certificate: its answer, or why it is not trusted. */
async function trusted(
  { key, cert }: ServerCertificate,
  ca: string | undefined,
  servername: string,
): Promise<string> {
  const server = createServer({ key, cert }, (_request, reply) => reply.end("here"));
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  onTestFinished(() => void server.close());
  const { port } = server.address() as AddressInfo;
  return new Promise((resolve) => {
    get({ host: "127.0.0.1", port, servername, ca, agent: false }, (reply) => {
      reply.resume();
      resolve(String(reply.statusCode));
    }).on("error", (error: NodeJS.ErrnoException) => resolve(String(error.code)));
  });
}

it("is trusted by whoever trusts the authority, under its names and no other", async () => {
  const made = await readyCertificate(folder(), names, new Date());
  expect(await trusted(made, made.authority, "shed.local")).toBe("200");
  expect(await trusted(made, made.authority, "example.org")).toBe("ERR_TLS_CERT_ALTNAME_INVALID");
  expect(await trusted(made, undefined, "shed.local")).not.toBe("200");
});

it("is what phones ask of a server's certificate: serverAuth, no authority, 825 days at most", async () => {
  const now = new Date();
  const { cert, authority } = await readyCertificate(folder(), names, now);
  const server = new X509Certificate(cert);
  expect([server.ca, new X509Certificate(authority).ca]).toEqual([false, true]);
  // 1.3.6.1.5.5.7.3.1 is serverAuth (RFC 5280, 4.2.1.12).
  expect(server.keyUsage).toEqual(["1.3.6.1.5.5.7.3.1"]);
  expect((Date.parse(server.validTo) - Date.parse(server.validFrom)) / dayMs).toBeLessThanOrEqual(825);
  expect(server.checkIP("192.168.1.4")).toBe("192.168.1.4");
});

it("keeps keys where only this account can read them", async () => {
  const kept = folder();
  await readyCertificate(kept, names, new Date());
  expect(statSync(kept).mode & 0o777).toBe(0o700);
  expect(readdirSync(kept).sort()).toEqual(["authority.crt", "authority.key", "server.crt", "server.key"]);
  for (const file of readdirSync(kept)) expect(statSync(join(kept, file)).mode & 0o777).toBe(0o600);
});

it("stays while it holds, and is renewed near its end, for a new address, or when it is spoilt; the authority stays", async () => {
  const kept = folder();
  const now = new Date();
  const first = await readyCertificate(kept, names, now);
  expect(await readyCertificate(kept, names, now)).toEqual(first);
  const later = await readyCertificate(kept, names, new Date(now.getTime() + 370 * dayMs));
  const moved = await readyCertificate(kept, [...names, "10.0.0.7"], new Date(now.getTime() + 370 * dayMs));
  writeFileSync(join(kept, "server.key"), "spoilt");
  const mended = await readyCertificate(kept, names, new Date(now.getTime() + 370 * dayMs));
  expect(new Set([first, later, moved, mended].map(({ cert }) => cert)).size).toBe(4);
  expect(new Set([first, later, moved, mended].map(({ fingerprint }) => fingerprint)).size).toBe(1);
});

it.each([
  ["192.168.1.4", true],
  ["::ffff:10.1.2.3", true],
  ["172.31.255.255", true],
  ["172.32.0.0", false],
  ["fe80::1%en0", true],
  ["fd00::1", true],
  ["203.0.113.9", true],
  ["203.0.114.9", false],
  ["8.8.8.8", false],
  ["2001:4860::1", false],
  ["", false],
])("counts %j as an address of a local network: %j", (address, isNear) => {
  expect(nearAddresses(["203.0.113.4/24"])(address)).toBe(isNear);
});

it.each([
  ["Shed", ["shed", "shed.local"]],
  ["shed.example.org", ["shed.example.org"]],
  ["localhost", []],
  ["not a name", []],
])("calls a machine named %j %j", (name, hosts) => {
  expect(ownHosts(name)).toEqual(hosts);
});
