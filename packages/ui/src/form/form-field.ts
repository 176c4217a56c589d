import type { FieldPath } from "@ferrule/core";

/** One control of the part form. `path` is the field's path from the part; `why` is said beside what matters first. */
export type FormField = { readonly path: string; readonly why?: string; readonly only?: SocketType } & (
  | { readonly control: "text" | "year" | "date" | "money" | "note" | "settings" }
  | { readonly control: "reading"; readonly path: FieldPath }
  | { readonly control: "choice"; readonly choices: Readonly<Record<string, string>> }
  | { readonly control: "yes-no" }
);

/** A field that makes sense for one way of taking a shaft only. */
export type SocketType = "bore" | "receiver";
