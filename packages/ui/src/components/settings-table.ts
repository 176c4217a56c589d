import type { SettingEstimate } from "@ferrule/core";
import { css, html, type TemplateResult } from "lit";
import { intervalText } from "../format/interval.ts";
import { numberText } from "../format/number.ts";

export const settingsTableStyles = css`
  .scroll {
    overflow-x: auto;
    max-width: 100%;
  }
  table {
    border-collapse: collapse;
    font-size: 0.875rem;
    width: 100%;
  }
  th,
  td {
    text-align: left;
    padding: 0.4rem 0.6rem 0.4rem 0;
    border-top: 1px solid var(--line);
    vertical-align: top;
  }
  td {
    font-family: var(--mono);
    white-space: nowrap;
  }
  .stacked td::before {
    display: none;
  }
  @media (max-width: 44rem) {
    .stacked thead {
      position: absolute;
      clip-path: inset(50%);
      width: 1px;
      height: 1px;
      overflow: hidden;
    }
    .stacked tr {
      display: block;
      border-top: 1px solid var(--line);
      padding: 0.4rem 0;
    }
    .stacked th,
    .stacked td {
      display: block;
      border: 0;
      padding: 0.1rem 0;
      white-space: normal;
    }
    .stacked td::before {
      content: attr(data-label) ": ";
      display: inline;
      font-family: var(--sans);
      color: var(--ink-soft);
    }
  }
`;

/** Loft, lie and face angle at each setting of the adapter: with the sole flat, and with the face squared by hand. */
export function settingsTable(settings: readonly SettingEstimate[]): TemplateResult {
  return html`<table class="stacked" role="table">
    <caption class="small soft">Soled: resting on its sole. Squared: turned by hand until the face looks straight.</caption>
    <thead role="rowgroup">
      <tr role="row">
        <th scope="col" role="columnheader">Setting</th>
        <th scope="col" role="columnheader">Soled: loft</th>
        <th scope="col" role="columnheader">Soled: lie</th>
        <th scope="col" role="columnheader">Soled: face</th>
        <th scope="col" role="columnheader">Squared: loft</th>
        <th scope="col" role="columnheader">Squared: lie</th>
      </tr>
    </thead>
    <tbody role="rowgroup">${settings.map(settingRow)}</tbody>
  </table>`;
}

function settingRow({ label, rotationDeg, soled, squared }: SettingEstimate): TemplateResult {
  const angle = (of: { value: number; low: number; high: number }) => intervalText(of, "°", 1);
  return html`<tr role="row">
    <th scope="row" role="rowheader">${label} <span class="soft">(${numberText(rotationDeg, 1)}°)</span></th>
    <td role="cell" data-label="Soled, loft">${angle(soled.loftDeg)}</td>
    <td role="cell" data-label="Soled, lie">${angle(soled.lieDeg)}</td>
    <td role="cell" data-label="Soled, face">${angle(soled.faceAngleDeg)}</td>
    <td role="cell" data-label="Squared, loft">${angle(squared.loftDeg)}</td>
    <td role="cell" data-label="Squared, lie">${angle(squared.lieDeg)}</td>
  </tr>`;
}
