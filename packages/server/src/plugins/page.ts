import { existsSync } from "node:fs";
import { join } from "node:path";
import fastifyStatic from "@fastify/static";
import type { FastifyInstance } from "fastify";
import { problemBody } from "../errors.ts";

/** Pages that a device sees before it is paired. */
const outside: ReadonlySet<string> = new Set(["/pair", "/trust"]);

/**
 * Serves the built page. An address that no file has is a view of the page itself, unless it is one of the API or names
 * a file and does not ask for a page (the id of a part may have a dot in it); without a built page such an address is simply not found.
 */
export async function addPage(app: FastifyInstance, pageFolder: string | undefined): Promise<void> {
  const hasPage = pageFolder !== undefined && existsSync(join(pageFolder, "index.html"));
  if (hasPage) await app.register(fastifyStatic, { root: pageFolder, wildcard: false });
  app.setNotFoundHandler((request, reply) => {
    const path = request.url.split("?")[0] ?? "";
    const asksForPage = !/\.\w+$/.test(path) || (request.headers.accept ?? "").includes("text/html");
    const isView = request.method === "GET" && !/^\/api(\/|$)/.test(path) && asksForPage;
    if (isView && hasPage) return reply.sendFile(outside.has(path) ? `${path.slice(1)}.html` : "index.html");
    const message = isView ? "The page has not been built; run npm start, which builds it" : undefined;
    return reply.code(404).send(problemBody({ code: "not-found", message }));
  });
}
