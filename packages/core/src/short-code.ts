/**
 * Short codes for labels: data characters and one that checks them. The alphabet is Crockford's base 32
 * (crockford.com/base32.html, without I, L, O and U) without the zero as well. So it has 31 characters, a prime number, and the
 * weighted sum of the ten-figure ISBN (ISO 2108:1992, modulus 11 there) works with modulus 31: no slip of one character and no
 * two characters in each other's place pass unnoticed.
 */
const alphabet = "123456789ABCDEFGHJKMNPQRSTVWXYZ";
const size = alphabet.length;
/** Data characters of the first 923,521 codes; later ones have one more. */
const fewestData = 4;

/** Has no factor in common with 31, so that it leads from number to number once round; codes of neighbours look unlike. */
const stride = 514_229;

/**
 * The code of a number from 1 on, such as a part's place on its bench: four characters and a check, five and a check from 923,521
 * on. Every number has a code of its own.
 */
export function shortCode(number: number): string {
  if (!Number.isInteger(number) || number < 1 || number >= size ** (fewestData + 1))
    throw new RangeError(`a code is made of a whole number from 1 on, got ${number}`);
  const data = number < size ** fewestData ? fewestData : fewestData + 1;
  // 31⁵ × 514,229 is under 2⁵³, so the product is exact.
  let left = (number * stride) % size ** data;
  const values: number[] = [];
  for (let place = 0; place < data; place += 1) {
    values.unshift(left % size);
    left = Math.floor(left / size);
  }
  return [...values, checkValue(values, size)].map((value) => alphabet[value]).join("");
}

/** What makes the sum weighted with …, 4, 3, 2, 1 from the left come out as a multiple of the modulus, put at its end. */
export function checkValue(values: readonly number[], modulus: number): number {
  const sum = values.reduce((total, value, at) => total + value * (values.length + 1 - at), 0);
  return (modulus - (sum % modulus)) % modulus;
}

/** What a typed or scanned text comes to as a code. */
export type TypedCode =
  | { readonly is: "code"; readonly code: string }
  /** It has the shape of a code, but its check character does not agree: something in it is misread. */
  | { readonly is: "misread"; readonly code: string }
  | { readonly is: "no-code" };

/**
 * Reads a code as somebody types it, or as a scanner does from a label: in small letters, with spaces and dashes, I and L for
 * 1, or at the end of the address `…/code/7K2QX`.
 */
export function typedCode(text: string): TypedCode {
  const written = text.trim().slice(0, 400);
  const atEnd = /\/code\/([^/?#]+)\/?$/i.exec(written)?.[1] ?? written;
  const code = atEnd.toUpperCase().replace(/[\s-]/g, "").replace(/[IL]/g, "1");
  const values = [...code].map((character) => alphabet.indexOf(character));
  const isShaped = code.length === fewestData + 1 || code.length === fewestData + 2;
  if (!isShaped || !/^[0-9A-Z]+$/.test(code)) return { is: "no-code" };
  const last = values.pop() as number;
  const isSound = last >= 0 && values.every((value) => value >= 0) && checkValue(values, size) === last;
  return { is: isSound ? "code" : "misread", code };
}

/** The codes that are one slip away: one character other, missing or too many, or two neighbours swapped. At most five. */
export function codesNear(code: string, codes: Iterable<string>): string[] {
  const near: string[] = [];
  for (const other of codes) if (near.length < 5 && isOneSlip(code, other)) near.push(other);
  return near;
}

function isOneSlip(one: string, other: string): boolean {
  if (one === other) return false;
  let at = 0;
  while (at < one.length && one[at] === other[at]) at += 1;
  const [rest, otherRest] = [one.slice(at), other.slice(at)];
  return (
    rest.slice(1) === otherRest.slice(1) ||
    rest.slice(1) === otherRest ||
    rest === otherRest.slice(1) ||
    (rest[0] === otherRest[1] && rest[1] === otherRest[0] && rest.slice(2) === otherRest.slice(2))
  );
}
