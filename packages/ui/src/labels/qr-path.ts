import { encode } from "uqr";

/** A QR code as one path of squares of a unit each, with the quiet zone of four that ISO/IEC 18004 asks for. */
export function qrPath(text: string): { readonly size: number; readonly path: string } {
  const { data } = encode(text, { ecc: "M", border: 4 });
  const runs = data.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? `M${x} ${y}h1v1h-1z` : [])));
  return { size: data.length, path: runs.join("") };
}
