import { numberText } from "./number.ts";

/** "12.4 MPa (1799 psi)". */
export function pressureText(valuePa: number): string {
  return `${numberText(valuePa / 1e6, 1)} MPa (${numberText(valuePa / 6894.757, 0)} psi)`;
}
