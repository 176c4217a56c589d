import { css } from "lit";

/** Ink on paper: outlines, hidden edges, measures and hatching, in light and dark alike. */
export const drawingStyles = css`
  :host {
    display: block;
    min-width: 0;
  }
  svg {
    display: block;
    width: 100%;
    height: auto;
    color: var(--ink);
    overflow: visible;
  }
  svg text {
    font: 12px var(--mono);
    fill: var(--ink);
    stroke: var(--ticket);
    stroke-width: 3px;
    stroke-linejoin: round;
    paint-order: stroke;
  }
  svg text.soft {
    fill: var(--ink-soft);
  }
  svg text.strong {
    font-weight: 700;
  }
  .solid {
    fill: var(--ticket-2);
    stroke: currentColor;
    stroke-width: 1.5;
    stroke-linejoin: round;
  }
  .edge {
    fill: none;
    stroke: currentColor;
    stroke-width: 1.5;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .hidden {
    fill: none;
    stroke: currentColor;
    stroke-width: 1;
    stroke-dasharray: 3 2.5;
  }
  .axis {
    fill: none;
    stroke: var(--ink-soft);
    stroke-width: 0.75;
    stroke-dasharray: 10 3 2 3;
  }
  .measure {
    fill: none;
    stroke: var(--ink-soft);
    stroke-width: 0.9;
  }
  .fine {
    fill: none;
    stroke: var(--line-strong);
    stroke-width: 0.75;
  }
  .full {
    fill: currentColor;
  }
  .clash {
    color: var(--refused);
    stroke: var(--refused);
  }
  figure {
    margin: 0;
    min-width: 0;
  }
  figcaption {
    margin-top: 0.4rem;
    font-size: 0.875rem;
    color: var(--ink-soft);
    max-width: 70ch;
  }
`;
