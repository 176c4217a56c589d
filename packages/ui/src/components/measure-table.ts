import type { BasisEntry, Estimate, Estimates } from "@ferrule/core";
import { css, html, type TemplateResult } from "lit";
import type { BenchContext } from "../bench-context.ts";
import { shareText } from "../format/duration.ts";
import { intervalText, lengthIntervalText, swingWeightIntervalText } from "../format/interval.ts";
import { fieldText } from "../words/field-words.ts";
import { sourceWords } from "../words/part-words.ts";

export const measureTableStyles = css`
  .measures {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(17rem, 100%), 1fr));
    gap: 0 1.5rem;
  }
  .measures > div {
    border-top: 1px solid var(--line);
    padding: 0.5rem 0;
  }
  .measures .figure {
    font-family: var(--mono);
    font-weight: 600;
  }
  .measures .drives {
    font-size: 0.875rem;
    color: var(--ink-soft);
  }
`;

interface Measure {
  readonly label: string;
  readonly text: string | undefined;
  readonly basis: readonly BasisEntry[];
}

/** Every measure of a club between the ends of its 95 % interval, with what drives the width. */
export function measureTable(estimates: Estimates, context: BenchContext): TemplateResult {
  const known = measuresOf(estimates, context).filter(({ text }) => text !== undefined);
  return html`<dl class="measures">
      ${known.map(
        ({ label, text, basis }) => html`<div>
        <dt>${label}</dt>
        <dd><span class="figure">${text}</span>${basis[0] ? html`<br /><span class="drives">${driverText(basis)}</span>` : ""}</dd>
      </div>`,
      )}
    </dl>
    ${missingNote(estimates)}`;
}

function measuresOf(estimates: Estimates, { lengthUnit }: BenchContext): Measure[] {
  const length = (label: string, of: Estimate | null): Measure => ({
    label,
    text: of ? lengthIntervalText(of, lengthUnit) : undefined,
    basis: of?.basis ?? [],
  });
  const other = (label: string, of: Estimate | null, unit: string, most: number): Measure => ({
    label,
    text: of ? intervalText(of, unit, most) : undefined,
    basis: of?.basis ?? [],
  });
  const { swingWeight } = estimates;
  return [
    length("Playing length", estimates.playingLengthIn),
    length("Length by the 60° method", estimates.rulesLengthIn),
    {
      label: "Swing weight",
      text: swingWeight ? swingWeightIntervalText(swingWeight) : undefined,
      basis: swingWeight?.basis ?? [],
    },
    other("Mass", estimates.massG, "g", 1),
    length("Balance point from the butt", estimates.balanceFromButtIn),
    other("Moment of inertia about the butt", estimates.moiKgCm2, "kg·cm²", 0),
    other("Frequency", estimates.frequencyCpm, "cpm", 0),
    other("Loft", estimates.loftDeg, "°", 1),
    other("Lie", estimates.lieDeg, "°", 1),
    other("Face angle, closed is positive", estimates.faceAngleDeg, "°", 1),
    length("Cut length of the shaft", estimates.cutLengthIn),
    other("Mass of the cut shaft", estimates.shaftMassG, "g", 1),
    length("Balance of the cut shaft from its tip", estimates.shaftBalanceFromTipIn),
  ];
}

/** "Mostly from H3 mass (a typical figure, 62 %), then …". */
function driverText(basis: readonly BasisEntry[]): string {
  const words = basis.slice(0, 2).map(({ part, field, source, share }) => {
    const name =
      part === "build" ? fieldText(field).toLowerCase() : `${part} ${fieldText(field).toLowerCase()}`;
    return `${name} (${sourceWords[source]}, ${shareText(share)})`;
  });
  return `Width mostly from ${words.join(", then ")}`;
}

function missingNote({ missing }: Estimates): TemplateResult | string {
  if (missing.length === 0) return "";
  return html`<details class="small"><summary>What could not be worked out</summary>
    <ul>${missing.map(({ quantity, part, field, reason }) => html`<li>${fieldText(quantity)}: ${reason} (${part}, ${fieldText(field).toLowerCase()})</li>`)}</ul>
  </details>`;
}
