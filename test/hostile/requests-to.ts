import fc from "fast-check";
import { breakOne } from "./break-one.ts";
import type { Described } from "./described-routes.ts";
import { fromSchema, type JsonSchema, type World } from "./from-schema.ts";
import { hostileTexts, longTexts, wellFormed } from "./hostile-values.ts";
import { jsonText } from "./json-text.ts";

export interface HostileRequest {
  readonly method: Described["method"];
  readonly url: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly payload?: string | Buffer;
}

/** Requests to a route: some as it wants them, most with one thing wrong, a few that are no request at all. */
export function requestsTo(route: Described, world: World): fc.Arbitrary<HostileRequest> {
  return fc
    .record({ url: urlOf(route, world), payload: payloadOf(route.body, world), headers: headersOf(route) })
    .map(({ url, payload, headers }) => ({
      method: route.method,
      url,
      headers: payload === undefined ? withoutType(headers) : headers,
      ...(payload === undefined ? {} : { payload }),
    }));
}

function withoutType({ "content-type": _type, ...rest }: Record<string, string>): Record<string, string> {
  return rest;
}

function headersOf({ method }: Described): fc.Arbitrary<Record<string, string>> {
  const types = fc.oneof(
    { arbitrary: fc.constant("application/json"), weight: 12 },
    {
      arbitrary: fc.constantFrom(
        ...[
          "application/json; charset=utf-16",
          "text/plain",
          "application/x-www-form-urlencoded",
          "text/csv",
        ],
        ...[
          "multipart/form-data; boundary=x",
          "application/jsonx",
          "",
          "a/b/c",
          "application/json; charset=\u00ff",
        ],
      ),
      weight: 1,
    },
  );
  const key = fc.constantFrom("00000000-made-up", "short", "a b c d e f g h", "x".repeat(3000));
  const version = fc.constantFrom("*", '"0"', 'W/"x"', '"a", "b"', "x".repeat(3000));
  const others = fc.record({ "idempotency-key": key, "if-match": version }, { requiredKeys: [] });
  const some = fc.oneof({ arbitrary: fc.constant({}), weight: 9 }, { arbitrary: others, weight: 1 });
  if (method === "GET") return some;
  return fc.tuple(types, some).map(([type, other]) => ({ "content-type": type, ...other }));
}

function urlOf({ path, query }: Described, world: World): fc.Arbitrary<string> {
  const known = fc.constantFrom(...world.words).map(encodeURIComponent);
  const hostile = fc.constantFrom(...hostileTexts, ...longTexts.map((text) => text.slice(0, 3000)));
  const raw = fc.constantFrom(
    "%",
    "%zz",
    "%c0%af",
    "%ed%a0%80",
    "..%2f..%2fbench.sqlite",
    "%2e%2e",
    "a%00",
    ";x=1",
  );
  const id = fc.oneof(
    { arbitrary: known, weight: 6 },
    { arbitrary: hostile.map((text) => encodeURIComponent(wellFormed(text))), weight: 2 },
    { arbitrary: raw, weight: 1 },
  );
  const ids = path.split(/\{\w+\}/);
  const filled = fc
    .array(id, { minLength: ids.length - 1, maxLength: ids.length - 1 })
    .map((values) => ids.map((part, at) => part + (values[at] ?? "")).join(""));
  return fc.tuple(filled, queryOf(query, world)).map(([url, text]) => (text === "" ? url : `${url}?${text}`));
}

function queryOf(query: Described["query"], world: World): fc.Arbitrary<string> {
  const model = Object.fromEntries(query.map(({ name, schema }) => [name, fromSchema(schema, world, name)]));
  const required = query.filter((each) => each.required).map(({ name }) => name);
  const good = fc
    .record(model, { requiredKeys: required })
    .map((values) => pairsText(Object.entries(values)));
  const name = fc.constantFrom(...query.map((each) => each.name), "__proto__", "a[b]", "constructor");
  const bad = fc
    .tuple(good, name, fc.constantFrom(...hostileTexts, ...longTexts.map((text) => text.slice(0, 5000))))
    .map(([text, key, value]) => [text, pairsText([[key, value]])].filter((each) => each !== "").join("&"));
  const broken = fc.constantFrom("%", "&&&", "=", "a=%zz", "a=1&a=2", "a[]=1&a[b]=2", "?", "#");
  return fc.oneof(
    { arbitrary: good, weight: 5 },
    { arbitrary: bad, weight: 2 },
    { arbitrary: broken, weight: 1 },
  );
}

function pairsText(pairs: readonly (readonly [string, unknown])[]): string {
  return pairs
    .map(([name, value]) => `${encodeURIComponent(name)}=${encodeURIComponent(wellFormed(String(value)))}`)
    .join("&");
}

function payloadOf(body: JsonSchema | undefined, world: World): fc.Arbitrary<string | Buffer | undefined> {
  if (!body)
    return fc.oneof({ arbitrary: fc.constant(undefined), weight: 4 }, { arbitrary: junk, weight: 1 });
  const good = fromSchema(body, world);
  return fc.oneof(
    { arbitrary: good.map(jsonText), weight: 3 },
    { arbitrary: good.chain(breakOne).map(jsonText), weight: 7 },
    { arbitrary: good.map(jsonText).chain(breakText), weight: 1 },
    { arbitrary: junk, weight: 1 },
    { arbitrary: fc.constant(undefined), weight: 1 },
  );
}

const junk: fc.Arbitrary<string | Buffer> = fc.oneof(
  fc.constantFrom(
    "",
    "{",
    "null",
    "[]",
    "{}",
    '""',
    "0",
    "a=1",
    "<x/>",
    "{'a':1}",
    '{"a":1,}',
    "//\n{}",
    "\ufeff{}",
  ),
  fc.constantFrom('{"__proto__":{"x":1}}', '{"constructor":{"prototype":{"x":1}}}', '{"a":NaN}', "\u0000"),
  fc.constantFrom(...["ff", "c080", "eda080", "7b22c322", "fffe7b00"].map((hex) => Buffer.from(hex, "hex"))),
  fc.uint8Array({ maxLength: 200 }).map((bytes) => Buffer.from(bytes)),
);

/** JSON that was cut off, or into which a byte has got that does not belong there. */
function breakText(text: string): fc.Arbitrary<string | Buffer> {
  return fc
    .tuple(fc.integer({ min: 0, max: text.length }), fc.constantFrom("cut", "byte", "sign"))
    .map(([at, how]) => {
      if (how === "cut") return text.slice(0, at);
      if (how === "sign") return `${text.slice(0, at)}\u0001${text.slice(at)}`;
      return Buffer.concat([
        Buffer.from(text.slice(0, at)),
        Buffer.from([0xff]),
        Buffer.from(text.slice(at)),
      ]);
    });
}
