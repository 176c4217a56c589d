import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { onTestFinished } from "vitest";
import { type AppOptions, buildApp } from "../../packages/server/src/app.ts";
import { readTables } from "../../packages/server/src/reference-files.ts";
import { costs } from "./costs.test-kit.ts";

/** The day on which every test runs. */
export const today = "2026-11-25";

const dataFolder = fileURLToPath(new URL("../../data", import.meta.url));

/** A server in memory, without the example unless one is given; whoever opens it closes it. */
export function openTestApp(options: Partial<AppOptions> = {}) {
  return buildApp({
    reference: { ...readTables(dataFolder), firstCosts: costs },
    today: () => today,
    ...options,
  });
}

/** The same, closed when the test is over. */
export async function testApp(options: Partial<AppOptions> = {}) {
  const app = await openTestApp(options);
  onTestFinished(() => app.close());
  return app;
}

export type TestApp = Awaited<ReturnType<typeof testApp>>;

/** Asks the server; a body is sent as JSON. Returns the status and the body read. */
export async function ask(
  app: TestApp,
  method: "GET" | "POST" | "PUT" | "PATCH" | "DELETE",
  url: string,
  body?: object,
) {
  const reply = await app.inject({
    method,
    url,
    ...(body === undefined ? {} : { payload: body }),
  });
  const isJson = String(reply.headers["content-type"]).startsWith("application/json");
  return {
    status: reply.statusCode,
    body: isJson ? reply.json() : reply.body,
    headers: reply.headers,
  };
}

/** A folder that is gone when the test is over. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "ferrule-test-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A driver with a receiver, an adapter of its family bonded on a wood shaft, and a grip. */
export const looseParts = {
  head: {
    id: "h1",
    kind: "head",
    clubType: "driver",
    hand: "right",
    loftDeg: 10.5,
    lieDeg: 58,
    massG: 200,
    socket: { type: "receiver", family: "Quillon 2", seatToGroundIn: 2.1 },
  },
  adapter: {
    id: "a1",
    kind: "adapter",
    family: "Quillon 2",
    hand: "right",
    bore: { diameterIn: 0.339, form: "parallel", depthIn: 1.25 },
    tipStopFromSeatIn: 0.6,
    massG: 8,
    tiltDeg: 1.5,
    settings: [
      { label: "STD", rotationDeg: 0 },
      { label: "UP", rotationDeg: 180 },
    ],
  },
  shaft: {
    id: "s1",
    kind: "shaft",
    suits: "wood",
    material: "graphite",
    flex: "regular",
    massG: 60,
    length: {
      lengthIn: { value: 43.5, plusMinus: 0.06, source: "measured" },
      basis: "shaft-alone",
    },
    tip: { diameterIn: 0.335, form: "parallel", parallelSectionIn: 3 },
    buttDiameterIn: 0.6,
    balanceFromTipIn: 22.5,
  },
  grip: {
    id: "g1",
    kind: "grip",
    massG: 50,
    coreDiameterIn: 0.6,
    lengthIn: 10.5,
    capThicknessIn: 0.15,
    cgFromCapIn: 3.9,
  },
} as const;

export const bondedShaft = {
  id: "j1",
  type: "bonded",
  parts: ["a1", "s1"],
} as const;
