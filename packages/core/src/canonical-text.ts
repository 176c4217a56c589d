/**
 * A value that came from JSON as JSON text, with the names in every object in order: the same for the same value, whoever
 * wrote it. Names without a value are left out, as JSON leaves them out.
 */
export function canonicalText(value: unknown): string {
  return JSON.stringify(value, (_name, each: unknown) => (isPlain(each) ? inOrder(each) : each)) ?? "null";
}

function isPlain(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function inOrder(value: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const names = Object.keys(value).sort();
  return Object.fromEntries(names.map((name) => [name, value[name]]));
}
