import type { FastifyReply, FastifyRequest } from "fastify";
import { z } from "zod";
import { valueOrThrow } from "../errors.ts";
import type { Listener } from "../live/live-feed.ts";
import { tokenFrom } from "../pairing/device-cookie.ts";
import { isThisMachine } from "../plugins/paired-devices.ts";
import { errorReplySchema } from "../wire/replies.ts";
import type { App, RouteContext } from "./context.ts";

const number = /^\d{1,15}$/;
const querySchema = z.strictObject({
  after: z.string().regex(number).optional().describe("The last change that was heard of, as Last-Event-ID"),
});
const streamReply = {
  200: { content: { "text/event-stream": { schema: z.string() } } },
  "4xx": errorReplySchema,
  "5xx": errorReplySchema,
};

/** What a listener that does not read may leave lying before it is sent away, to come again when it can. */
const unreadMost = 1024 * 1024;

/** Server-sent events: one for every change, to whoever may read the bench. */
export function addEvents(app: App, { liveFeed, pairing }: RouteContext): void {
  app.addHook("preClose", async () => liveFeed.close());
  app.get(
    "/api/events",
    { schema: { querystring: querySchema, response: streamReply } },
    (request, reply) => {
      const { raw } = reply;
      const begin = () => {
        reply.hijack();
        request.raw.socket.setTimeout(0);
        raw.writeHead(200, {
          ...(reply.getHeaders() as Record<string, string>),
          "content-type": "text/event-stream; charset=utf-8",
          "cache-control": "no-store",
          // Nothing else is asked over this connection, and a server that closes does not wait for it.
          connection: "close",
        });
      };
      const listener = listenerOf(request, reply, request.query.after, begin, pairing);
      const leave = valueOrThrow(liveFeed.listen(listener));
      raw.once("close", leave);
    },
  );
}

/** The stream begins with the first of its text, so that a listener too many is still told so as everybody is. */
function listenerOf(
  request: FastifyRequest,
  { raw }: FastifyReply,
  queried: string | undefined,
  begin: () => void,
  pairing: RouteContext["pairing"],
): Listener {
  const isHere = isThisMachine(request);
  const token = isHere ? undefined : tokenFrom(request.headers.cookie);
  const device = () => (token === undefined ? undefined : pairing.deviceOf(token));
  const heard = [request.headers["last-event-id"], queried].flat().find((one) => number.test(one ?? ""));
  return {
    of: device()?.id ?? "here",
    after: heard === undefined ? undefined : Number(heard),
    isWelcome: () => isHere || device() !== undefined,
    take: (text) => {
      if (!raw.headersSent) begin();
      raw.write(text);
      return raw.writableLength < unreadMost;
    },
    end: () => (raw.writableLength < unreadMost ? raw.end() : raw.destroy()),
  };
}
