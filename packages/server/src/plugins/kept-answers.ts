import { createHash } from "node:crypto";
import type { FastifyInstance, FastifyRequest } from "fastify";
import { ProblemError } from "../errors.ts";
import type { KeptAnswersTable } from "../store/kept-answers.ts";

const keyHeader = "idempotency-key";
const keptDays = 30;
const dayMs = 86_400_000;

/**
 * Does what comes with a key once: sent again, because the answer was lost on the way, it gets the answer that was given
 * (after the IETF draft "The Idempotency-Key HTTP Header Field"). Answers that may be another next time are not kept.
 * A key stands for one request: with another method, address or body it is refused. The id of a new thing may differ: where
 * the first try was given up on, the page has made one of its own meanwhile.
 */
export function addKeptAnswers(app: FastifyInstance, answers: KeptAnswersTable, today: () => string): void {
  const underWay = new Set<string>();
  app.addHook("preHandler", async (request, reply) => {
    const key = keyOf(request.method, request.headers[keyHeader]);
    if (key === undefined) return;
    const kept = answers.get(key);
    if (kept && isPrinted(kept.body) && !kept.body.startsWith(printOf(request)))
      throw new ProblemError(usedBefore);
    if (kept)
      return reply
        .code(kept.status)
        .header("idempotency-replayed", "true")
        .serializer((body: string) => body)
        .type("application/json; charset=utf-8")
        .send(isPrinted(kept.body) ? kept.body.slice(printLength) : kept.body);
    if (underWay.has(key)) throw new ProblemError({ code: "still-at-it" });
    underWay.add(key);
    reply.raw.once("close", () => underWay.delete(key));
  });
  app.addHook("onSend", async (request, reply, body) => {
    const key = request.headers[keyHeader];
    if (typeof key !== "string" || !underWay.has(key)) return;
    if (reply.statusCode >= 300 || typeof body !== "string") return;
    try {
      answers.put(key, { status: reply.statusCode, body: printOf(request) + body }, today());
      answers.forgetBefore(new Date(Date.parse(today()) - keptDays * dayMs).toISOString().slice(0, 10));
    } catch (error) {
      // What was asked for is done and on disk: a disk that has filled since must not say otherwise.
      request.log.error(error);
    }
  });
}

const usedBefore = {
  code: "bad-request",
  refusals: [
    {
      field: "Idempotency-Key",
      got: "a key that came with another request",
      expected: "a new key for every request",
    },
  ],
} as const;

const printLength = 64;

/** SHA-256 of what is asked, in hexadecimal, but for the id of a new thing. */
function printOf({ method, url, body }: FastifyRequest): string {
  const isNew = method === "POST" && typeof body === "object" && body !== null && !Array.isArray(body);
  const asked = isNew ? { ...body, id: undefined } : (body ?? null);
  return createHash("sha256")
    .update(JSON.stringify([method, url, asked]))
    .digest("hex");
}

/** Whether an answer was kept with a print before it: those of earlier versions begin as JSON does. */
function isPrinted(body: string): boolean {
  return /^[0-9a-f]{64}/.test(body);
}

function keyOf(method: string, header: string | readonly string[] | undefined): string | undefined {
  if (header === undefined || method === "GET" || method === "HEAD") return undefined;
  if (typeof header === "string" && /^[\w-]{8,100}$/.test(header)) return header;
  const refusal = {
    field: "Idempotency-Key",
    got: JSON.stringify(header),
    expected: "8 to 100 letters, digits, - or _",
  };
  throw new ProblemError({ code: "bad-request", refusals: [refusal] });
}
