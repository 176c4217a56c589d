import { css } from "lit";

export const benchStyles = css`
  .two {
    --first: 6fr;
    --second: 5fr;
  }
  .banner {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem 1rem;
    align-items: center;
    justify-content: space-between;
    padding: 0.5rem 1rem;
    border: 2px dashed var(--accent);
    border-radius: 4px;
    background: var(--ticket);
  }
  .answers > * + *:not(h2) {
    margin-top: 0.6rem;
  }
  .tally {
    display: grid;
    grid-template-columns: repeat(2, minmax(0, 1fr));
    gap: 0.5rem;
  }
  @media (min-width: 34rem) {
    .tally {
      grid-template-columns: repeat(4, minmax(0, 1fr));
    }
  }
  .tally button {
    width: 100%;
    height: 100%;
    flex-direction: column;
    align-items: flex-start;
    justify-content: flex-start;
    gap: 0;
    padding: 0.4rem 0.6rem;
    text-align: left;
    font-size: 0.9rem;
  }
  .tally button[aria-pressed="true"] {
    border-color: var(--ink);
    box-shadow: inset 0 0 0 1px var(--ink);
    background: var(--ticket-2);
  }
  .number {
    font-family: var(--mono);
    font-size: 1.6rem;
    line-height: 1.2;
  }
  .group > .row {
    gap: 0 0.75rem;
    margin-top: 0.75rem;
  }
  .group p {
    margin: 0;
  }
  .group button {
    margin-top: 0.5rem;
  }
`;
