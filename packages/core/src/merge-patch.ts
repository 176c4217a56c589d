/** The target changed by a patch, as in RFC 7396: `null` removes a field, groups are merged, anything else replaces. */
export function mergePatch(target: unknown, patch: unknown): unknown {
  if (!isGroup(patch)) return patch;
  const kept = new Map(Object.entries(isGroup(target) ? target : {}));
  for (const [key, value] of Object.entries(patch)) {
    if (value === null) kept.delete(key);
    else kept.set(key, mergePatch(kept.get(key), value));
  }
  return Object.fromEntries(kept);
}

function isGroup(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
