/** One setting that would be, or was, changed; `null` where there is none. */
export interface SettingChange {
  /** Its dotted path, such as `costs.hourValueMinor`. */
  readonly path: string;
  readonly before: unknown;
  readonly after: unknown;
}

/** What differs, in the order of the settings. Lists are told as a whole. */
export function changedSettings(before: unknown, after: unknown, path = ""): SettingChange[] {
  if (isRecord(before) && isRecord(after)) {
    const names = [...new Set([...Object.keys(before), ...Object.keys(after)])];
    return names.flatMap((name) =>
      changedSettings(before[name], after[name], path === "" ? name : `${path}.${name}`),
    );
  }
  if (JSON.stringify(before) === JSON.stringify(after)) return [];
  return [{ path, before: before ?? null, after: after ?? null }];
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
