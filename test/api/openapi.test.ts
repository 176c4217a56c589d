import { expect, it } from "vitest";
import { ask, testApp } from "./server.test-kit.ts";

it("describes itself in OpenAPI 3.1, every route with its bodies", async () => {
  const app = await testApp();
  const { status, body } = await ask(app, "GET", "/api/openapi.json");
  expect(status).toBe(200);
  expect(body.openapi).toBe("3.1.0");
  expect(Object.keys(body.paths)).toEqual(
    expect.arrayContaining([
      "/api/resolve",
      "/api/estimate",
      "/api/bench",
      "/api/bench/parts",
      "/api/bench/parts/{id}",
      "/api/bench/joints/{id}",
      "/api/bench/claims/{id}",
      "/api/bench/goal",
      "/api/bench/undo",
      "/api/bench/import",
      "/api/bench/export.csv",
      "/api/bench/parts/{id}/goes-with",
      "/api/read",
      "/api/read-many",
      "/api/judge",
      "/api/resale",
      "/api/catalogue/{id}",
      "/api/catalogue/import",
      "/api/catalogue/export.csv",
      "/api/evidence/{id}",
      "/api/evidence/import",
      "/api/evidence/export.csv",
      "/api/sightings/{id}",
      "/api/sightings/{id}/buy",
      "/api/sightings/export.csv",
      "/api/books/{id}",
      "/api/books/sell",
      "/api/books/summary",
      "/api/books/import",
      "/api/books/export.csv",
      "/api/plan",
      "/api/plan/jobs",
      "/api/plan/jobs/{id}",
      "/api/watch",
      "/api/watch/{id}",
      "/api/batches",
      "/api/batches/{id}",
      "/api/batches/{id}/resume",
      "/api/hits",
      "/api/hits/{id}",
      "/api/costs",
      "/api/settings",
      "/api/labels",
      "/api/codes/{code}",
      "/api/health",
    ]),
  );
  expect(body.paths["/api/estimate"].post.requestBody.content["application/json"].schema.required).toEqual([
    "head",
    "shaft",
    "grip",
  ]);
  expect(Object.keys(body.components.schemas)).toEqual(
    expect.arrayContaining([
      ...["Part", "Resolution", "Estimates", "ErrorReply", "CatalogueModel", "Evidence", "Sighting"],
      ...["Entry", "Listing", "CostSettings", "Resale", "Deal", "BooksSummary", "Plan", "Watch", "Hit"],
    ]),
  );
});

it("refers only to schemas that are there", async () => {
  const app = await testApp();
  const { body } = await ask(app, "GET", "/api/openapi.json");
  const names = [...JSON.stringify(body).matchAll(/"#\/components\/schemas\/([^"]+)"/g)].map(
    ([, name]) => name,
  );
  expect(names.length).toBeGreaterThan(20);
  expect(names.filter((name) => !Object.hasOwn(body.components.schemas, name ?? ""))).toEqual([]);
});
