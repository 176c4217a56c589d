import type { CostSettings, PostageService } from "@ferrule/core";
import type { ShelfKind } from "../components/shelf-list.ts";
import type { RecordField } from "../form/record-field.ts";
import { moneyText } from "../format/money.ts";
import { numberText } from "../format/number.ts";
import { newName } from "./new-name.ts";

/** The ways to send a parcel, and what each takes. `save` keeps the changed list. */
export function postageShelf(
  { currency, services }: CostSettings,
  save: (services: PostageService[]) => Promise<unknown>,
): ShelfKind {
  const limit = (value: number | null, unit: string, word: string) =>
    value !== null && `${word} ${numberText(value, 2)} ${unit}`;
  return {
    word: "way to send",
    many: "ways to send",
    undoable: false,
    emptyText: "Without one, no postage can be reckoned.",
    title: ({ name }: PostageService) => name,
    facts: (service: PostageService) => [
      moneyText(service.priceMinor, currency),
      limit(service.maxMassG, "g", "to"),
      limit(service.maxLengthCm, "cm", "to"),
      limit(service.maxLengthPlusGirthCm, "cm", "length and girth to"),
      limit(service.maxLengthPlusTwoDiametersCm, "cm", "length and two diameters to"),
      limit(service.maxVolumeM3, "m³", "to"),
      limit(service.kgPerM3, "kg", "a cubic metre charged as"),
    ],
    fields: () => postageFields(currency),
    opened: (service: PostageService | undefined) => service ?? {},
    closed: (record, service: PostageService | undefined) => ({
      ...record,
      id:
        service?.id ??
        newName(
          String(record["name"]),
          services.map(({ id }) => id),
        ),
    }),
    add: (service) => save([...services, service as PostageService]),
    put: (id, service) => save(services.map((one) => (one.id === id ? (service as PostageService) : one))),
    remove: (id) => save(services.filter((one) => one.id !== id)),
  };
}

function postageFields(currency: string): readonly RecordField[] {
  const limit = (path: string, label: string, unit: string): RecordField => ({
    path,
    label,
    control: "number",
    unit,
    empty: null,
  });
  return [
    {
      path: "name",
      label: "What it is",
      why: "A limit left empty is none.",
      control: "text",
      needed: true,
      wide: true,
    },
    { path: "priceMinor", label: "Price", control: "minor", currency, needed: true },
    limit("maxMassG", "Heaviest", "g"),
    limit("maxLengthCm", "Longest side", "cm"),
    limit("maxLengthPlusGirthCm", "Length and girth", "cm"),
    limit("maxLengthPlusTwoDiametersCm", "Tubes: length and two diameters", "cm"),
    limit("maxVolumeM3", "Largest", "m³"),
    limit("kgPerM3", "A cubic metre is charged as", "kg"),
  ];
}
