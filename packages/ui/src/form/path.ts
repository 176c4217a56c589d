/** The value at a dotted path, or `undefined`. */
export function valueAt(of: unknown, path: string): unknown {
  return path.split(".").reduce<unknown>((value, key) => (isRecord(value) ? value[key] : undefined), of);
}

/** A copy with the value at a dotted path set. */
export function withValue(
  of: Readonly<Record<string, unknown>>,
  path: string,
  value: unknown,
): Record<string, unknown> {
  const [key = "", ...rest] = path.split(".");
  if (rest.length === 0) return { ...of, [key]: value };
  const inner = of[key];
  return { ...of, [key]: withValue(isRecord(inner) ? inner : {}, rest.join("."), value) };
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null;
}
