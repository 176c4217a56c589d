/**
 * Where in a JSON text, as a path such as `parts.0.id`, half of a character stands alone; nothing where none does. Such a
 * text cannot be written as UTF-8, so what is kept would differ from what was sent, and two ids might become one.
 */
export function loneSurrogateAt(text: string, value: unknown): string | undefined {
  // UTF-8 has none, so they come by escapes only; most texts have no escape of that kind, and need no looking through.
  return /\\u[dD][89a-fA-F]/.test(text) ? pathOf(value, "") : undefined;
}

function pathOf(value: unknown, path: string): string | undefined {
  if (typeof value === "string") return isWhole(value) ? undefined : path || "(the body)";
  if (typeof value !== "object" || value === null) return undefined;
  for (const [key, inner] of Object.entries(value)) {
    const at = path === "" ? key : `${path}.${key}`;
    const broken = isWhole(key) ? pathOf(inner, at) : path || "(the body)";
    if (broken !== undefined) return broken;
  }
  return undefined;
}

function isWhole(text: string): boolean {
  return !/\p{Surrogate}/u.test(text);
}
