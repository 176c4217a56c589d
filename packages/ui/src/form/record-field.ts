/** One control of a plain form, by the dotted path of the value it stands for. */
export type RecordField = {
  readonly path: string;
  readonly label: string;
  readonly why?: string;
  /** What an empty control means. Without it, the value is left out. */
  readonly empty?: null | readonly [];
  readonly needed?: boolean;
  /** Filled in with an estimate: Enter alone does not send it before somebody has typed there. */
  readonly guessed?: boolean;
  /** Takes a whole line of the form. */
  readonly wide?: boolean;
} & (
  | { readonly control: "text" | "note" | "date" | "yes-no" | "names" }
  | { readonly control: "number"; readonly unit?: string }
  /** Whole minor units by themselves, or as `{ amountMinor, currency }`. */
  | { readonly control: "minor" | "money"; readonly currency: string }
  | { readonly control: "choice"; readonly choices: Readonly<Record<string, string>> }
  | ({ readonly control: "lines"; readonly example: string } & LinesOf)
);

/** How a value is written as lines of text, and read back; `undefined` when the lines cannot be read. */
interface LinesOf {
  readonly write: (value: unknown) => string;
  readonly read: (text: string) => unknown;
}
