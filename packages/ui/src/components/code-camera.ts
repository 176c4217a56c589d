import { css, html, LitElement } from "lit";
import { tell } from "../events.ts";
import { baseStyles } from "../styles/base-styles.ts";

/** The part that is used of the Barcode Detection API (wicg.github.io/shape-detection-api), which not every browser has. */
interface Detector {
  detect(source: HTMLVideoElement): Promise<readonly { readonly rawValue: string }[]>;
}
type DetectorMaker = new (options: { readonly formats: readonly string[] }) => Detector;

const makerHere = (): DetectorMaker | undefined =>
  (globalThis as unknown as { BarcodeDetector?: DetectorMaker }).BarcodeDetector;

/** How often a picture is looked at. */
const lookEveryMs = 250;

/** Reads labels with the camera where the browser can, and says so where it cannot. Sends `ferrule-scanned`. */
export class CodeCamera extends LitElement {
  static override properties = { looking: { state: true }, trouble: { state: true } };
  static override styles = [
    baseStyles,
    css`
      video {
        width: 100%;
        max-width: 26rem;
        border-radius: 4px;
        background: #000;
      }
    `,
  ];
  declare private looking: boolean;
  declare private trouble: string | undefined;
  #stream: MediaStream | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor() {
    super();
    this.looking = false;
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop();
  }

  override render() {
    return html`<section class="ticket stack" aria-labelledby="camera">
      <h2 id="camera">With the camera</h2>
      ${this.renderCamera()}
    </section>`;
  }

  private renderCamera() {
    const why = whyNot();
    if (why)
      return html`<p>${why}</p><p class="soft">A phone’s own camera app reads labels too: those that carry an address open the part’s page.</p>`;
    return html`${this.trouble ? html`<p role="alert">✕ ${this.trouble}</p>` : ""}
      ${this.looking ? html`<video muted playsinline aria-label="What the camera sees"></video><button @click=${() => this.#stop()}>Stop</button>` : html`<button @click=${() => this.#start()}>Scan a label</button>`}`;
  }

  async #start(): Promise<void> {
    const Maker = makerHere();
    if (!Maker) return;
    this.trouble = undefined;
    try {
      this.#stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment" } });
    } catch {
      this.trouble = "The camera was not given free, or there is none. Type the code instead.";
      return;
    }
    this.looking = true;
    await this.updateComplete;
    const video = this.renderRoot.querySelector("video");
    if (!video || !this.isConnected) return this.#stop();
    video.srcObject = this.#stream;
    await video.play().catch(() => this.#stop());
    this.#look(new Maker({ formats: ["qr_code"] }), video);
  }

  #look(detector: Detector, video: HTMLVideoElement): void {
    this.#timer = setTimeout(async () => {
      if (!this.looking) return;
      // A picture that is not there yet is no reason to stop.
      const [seen] = await detector.detect(video).catch(() => []);
      if (!seen) return this.#look(detector, video);
      this.#stop();
      tell(this, "ferrule-scanned", { text: seen.rawValue });
    }, lookEveryMs);
  }

  #stop(): void {
    clearTimeout(this.#timer);
    for (const track of this.#stream?.getTracks() ?? []) track.stop();
    this.#stream = undefined;
    this.looking = false;
  }
}

/** Why the camera cannot be used here; nothing where it can. */
function whyNot(): string | undefined {
  if (!makerHere()) return "This browser cannot read codes with its camera. Type the five characters.";
  if (!("mediaDevices" in navigator))
    return "Browsers lend their camera only to addresses that begin with https, or to the machine that serves the bench. Type the five characters.";
  return undefined;
}

customElements.define("ferrule-code-camera", CodeCamera);
