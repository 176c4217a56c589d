import type { TestApp } from "../api/server.test-kit.ts";
import type { JsonSchema } from "./from-schema.ts";

/** One route as the server describes it. */
export interface Described {
  readonly method: "GET" | "POST" | "PUT" | "PATCH" | "DELETE";
  /** With `{id}` where an id goes. */
  readonly path: string;
  readonly query: readonly {
    readonly name: string;
    readonly schema: JsonSchema;
    readonly required: boolean;
  }[];
  readonly body?: JsonSchema;
}

interface Operation {
  readonly parameters?: readonly { in: string; name: string; required?: boolean; schema: JsonSchema }[];
  readonly responses?: Readonly<Record<string, { readonly content?: Readonly<Record<string, unknown>> }>>;
  readonly requestBody?: { readonly content: Readonly<Record<string, { readonly schema: JsonSchema }>> };
}

/** Every route in the server's own description, and the schemas that it names. A route that is added is here by itself. */
export async function describedRoutes(app: TestApp) {
  const description = (await app.inject("/api/openapi.json")).json() as {
    paths: Record<string, Record<string, Operation>>;
    components: { schemas: Record<string, JsonSchema> };
  };
  const routes = Object.entries(description.paths).flatMap(([path, operations]) =>
    Object.entries(operations)
      .filter(([, operation]) => !isStream(operation))
      .map(([method, operation]) => routeOf(path, method, operation)),
  );
  return { routes, named: description.components.schemas };
}

/** A stream of events never ends by itself, so nothing that waits for the whole answer can ask for it. */
function isStream({ responses }: Operation): boolean {
  return Object.keys(responses?.["200"]?.content ?? {}).includes("text/event-stream");
}

function routeOf(path: string, method: string, { parameters = [], requestBody }: Operation): Described {
  const body = requestBody?.content["application/json"]?.schema;
  return {
    method: method.toUpperCase() as Described["method"],
    path,
    query: parameters
      .filter((each) => each.in === "query")
      .map(({ name, schema, required = false }) => ({ name, schema, required })),
    ...(body ? { body } : {}),
  };
}
