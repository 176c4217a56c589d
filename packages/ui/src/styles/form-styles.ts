import { css } from "lit";

/** Labels, controls, and what the server said about them. */
export const formStyles = css`
  /* Seen wherever in the form somebody is typing. */
  .meanwhile {
    position: sticky;
    top: 0.25rem;
    z-index: 1;
  }
  .meanwhile .ticket {
    border: 2px solid var(--line-strong);
    padding: 0.5rem 1rem;
  }
  label,
  legend,
  .label {
    display: block;
    font-weight: 600;
    padding: 0;
  }
  .why {
    color: var(--ink-soft);
    font-size: 0.875rem;
    margin: 0;
  }
  input:not([type="checkbox"]):not([type="radio"]),
  select,
  textarea {
    display: block;
    width: 100%;
    min-width: 0;
    min-height: 44px;
    padding: 0.4rem 0.6rem;
    margin-top: 0.25rem;
    border: 1.5px solid var(--line-strong);
    border-radius: 4px;
    background: var(--ticket);
    color: var(--ink);
    font: inherit;
  }
  textarea {
    min-height: 6rem;
    resize: vertical;
  }
  input[type="checkbox"],
  input[type="radio"] {
    width: 1.25rem;
    height: 1.25rem;
    margin: 0;
    flex: none;
    accent-color: var(--accent);
  }
  label.tick {
    display: flex;
    gap: 0.6rem;
    align-items: center;
    min-height: 44px;
    font-weight: 400;
    cursor: pointer;
  }
  [aria-invalid="true"] {
    border-color: var(--refused) !important;
    border-width: 2px !important;
  }
  .refusal {
    color: var(--refused);
    font-weight: 600;
    font-size: 0.9rem;
    margin: 0.25rem 0 0;
  }
  fieldset.ticket > legend {
    float: left;
    width: 100%;
  }
  fieldset.ticket > legend + * {
    clear: both;
  }
  fieldset:not(.ticket) {
    border: 0;
    margin: 0;
    padding: 0;
  }
  fieldset {
    min-width: 0;
  }
  .grid {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(17rem, 100%), 1fr));
    gap: 1rem 1.25rem;
    align-items: start;
  }
`;
