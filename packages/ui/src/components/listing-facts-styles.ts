import { css } from "lit";

export const listingFactsStyles = css`
  fieldset:not(.ticket) + fieldset:not(.ticket),
  fieldset + button {
    margin-top: 1.25rem;
  }
  legend {
    width: 100%;
    padding-bottom: 0.25rem;
    border-bottom: 2px dashed var(--line);
  }
  .facts {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(8.4rem, 100%), 1fr));
    gap: 0.6rem 0.75rem;
    align-items: start;
    padding-top: 0.6rem;
  }
  .head {
    display: flex;
    align-items: end;
    justify-content: space-between;
    gap: 0.4rem;
    min-height: 1.75rem;
  }
  .head label {
    font-size: 0.8125rem;
    font-weight: 400;
    line-height: 1.2;
    color: var(--ink-soft);
  }
  .number {
    min-height: 1.5rem;
    min-width: 1.5rem;
    padding: 0 0.3rem;
    font-family: var(--mono);
    font-size: 0.75rem;
    line-height: 1;
    color: var(--unsettled);
    border-color: var(--unsettled);
  }
  .fact input:not([type="checkbox"]):not([type="radio"]),
  .fact select {
    padding: 0.3rem 0.5rem;
    font-weight: 600;
  }
  .fact select.empty,
  .fact input::placeholder {
    font-weight: 400;
    color: var(--ink-soft);
    opacity: 1;
  }
  .broad {
    grid-column: span 2;
  }
  .pair {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    gap: 0.25rem;
  }
  .pair.even {
    grid-template-columns: minmax(0, 2fr) minmax(0, 3fr);
  }
  .doubted {
    grid-column: 1 / -1;
    border-left: 4px solid var(--work);
    padding-left: 0.6rem;
  }
  .doubted .head,
  .doubted input,
  .doubted select,
  .doubted .pair {
    max-width: 18rem;
  }
  .doubt {
    margin: 0.25rem 0 0;
    font-size: 0.875rem;
  }
  .doubt::before {
    content: "? ";
    font-family: var(--mono);
    font-weight: 700;
    color: var(--work);
  }
`;
