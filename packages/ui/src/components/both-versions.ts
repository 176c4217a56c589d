import { css, html, type TemplateResult } from "lit";
import type { Side } from "../clash/sides.ts";
import { unlikeItems } from "../words/unlike-items.ts";

export const bothVersionsStyles = css`
  .versions {
    width: 100%;
    border-collapse: collapse;
    table-layout: fixed;
  }
  .versions :is(th, td) {
    padding: 0.4rem 0.5rem;
    border-top: 1px solid var(--line);
    text-align: left;
    vertical-align: top;
    overflow-wrap: anywhere;
  }
  @media (max-width: 34rem) {
    .versions th:first-child {
      width: 24%;
    }
    .versions :is(th, td) {
      padding: 0.4rem 0.2rem;
    }
  }
`;

/** How the table of two versions is said. */
export interface VersionsWords {
  readonly mine: string;
  readonly theirs: string;
  readonly field: (field: string) => string;
  readonly value: (field: string, value: unknown) => string;
}

/** Two versions side by side, a row for each field in which they differ. `cell` puts more into a row, such as a choice. */
export function bothVersions(
  sides: readonly Side[],
  { mine, theirs, field, value }: VersionsWords,
  cell: (side: Side, of: "mine" | "theirs", text: string) => TemplateResult | string = (_side, _of, text) =>
    text,
): TemplateResult {
  return html`<table class="versions">
    <thead><tr><th scope="col">Field</th><th scope="col">${mine}</th><th scope="col">${theirs}</th></tr></thead>
    <tbody>${sides.map((side) => {
      const [own, other] = unlikeItems(side.mine, side.theirs);
      return html`<tr><th scope="row">${field(side.field)}</th>
        <td>${cell(side, "mine", value(side.field, own))}</td><td>${cell(side, "theirs", value(side.field, other))}</td></tr>`;
    })}</tbody>
  </table>`;
}
