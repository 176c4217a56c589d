import { css } from "lit";

/** `.two`: side by side where there is room, in the shares that `--first` and `--second` say, equal ones unless they do. */
export const twoColumns = css`
  .two {
    display: grid;
    gap: 1rem;
    grid-template-columns: minmax(0, 1fr);
    align-items: start;
  }
  @media (min-width: 60rem) {
    .two {
      grid-template-columns: minmax(0, var(--first, 1fr)) minmax(0, var(--second, 1fr));
    }
  }
`;
