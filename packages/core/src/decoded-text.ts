/** Browsers and Node have it both (WHATWG Encoding Standard, 7.2). */
declare const TextDecoder: new (
  encoding: string,
  options: { readonly fatal: boolean },
) => { decode(bytes: Uint8Array): string };

const marks: readonly (readonly [bytes: readonly number[], encoding: string])[] = [
  [[0xef, 0xbb, 0xbf], "utf-8"],
  [[0xff, 0xfe], "utf-16le"],
  [[0xfe, 0xff], "utf-16be"],
];

/**
 * The text of a file, or nothing where the file is no text. A byte order mark says which encoding it has; without one it is
 * UTF-8, or else Windows-1252, which spreadsheets still write. Encodings as in the WHATWG Encoding Standard.
 */
export function decodedText(bytes: Uint8Array): string | undefined {
  const marked = marks.find(([mark]) => mark.every((byte, at) => bytes[at] === byte));
  if (marked) return decoded(bytes, marked[1]);
  return decoded(bytes, "utf-8") ?? spreadsheetText(bytes);
}

function decoded(bytes: Uint8Array, encoding: string): string | undefined {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

/** What Windows-1252 has from 80 to 9F (WHATWG Encoding Standard, index windows-1252); a blank where it has nothing. */
const windowsSigns = "€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ";

/**
 * Any bytes are Windows-1252: those with control signs that no text has are pictures, workbooks and the like. Node 20 reads the
 * signs from 80 to 9F as control signs, so they are put right here.
 */
function spreadsheetText(bytes: Uint8Array): string | undefined {
  const text = decoded(bytes, "windows-1252")?.replace(/[\u0080-\u009f]/g, (sign) => {
    const meant = windowsSigns[sign.charCodeAt(0) - 0x80];
    return meant === undefined || meant === " " ? sign : meant;
  });
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what tells a text from what is none
  return text === undefined || /[\u0000-\u0008\u000e-\u001f\u0080-\u009f]/.test(text) ? undefined : text;
}
