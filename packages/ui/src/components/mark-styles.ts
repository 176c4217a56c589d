import { css } from "lit";

/** A shape and a word in the same colour: `.cut` is what is left out of a shape, `.line` what is drawn. */
export const markStyles = css`
  :host {
    display: inline-flex;
    font-weight: 700;
  }
  svg {
    width: 1.25em;
    height: 1.25em;
    flex: none;
  }
  .cut,
  .line {
    fill: none;
    stroke: var(--ticket);
    stroke-width: 2.6;
    stroke-linecap: round;
  }
  .line {
    stroke: currentColor;
    stroke-width: 2;
  }
  span {
    display: inline-flex;
    gap: 0.4em;
    align-items: center;
  }
`;
