/** A piece of text that stands in JSON as it is, such as a number that no program should have written. */
export class RawJson {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
}

/** An object with its members one after another, so that a name can come twice, or be one that JavaScript keeps to itself. */
export class Members {
  readonly list: readonly (readonly [name: string, value: unknown])[];
  constructor(list: readonly (readonly [name: string, value: unknown])[]) {
    this.list = list;
  }
}

/** JSON with whatever stands in it raw or twice. */
export function jsonText(value: unknown): string {
  if (value instanceof RawJson) return value.text;
  if (value instanceof Members) return membersText(value.list);
  if (Array.isArray(value)) return `[${value.map(jsonText).join(",")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "null";
  return membersText(Object.entries(value).filter(([, inner]) => inner !== undefined));
}

function membersText(list: Members["list"]): string {
  return `{${list.map(([name, value]) => `${JSON.stringify(name)}:${jsonText(value)}`).join(",")}}`;
}
