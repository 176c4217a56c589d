/** The last few things by their names; what was not asked for the longest goes first. */
export class LastKept<T> {
  readonly #most: number;
  readonly #things = new Map<string, T>();

  constructor(most: number) {
    this.#most = most;
  }

  has(name: string): boolean {
    return this.#things.has(name);
  }

  /** What is kept under the name, made and kept where nothing is. */
  ask(name: string, make: () => T): T {
    const thing = this.#things.has(name) ? (this.#things.get(name) as T) : make();
    this.#things.delete(name);
    this.#things.set(name, thing);
    for (const oldest of this.#things.keys()) {
      if (this.#things.size <= this.#most) break;
      this.#things.delete(oldest);
    }
    return thing;
  }
}
