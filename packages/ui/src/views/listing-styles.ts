import { css } from "lit";

export const listingStyles = css`
  .parts,
  .halves {
    display: grid;
    gap: 1rem;
    grid-template-columns: minmax(0, 1fr);
    align-items: start;
  }
  @media (min-width: 60rem) {
    .parts,
    .halves {
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
    }
    .parts {
      grid-template-rows: auto 1fr;
    }
    .side {
      grid-column: 2;
      grid-row: 1 / span 2;
    }
  }
  .verdict {
    border-width: 2px;
    border-color: var(--line-strong);
  }
  .verdict > * + * {
    margin-top: 0.75rem;
  }
  .verdict .said {
    font-size: 1.5rem;
    line-height: 1.25;
  }
  .figures {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(7.5rem, 100%), 1fr));
    gap: 0.5rem 1.25rem;
  }
  .figures dd {
    font-family: var(--mono);
    font-weight: 600;
    font-size: 1.1rem;
  }
  .figures dd.word {
    font-family: inherit;
    font-size: 1rem;
  }
  .verdict ul,
  .care ul {
    margin: 0.2rem 0 0;
    padding-left: 1.1rem;
    max-width: 75ch;
  }
  .care {
    margin-top: 0.5rem;
    border: 1.5px solid var(--work);
    border-left-width: 6px;
    border-radius: 0 4px 4px 0;
    padding: 0.4rem 0.75rem;
  }
  .care strong {
    color: var(--work);
  }
  .judging {
    border-style: dashed;
  }
  .where {
    display: grid;
    align-items: end;
    grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
    gap: 0.75rem;
  }
  .doubts {
    margin: 0.5rem 0 0;
    padding-left: 1.1rem;
  }
`;
