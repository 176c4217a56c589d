import type { CatalogueModel } from "@ferrule/core";
import type { ShelfKind } from "../components/shelf-list.ts";
import { keptFields } from "../form/kept-fields.ts";
import type { RecordField } from "../form/record-field.ts";
import { tradeApi } from "../trade-api.ts";
import { itemKindWords } from "../words/item-words.ts";
import { clubTypeWords } from "../words/part-words.ts";

const fields: readonly RecordField[] = [
  { path: "kind", label: "What", control: "choice", choices: itemKindWords },
  { path: "maker", label: "Maker", control: "text", needed: true },
  { path: "model", label: "Model", control: "text", needed: true },
  {
    path: "aliases",
    label: "Other ways sellers write it",
    why: "With commas between.",
    control: "names",
    wide: true,
  },
  { path: "clubType", label: "Club type", control: "choice", choices: { "": "Not known", ...clubTypeWords } },
  { path: "adapterFamily", label: "Adapter family", control: "text" },
  { path: "year", label: "Year", control: "number" },
];

/** The models that the tool knows by name, as they are listed and typed in. */
export function modelShelf(): ShelfKind {
  const { all: _all, patch: _patch, importFile: _importFile, ...calls } = tradeApi.models;
  return {
    word: "model",
    undoable: true,
    emptyText:
      "With models listed, a listing that names one is known by its adapter family and its year, typos and all.",
    title: ({ maker, model }: CatalogueModel) => `${maker} ${model}`,
    facts: ({ kind, clubType, adapterFamily, year, aliases }: CatalogueModel) => [
      itemKindWords[kind],
      clubType ? clubTypeWords[clubType] : undefined,
      adapterFamily ? `family ${adapterFamily}` : undefined,
      year ? String(year) : undefined,
      (aliases?.length ?? 0) > 0 && `also ${aliases?.join(", ")}`,
    ],
    fields: () => fields,
    opened: (model: CatalogueModel | undefined) => model ?? { kind: "head" },
    closed: (record, model: CatalogueModel | undefined) => ({ ...keptFields(model, fields), ...record }),
    table: "models",
    ...calls,
  };
}
