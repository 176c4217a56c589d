/** How long after its answer a change of this page may still be heard of. */
const lateMs = 2000;

/**
 * Which of the changes that are heard of were made by this page: as many as it sent a moment ago, no more. Another's that is
 * taken for one of them makes the page's own be taken for another's, so that what is shown follows all the same.
 */
export class OwnWrites {
  readonly #sent = new Set<{ endsAt: number }>();

  /** A change is being sent; what comes back is called when it is answered. */
  begin(): (now: number, isTaken: boolean) => void {
    const one = { endsAt: Number.POSITIVE_INFINITY };
    this.#sent.add(one);
    return (now, isTaken) => {
      if (isTaken) one.endsAt = now + lateMs;
      else this.#sent.delete(one);
    };
  }

  /** Whether a change that is heard of now is one of them; it counts as heard. */
  takes(now: number): boolean {
    for (const one of this.#sent) {
      this.#sent.delete(one);
      if (one.endsAt >= now) return true;
    }
    return false;
  }
}
