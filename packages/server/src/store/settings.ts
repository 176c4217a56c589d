import { z } from "zod";
import { keptJson } from "./kept-json.ts";
import type { Database } from "./sqlite.ts";

export const settingsSchema = z.strictObject({
  lengthUnit: z.enum(["in", "cm"]),
  currency: z.enum(["GBP", "EUR", "USD", "AUD", "CAD"]),
  theme: z.enum(["auto", "light", "dark"]),
});

export type Settings = z.infer<typeof settingsSchema>;

const firstSettings: Settings = {
  lengthUnit: "in",
  currency: "EUR",
  theme: "auto",
};

/** How the page shows things, and whether the bench is still the example. */
export interface SettingsTable {
  read(): Settings;
  write(settings: Settings): void;
  /** `undefined` on the very first start. */
  isExample(): boolean | undefined;
  markExample(example: boolean): void;
  /** The user's own template for sale descriptions; `undefined` until there is one. */
  saleTemplate(): string | undefined;
  writeSaleTemplate(template: string | null): void;
  /** Settings before and after the last that were put in by the handful; `undefined` where there is nothing to take back. */
  formerSettings(): unknown;
  writeFormerSettings(former: unknown): void;
}

export function settingsTable(database: Database): SettingsTable {
  const read = database.prepare("SELECT body FROM settings WHERE name = ?");
  const write = database.prepare(
    "INSERT INTO settings (name, body) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET body = excluded.body",
  );
  const value = (name: string): unknown => {
    const row = read.get(name) as { body: string } | undefined;
    return row === undefined ? undefined : keptJson(row.body);
  };
  return {
    read: () => ({
      ...firstSettings,
      ...(value("page") as Partial<Settings> | undefined),
    }),
    write: (settings) => void write.run("page", JSON.stringify(settings)),
    isExample: () => value("example") as boolean | undefined,
    saleTemplate: () => (value("sale-template") as string | null | undefined) ?? undefined,
    writeSaleTemplate: (template) => void write.run("sale-template", JSON.stringify(template)),
    formerSettings: () => value("former-settings") ?? undefined,
    writeFormerSettings: (former) => void write.run("former-settings", JSON.stringify(former)),
    markExample: (example) => void write.run("example", JSON.stringify(example)),
  };
}
