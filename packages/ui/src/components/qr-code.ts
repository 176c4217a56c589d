import { html, svg, type TemplateResult } from "lit";
import { encode } from "uqr";

/** A QR code as a drawing; `words` says what it holds to those who cannot see it. */
export function qrCode(text: string, words: string): TemplateResult {
  const { data, size } = encode(text, { border: 4, ecc: "M" });
  const path = data
    .flatMap((row, y) => row.map((isDark, x) => (isDark ? `M${x} ${y}h1v1h-1z` : "")))
    .join("");
  return html`<svg viewBox="0 0 ${size} ${size}" role="img" aria-label=${words} shape-rendering="crispEdges" class="qr">
    ${svg`<path d=${`M0 0h${size}v${size}H0z`} fill="#fff" /><path d=${path} fill="#000" />`}
  </svg>`;
}
