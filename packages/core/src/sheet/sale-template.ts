import type { Parsed, Refusal } from "../parts/refusal.ts";

/** What a template can name, each filled in from the description. */
export const salePlaceholders = [
  "title",
  "parts",
  "measures",
  "condition",
  "extras",
  "unknown",
  "price",
] as const;
export type SalePlaceholder = (typeof salePlaceholders)[number];

/** What a description is written in until the user writes a template of their own. */
export const firstSaleTemplate = `{title}

What it is made of:
{parts}

Measures:
{measures}

Condition:
{condition}

With it: {extras}

What we do not know:
{unknown}

Price: {price}

Look at every joint and at the shaft yourself before you swing it.`;

type Piece = { readonly is: "words"; readonly words: string } | { readonly is: SalePlaceholder };

/** A template read once, ready to be filled in. */
export interface SaleTemplate {
  readonly pieces: readonly Piece[];
}

/**
 * Reads a template: words, and names in braces. A doubled brace stands for itself. What is no known name, or never closed, is
 * refused with the line it stands in.
 */
export function parseSaleTemplate(text: string): Parsed<SaleTemplate> {
  const pieces: Piece[] = [];
  const refusals: Refusal[] = [];
  for (const match of text.matchAll(/\{\{|\}\}|\{([^{}]*)\}|[{}]|[^{}]+/g)) {
    const [whole, name] = match;
    if (whole === "{{" || whole === "}}") pieces.push({ is: "words", words: whole.charAt(0) });
    else if (name !== undefined && isPlaceholder(name.trim()))
      pieces.push({ is: name.trim() as SalePlaceholder });
    else if (name !== undefined || whole === "{" || whole === "}")
      refusals.push(refusalOf(whole, lineOf(text, match.index)));
    else pieces.push({ is: "words", words: whole });
  }
  return refusals.length > 0 ? { ok: false, refusals } : { ok: true, value: { pieces } };
}

/** The template with every name filled in. What is filled in is never read again, so braces in it stay what they are. */
export function fillSaleTemplate(
  { pieces }: SaleTemplate,
  values: Readonly<Record<SalePlaceholder, string>>,
): string {
  return pieces.map((piece) => (piece.is === "words" ? piece.words : values[piece.is])).join("");
}

function isPlaceholder(name: string): boolean {
  return (salePlaceholders as readonly string[]).includes(name);
}

function lineOf(text: string, at: number): number {
  return text.slice(0, at).split("\n").length;
}

function refusalOf(got: string, line: number): Refusal {
  const names = salePlaceholders.map((name) => `{${name}}`).join(", ");
  const isLone = got === "{" || got === "}";
  return {
    field: `template, line ${line}`,
    got,
    expected: isLone
      ? `a name with a brace on each side, or ${got}${got} for the brace itself`
      : `one of ${names}; a doubled brace stands for itself`,
  };
}
