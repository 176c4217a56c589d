import type { Part } from "@ferrule/core";
import { css, html, svg, type TemplateResult } from "lit";
import type { LengthUnit } from "../format/length.ts";
import type { Label } from "../label-api.ts";
import { shortFacts } from "../words/part-facts.ts";
import { titleById } from "../words/part-title.ts";
import { kindWords } from "../words/part-words.ts";
import { qrPath } from "./qr-path.ts";

/** Black on white in every theme: it is for paper and for scanners. Sizes hang on the label's height, `--label-height`. */
export const labelCardStyles = css`
  .tag {
    width: var(--label-width);
    height: var(--label-height);
    padding: 1mm;
    display: flex;
    gap: 1mm;
    overflow: hidden;
    background: #fff;
    color: #000;
  }
  .tag svg {
    flex: none;
    align-self: center;
    height: min(100%, calc(var(--label-width) * 0.45));
    aspect-ratio: 1;
  }
  .tag div {
    min-width: 0;
    flex: 1;
    display: flex;
    flex-direction: column;
    justify-content: center;
    line-height: 1.15;
    font-size: clamp(5pt, calc(var(--label-height) * 0.09), 10pt);
  }
  .tag strong {
    font-family: var(--mono);
    font-size: clamp(8pt, calc(var(--label-height) * 0.19), 20pt);
    letter-spacing: 0.04em;
    line-height: 1.1;
  }
  .tag span {
    overflow: hidden;
    display: -webkit-box;
    -webkit-box-orient: vertical;
    -webkit-line-clamp: 2;
    overflow-wrap: anywhere;
  }
  .tag .what {
    font-weight: 600;
  }
`;

/** What a scanner reads: the address of the page where another device could open it, else the code alone. */
function scannedText(code: string, address: string | null): string {
  return address === null ? code : `${address}/code/${code}`;
}

/** One label: the code to scan, the code to read, and what it is. */
export function labelCard(
  label: Label,
  parts: ReadonlyMap<string, Part>,
  { address, lengthUnit }: { readonly address: string | null; readonly lengthUnit: LengthUnit },
): TemplateResult {
  const part = parts.get(label.part);
  const { size, path } = qrPath(scannedText(label.code, address));
  return html`<div class="tag">
    ${svg`<svg viewBox="0 0 ${size} ${size}" aria-hidden="true" shape-rendering="crispEdges"><path d=${path} fill="#000" /></svg>`}
    <div>
      <strong>${label.code}</strong>
      <span class="what">${titleById(parts, label.part)}</span>
      <span>${part ? detailText(part, label, parts, lengthUnit) : ""}</span>
    </div>
  </div>`;
}

function detailText(
  part: Part,
  { joined }: Label,
  parts: ReadonlyMap<string, Part>,
  unit: LengthUnit,
): string {
  const kinds = joined
    .flatMap((id) => parts.get(id)?.kind ?? [])
    .map((kind) => kindWords[kind].toLowerCase());
  if (kinds.length > 0) return `${part.id}, with ${kinds.join(", ")}`;
  return [part.id, ...shortFacts(part, unit).slice(0, 3)].join(" · ");
}
