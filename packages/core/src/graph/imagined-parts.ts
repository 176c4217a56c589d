import { type WantedPart, without } from "./wanted-part.ts";

/** Imagined parts by what they state, so that whoever looks parts up by themselves meets each of them once. */
export class ImaginedParts {
  private readonly known = new Map<string, WantedPart>();
  private readonly lesser = new Map<string, WantedPart>();

  once(wanted: WantedPart): WantedPart {
    const known = this.known.get(wanted.part.id);
    if (known) return known;
    this.known.set(wanted.part.id, wanted);
    return wanted;
  }

  /** The same without one of the facts it states. */
  without(wanted: WantedPart, path: string): WantedPart {
    const key = `${path} ${wanted.part.id}`;
    let less = this.lesser.get(key);
    if (!less) {
      less = this.once(without(wanted, path));
      this.lesser.set(key, less);
    }
    return less;
  }
}
