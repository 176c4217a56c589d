/** What was kept under a name, for as long as the browser's tab lives; `undefined` where there is nothing, or storage is shut. */
export function readFromTab<T>(name: string): T | undefined {
  try {
    return JSON.parse(sessionStorage.getItem(`ferrule.${name}`) ?? "null") ?? undefined;
  } catch {
    return undefined;
  }
}

/** Keeps something under a name, or forgets it when there is nothing to keep. */
export function keepInTab(name: string, value: unknown): void {
  try {
    if (value === undefined) sessionStorage.removeItem(`ferrule.${name}`);
    else sessionStorage.setItem(`ferrule.${name}`, JSON.stringify(value));
  } catch {
    // Storage is shut: the page still holds it for as long as it is open.
  }
}
