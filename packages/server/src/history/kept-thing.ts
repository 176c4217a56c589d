import type { CostSettings, Goal } from "@ferrule/core";
import type { DocumentTable } from "../store/document-table.ts";
import type { TableName } from "../store/history.ts";
import type { LabelSetup } from "../store/labels.ts";
import { type ListName, listNames, tableOf } from "../store/lists.ts";
import type { Settings } from "../store/settings.ts";
import type { Tables } from "../store/tables.ts";

/** A thing as it stands; `place` is null for what there is one of. */
export interface Standing {
  readonly place: number | null;
  readonly value: unknown;
}

/** Reads and writes any thing that the history tells of, by its table and id. */
export interface KeptThing {
  read(): Standing | undefined;
  remove(): void;
  /** Puts the thing where it stood, or changes it in its place. */
  write(standing: Standing): void;
  /** The id of another thing that stands at a place. */
  otherAt(place: number): string | undefined;
}

export interface KeptThings {
  of(table: TableName, id: string): KeptThing;
  /** Writes what is kept in one piece, once for all of it. */
  finish(): void;
}

export function keptThings(tables: Tables): KeptThings {
  const printed = new Set(tables.labels.printed());
  return {
    of: (table, id) => {
      if (table === "watches") return listed(tables.watches, id);
      if (isList(table)) return listed<{ id?: string }>(tableOf(tables, table), id);
      return table === "labels-printed" ? printedLabel(printed, Number(id)) : single(tables, table);
    },
    finish: () => tables.labels.writePrinted(printed),
  };
}

const isList = (table: TableName): table is ListName => (listNames as readonly string[]).includes(table);

function listed<T extends { id?: string }>(table: DocumentTable<T>, id: string): KeptThing {
  return {
    read: () => table.get(id),
    remove: () => table.remove(id),
    write: ({ place, value }) => {
      if (table.get(id)) table.replace(id, value as T);
      else table.insert(value as T & { id: string }, place ?? undefined);
    },
    otherAt: (place) => {
      const other = table.idAt(place);
      return other === id ? undefined : other;
    },
  };
}

function printedLabel(printed: Set<number>, place: number): KeptThing {
  return {
    read: () => (printed.has(place) ? { place: null, value: true } : undefined),
    remove: () => void printed.delete(place),
    write: () => void printed.add(place),
    otherAt: () => undefined,
  };
}

type SingleTable = Exclude<TableName, ListName | "watches" | "labels-printed">;

function single(tables: Tables, name: SingleTable): KeptThing {
  const { read, write } = singleOf(tables, name);
  return {
    read: () => ({ place: null, value: read() ?? null }),
    remove: () => {
      throw new Error(`there is always one of ${name}`);
    },
    write: ({ value }) => write(value),
    otherAt: () => undefined,
  };
}

function singleOf(
  { goals, costs, settings, labels }: Tables,
  name: SingleTable,
): { read(): unknown; write(value: unknown): void } {
  const singles: Record<SingleTable, { read(): unknown; write(value: unknown): void }> = {
    goal: { read: goals.read, write: (goal) => goals.write(goal as Goal) },
    costs: { read: costs.read, write: (value) => costs.write(value as CostSettings) },
    settings: { read: settings.read, write: (value) => settings.write(value as Settings) },
    labels: { read: labels.setup, write: (setup) => labels.writeSetup(setup as LabelSetup) },
    "sale-template": {
      read: settings.saleTemplate,
      write: (template) => settings.writeSaleTemplate(template as string | null),
    },
    "former-settings": { read: settings.formerSettings, write: settings.writeFormerSettings },
    example: { read: settings.isExample, write: (is) => settings.markExample(is as boolean) },
  };
  return singles[name];
}
