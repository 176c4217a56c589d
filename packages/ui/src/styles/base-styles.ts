import { css } from "lit";

/** What every view shares: headings, tickets, buttons, lists. Colours come from page.css. */
export const baseStyles = css`
  :host {
    display: block;
  }
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  /* Words of others turn none of ours round (Unicode Standard Annex 9, 6.3). */
  :where(a, b, strong, em, i, small, span, mark, button, label, q, cite, code) {
    unicode-bidi: isolate;
  }
  h1,
  h2,
  h3,
  h4 {
    line-height: 1.25;
    margin: 0;
    text-wrap: balance;
    overflow-wrap: anywhere;
  }
  h1 {
    font-size: 1.6rem;
    letter-spacing: -0.01em;
  }
  h1:focus {
    outline: none;
  }
  h2 {
    font-size: 1.1rem;
  }
  h3 {
    font-size: 1rem;
  }
  p {
    margin: 0.4rem 0;
    max-width: 70ch;
    overflow-wrap: anywhere;
  }
  a {
    color: inherit;
    text-underline-offset: 0.2em;
    text-decoration-color: var(--line-strong);
  }
  a:hover {
    text-decoration-thickness: 2px;
  }
  :focus-visible {
    outline: 3px solid var(--focus);
    outline-offset: 2px;
  }
  .soft {
    color: var(--ink-soft);
  }
  .small {
    font-size: 0.875rem;
  }
  .mono {
    font-family: var(--mono);
    font-size: 0.875rem;
  }
  .ticket {
    background: var(--ticket);
    border: 1px solid var(--line);
    border-radius: 4px;
    padding: 1rem;
  }
  .ticket > h2:first-child {
    position: relative;
    margin: -0.25rem -1rem 0.9rem;
    padding: 0 1rem 0.6rem;
    border-bottom: 2px dashed var(--line);
    font-family: var(--mono);
    font-size: 0.95rem;
    letter-spacing: 0.04em;
    text-transform: uppercase;
  }
  .ticket > h2:first-child::before,
  .ticket > h2:first-child::after {
    content: "";
    position: absolute;
    bottom: -9px;
    width: 16px;
    height: 16px;
    border: 1px solid var(--line);
    border-radius: 50%;
    background: var(--paper);
  }
  .ticket > h2:first-child::before {
    left: -9px;
    clip-path: inset(0 0 0 50%);
  }
  .ticket > h2:first-child::after {
    right: -9px;
    clip-path: inset(0 50% 0 0);
  }
  .stack > * + * {
    margin-top: 1rem;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem;
    align-items: center;
  }
  .between {
    justify-content: space-between;
  }
  ul.plain,
  ol.plain {
    list-style: none;
    margin: 0;
    padding: 0;
  }
  button,
  .button {
    display: inline-flex;
    align-items: center;
    justify-content: center;
    min-height: 44px;
    padding: 0.4rem 1rem;
    border: 1.5px solid var(--line-strong);
    border-radius: 4px;
    background: var(--ticket);
    color: var(--ink);
    font: inherit;
    font-weight: 600;
    text-decoration: none;
    cursor: pointer;
  }
  button:hover,
  .button:hover {
    border-color: var(--ink);
  }
  button.main,
  .button.main {
    background: var(--accent);
    border-color: var(--accent);
    color: var(--accent-ink);
  }
  button[disabled] {
    opacity: 0.6;
    cursor: not-allowed;
  }
  .rule {
    border: 0;
    border-top: 2px dashed var(--line);
    margin: 1rem 0;
  }
  .ticket > ul.plain:first-child > li:first-child,
  ul.ticket > li:first-child,
  h2 + ul.plain > li:first-child {
    border-top: 0;
    padding-top: 0;
  }
  dl {
    margin: 0;
  }
  dt {
    color: var(--ink-soft);
    font-size: 0.875rem;
  }
  dd {
    margin: 0;
    overflow-wrap: anywhere;
  }
  summary {
    min-height: 44px;
    display: flex;
    align-items: center;
    gap: 0.5rem;
    cursor: pointer;
    font-weight: 600;
    list-style: none;
  }
  summary::before {
    content: "+";
    font-family: var(--mono);
    width: 1.4em;
    height: 1.4em;
    line-height: 1.3em;
    text-align: center;
    border: 1.5px solid var(--line-strong);
    border-radius: 3px;
    flex: none;
  }
  details[open] > summary::before {
    content: "−";
  }
  summary::-webkit-details-marker {
    display: none;
  }
  @media (prefers-reduced-motion: no-preference) {
    button,
    .button {
      transition: border-color 120ms;
    }
  }
`;
