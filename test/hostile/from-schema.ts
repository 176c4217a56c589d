import fc from "fast-check";

/** As much of JSON Schema (draft 2020-12) as the description of the routes uses. */
export interface JsonSchema {
  readonly $ref?: string;
  readonly type?: string | readonly string[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly JsonSchema[];
  readonly oneOf?: readonly JsonSchema[];
  readonly allOf?: readonly JsonSchema[];
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: boolean | JsonSchema;
  readonly propertyNames?: JsonSchema;
  readonly items?: JsonSchema;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly pattern?: string;
  readonly format?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly exclusiveMaximum?: number;
}

export interface World {
  /** What `$ref` names. */
  readonly named: Readonly<Record<string, JsonSchema>>;
  /** Words that mean something to the bench, such as ids of what is on it. */
  readonly words: readonly string[];
  /** What a field of this name is to hold, where its schema alone would waste the time. */
  readonly fields: Readonly<Record<string, fc.Arbitrary<unknown>>>;
}

const mostItems = 3;

/** Values that a schema takes, as far as it says: what else a route holds them to is for the route to say. */
export function fromSchema(schema: JsonSchema, world: World, field = ""): fc.Arbitrary<unknown> {
  const known = world.fields[field];
  if (known && Object.hasOwn(world.fields, field)) return known;
  if (schema.$ref !== undefined) return referred(schema.$ref, world);
  if (schema.const !== undefined) return fc.constant(schema.const);
  if (schema.enum) return fc.constantFrom(...schema.enum);
  const choices = schema.anyOf ?? schema.oneOf;
  if (choices) return fc.oneof(...choices.map((each) => fromSchema(each, world, field)));
  if (schema.allOf) return merged(schema.allOf.map((each) => fromSchema(each, world, field)));
  const types = [schema.type ?? "any"].flat();
  return fc.oneof(...types.map((type) => ofType(type, schema, world)));
}

function referred(ref: string, world: World): fc.Arbitrary<unknown> {
  const schema = world.named[ref.slice("#/components/schemas/".length)];
  if (!schema) throw new Error(`The description names ${ref} and does not have it`);
  return fromSchema(schema, world);
}

function merged(parts: readonly fc.Arbitrary<unknown>[]): fc.Arbitrary<unknown> {
  return fc.tuple(...parts).map((values) => Object.assign({}, ...values));
}

function ofType(type: string, schema: JsonSchema, world: World): fc.Arbitrary<unknown> {
  switch (type) {
    case "null":
      return fc.constant(null);
    case "boolean":
      return fc.boolean();
    case "integer":
      return integers(schema);
    case "number":
      return numbers(schema);
    case "string":
      return texts(schema, world);
    case "array":
      return lists(schema, world);
    case "object":
      return objects(schema, world);
    case "any":
      return fc.jsonValue({ maxDepth: 2 });
    default:
      throw new Error(`The description has a type ${type}, which no JSON Schema has`);
  }
}

function integers(schema: JsonSchema): fc.Arbitrary<number> {
  const min = Math.max(schema.minimum ?? -1e9, Number.MIN_SAFE_INTEGER);
  const max = Math.min(schema.maximum ?? 1e9, Number.MAX_SAFE_INTEGER);
  const small = fc.integer({ min: Math.max(min, Math.min(max, 0)), max: Math.min(max, Math.max(min, 5000)) });
  return fc.oneof(small, fc.constantFrom(min, max), fc.integer({ min, max }));
}

function numbers(schema: JsonSchema): fc.Arbitrary<number> {
  const min = schema.minimum ?? schema.exclusiveMinimum ?? -1e6;
  const max = schema.maximum ?? schema.exclusiveMaximum ?? 1e6;
  const isIn = (value: number) => value !== schema.exclusiveMinimum && value !== schema.exclusiveMaximum;
  const any = fc.double({ min, max, noNaN: true }).filter(isIn);
  const whole = { min: Math.ceil(min), max: Math.floor(max) };
  return whole.max - whole.min < 2 ? any : fc.oneof(any, fc.integer(whole).filter(isIn));
}

function texts(schema: JsonSchema, { words }: World): fc.Arbitrary<string> {
  const { format, pattern, minLength = 0, maxLength = 60 } = schema;
  if (format === "date" || pattern?.includes("\\d{4}-\\d{2}-\\d{2}"))
    return fc.constantFrom("2026-05-31", "2026-11-25", "2024-02-29", "1999-12-31", "2199-01-01");
  if (pattern === "^[A-Z]{3}$") return fc.constantFrom("EUR", "EUR", "GBP", "JPY", "XXX");
  if (pattern !== undefined) return fc.stringMatching(new RegExp(pattern));
  const long = Math.min(maxLength, 60);
  const free = fc.string({ minLength: Math.min(minLength, long), maxLength: long, unit: "grapheme" });
  const fitting = words.filter(({ length }) => length >= minLength && length <= maxLength);
  return fc.oneof({ arbitrary: fc.constantFrom(...fitting), weight: 3 }, { arbitrary: free, weight: 1 });
}

function lists({ items = {}, minItems = 0, maxItems }: JsonSchema, world: World): fc.Arbitrary<unknown> {
  const maxLength = Math.min(maxItems ?? mostItems, Math.max(minItems, mostItems));
  return fc.array(fromSchema(items, world), { minLength: minItems, maxLength });
}

function objects(schema: JsonSchema, world: World): fc.Arbitrary<unknown> {
  const { properties = {}, required = [], additionalProperties, propertyNames } = schema;
  const model = Object.fromEntries(
    Object.entries(properties).map(([name, inner]) => [name, fromSchema(inner, world, name)]),
  );
  const known = fc.record(model, { requiredKeys: required.filter((name) => Object.hasOwn(model, name)) });
  if (additionalProperties === undefined || additionalProperties === false) return known;
  const more = additionalProperties === true ? {} : additionalProperties;
  const names = propertyNames ? fromSchema(propertyNames, world) : fc.constantFrom("massG", "note", "x");
  const others = fc.array(fc.tuple(names, fromSchema(more, world)), { maxLength: 2 });
  return fc
    .tuple(known, others)
    .map(([own, extra]) => ({ ...Object.fromEntries(extra as [string, unknown][]), ...own }));
}
