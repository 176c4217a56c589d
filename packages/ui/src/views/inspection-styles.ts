import { css } from "lit";

/** For a thumb in a glove: one question at a time, and buttons nobody can miss. */
export const inspectionStyles = css`
  .question {
    font-size: 1.35rem;
    line-height: 1.3;
  }
  .answers {
    display: grid;
    gap: 0.75rem;
    grid-template-columns: 1fr 1fr;
  }
  .answers button {
    min-height: 84px;
    font-size: 1.25rem;
  }
  .answers .unsure {
    grid-column: 1 / -1;
    min-height: 64px;
  }
  .answers button[aria-pressed="true"] {
    border-width: 3px;
    border-color: var(--ink);
  }
  .back {
    min-height: 56px;
    min-width: 8rem;
  }
  progress {
    width: 100%;
    height: 0.75rem;
    accent-color: var(--accent);
  }
  .stop {
    border: 2px solid var(--refused);
    border-left-width: 8px;
  }
  .stop h2,
  .stop h3 {
    color: var(--refused);
  }
  .choices label {
    min-height: 56px;
  }
`;
