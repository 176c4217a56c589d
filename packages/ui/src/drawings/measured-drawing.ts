import { LitElement, type PropertyDeclarations } from "lit";

/** A drawing that knows how wide it may be, so that its lettering is as large on a phone as on a wide screen. */
export abstract class MeasuredDrawing extends LitElement {
  static override properties: PropertyDeclarations = { widthPx: { state: true } };
  declare protected widthPx: number;
  readonly #watcher = new ResizeObserver(([entry]) => {
    const widthPx = Math.floor(entry?.contentRect.width ?? 0);
    // A scrollbar that comes and goes with the height would otherwise never let it rest.
    if (Math.abs(widthPx - this.widthPx) > 1) this.widthPx = widthPx;
  });

  constructor() {
    super();
    this.widthPx = 0;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#watcher.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#watcher.disconnect();
  }
}
