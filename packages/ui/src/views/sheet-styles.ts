import { css } from "lit";

/** On the screen tickets under each other; on paper two columns of one page. */
export const sheetStyles = css`
  table {
    border-collapse: collapse;
    width: 100%;
  }
  th,
  td {
    text-align: left;
    padding: 0.3rem 0.6rem 0.3rem 0;
    border-top: 1px solid var(--line);
    vertical-align: top;
    overflow-wrap: anywhere;
  }
  thead th {
    border-top: 0;
    color: var(--ink-soft);
    font-size: 0.875rem;
    font-weight: 400;
  }
  /* On a phone words stay whole: the type of the table gets smaller instead. */
  @media screen and (max-width: 34rem) {
    th,
    td {
      font-size: 0.8125rem;
      padding-right: 0.35rem;
      overflow-wrap: break-word;
      hyphens: auto;
    }
    thead th {
      font-size: 0.75rem;
    }
  }
  td.figure {
    font-family: var(--mono);
    font-weight: 600;
  }
  .checks {
    list-style: none;
    margin: 0.2rem 0 0.8rem;
    padding: 0;
  }
  .checks li {
    padding: 0.15rem 0;
  }
  .found {
    color: var(--refused);
    font-weight: 600;
  }
  .paper {
    display: none;
  }
  @media print {
    :host {
      font-size: var(--print-size, 7.5pt);
      line-height: 1.28;
    }
    .screen {
      display: none !important;
    }
    .paper {
      display: block;
    }
    h1 {
      font-size: 1.6em;
    }
    h2,
    .ticket > h2:first-child {
      font-size: 1.05em;
      margin: 0.5em 0 0.2em;
      padding: 0 0 0.1em;
      border-bottom: 0.75pt solid #000;
      letter-spacing: 0.03em;
    }
    .ticket > h2:first-child::before,
    .ticket > h2:first-child::after {
      content: none;
    }
    .ticket {
      border: 0;
      padding: 0;
      background: none;
    }
    .stack > * + * {
      margin-top: 0;
    }
    .columns {
      column-count: 2;
      column-gap: 6mm;
    }
    p,
    .small,
    .mono,
    .checks,
    thead th {
      font-size: 1em;
      margin: 0;
      max-width: none;
    }
    th,
    td {
      padding: 0.08em 0.4em 0.08em 0;
    }
    .checks li,
    .todo > li {
      padding: 0.08em 0;
      break-inside: avoid;
    }
    .caution {
      margin: 0.1em 0 0.2em;
      padding: 0 0 0 0.5em;
      border-width: 0 0 0 1.5pt;
      border-color: #000;
    }
    .caution ul {
      margin: 0;
      padding-left: 1em;
    }
    .caution li {
      margin: 0;
    }
    .blanks td {
      height: 2.1em;
    }
    .line {
      display: inline-block;
      min-width: 9em;
      border-bottom: 0.75pt solid #000;
    }
  }
`;
