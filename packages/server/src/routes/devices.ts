import type { FastifyRequest } from "fastify";
import { z } from "zod";
import { ProblemError, valueOrThrow } from "../errors.ts";
import { deviceCookie, tokenFrom } from "../pairing/device-cookie.ts";
import { isThisMachine } from "../plugins/paired-devices.ts";
import { createdReplies, idParamsSchema, replies } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

const deviceName = z.string().trim().min(1).max(60);

const deviceSchema = z.strictObject({
  id: z.string(),
  name: z.string(),
  pairedOn: z.string(),
  seenOn: z.string(),
});

const devicesSchema = z.strictObject({
  devices: z.array(deviceSchema),
  isThisMachine: z.boolean().describe("Whether the question came from the machine that serves"),
  here: z.string().nullable().describe("The id of the device that asks"),
  urls: z.array(z.string()).describe("Where other devices find this server; none where the network is off"),
  fingerprint: z.string().nullable().describe("SHA-256 of the authority's certificate"),
});

const offerSchema = z.strictObject({
  code: z.string(),
  endsAt: z.number().describe("Milliseconds since 1970"),
});

/** Pairing other devices. Codes are made, and devices renamed and taken off, only at the machine that serves. */
export function addDevices(app: App, { pairing, network }: RouteContext): void {
  app.get("/api/devices", { schema: { response: replies(devicesSchema) } }, async (request) => {
    const token = tokenFrom(request.headers.cookie);
    return {
      devices: pairing.devices(),
      isThisMachine: isThisMachine(request),
      here: (token !== undefined && pairing.deviceOf(token)?.id) || null,
      urls: [...(network?.urls() ?? [])],
      fingerprint: network?.certificate().fingerprint ?? null,
    };
  });
  app.get(
    "/api/devices/offer",
    { schema: { response: replies(z.strictObject({ stands: z.boolean() })) } },
    async () => ({ stands: pairing.isOffered() }),
  );
  app.post(
    "/api/devices/offer",
    { schema: { response: createdReplies(offerSchema) } },
    async (request, reply) => {
      onlyHere(request);
      return reply.code(201).send(pairing.offer());
    },
  );
  const one = { params: idParamsSchema, response: replies(deviceSchema) };
  app.patch(
    "/api/devices/:id",
    { schema: { ...one, body: z.strictObject({ name: deviceName }) } },
    async (request) => {
      onlyHere(request);
      return valueOrThrow(pairing.rename(request.params.id, request.body.name));
    },
  );
  app.delete("/api/devices/:id", { schema: one }, async (request) => {
    onlyHere(request);
    return valueOrThrow(pairing.revoke(request.params.id));
  });
  const pairBody = z.strictObject({ code: z.string().max(40), name: deviceName });
  app.post(
    "/api/pair",
    { schema: { body: pairBody, response: createdReplies(deviceSchema) } },
    async (request, reply) => {
      const { code, name } = request.body;
      const { device, token } = valueOrThrow(pairing.pair(code, name, request.ip));
      const isEncrypted = "encrypted" in request.raw.socket;
      return reply.code(201).header("set-cookie", deviceCookie(token, isEncrypted)).send(device);
    },
  );
}

function onlyHere(request: FastifyRequest): void {
  if (!isThisMachine(request)) throw new ProblemError({ code: "only-here" });
}
