import { css } from "lit";

export const clubStyles = css`
  .summary {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(16rem, 100%), 1fr));
    gap: 1rem;
  }
  .summary p {
    margin: 0.2rem 0;
  }
  .summary ul {
    border-left: 2px dashed var(--line);
    padding-left: 1rem;
  }
  .summary li {
    padding: 0.25rem 0;
  }
  .large {
    font-size: 1.25rem;
  }
  caption {
    text-align: left;
    padding-bottom: 0.5rem;
  }
`;
