import type { App } from "./context.ts";

export function addOpenApiRoute(app: App): void {
  app.get("/api/openapi.json", { schema: { hide: true } }, async () => app.swagger());
}
