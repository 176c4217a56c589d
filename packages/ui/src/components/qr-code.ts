import { html, svg, type TemplateResult } from "lit";
import { qrPath } from "../labels/qr-path.ts";

/** A QR code as a drawing; `words` says what it holds to those who cannot see it. */
export function qrCode(text: string, words: string): TemplateResult {
  const { size, path } = qrPath(text);
  return html`<svg viewBox="0 0 ${size} ${size}" role="img" aria-label=${words} shape-rendering="crispEdges" class="qr">
    ${svg`<path d=${`M0 0h${size}v${size}H0z`} fill="#fff" /><path d=${path} fill="#000" />`}
  </svg>`;
}
