import { css } from "lit";

export const planStyles = css`
  .top,
  .three {
    display: grid;
    gap: 1rem;
    grid-template-columns: minmax(0, 1fr);
    align-items: start;
  }
  @media (min-width: 60rem) {
    .top {
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
    }
    .three {
      grid-template-columns: repeat(3, minmax(0, 1fr));
    }
  }
  .asking {
    border-style: dashed;
    border-color: var(--line-strong);
  }
  td.words {
    font-family: inherit;
    white-space: normal;
  }
`;
