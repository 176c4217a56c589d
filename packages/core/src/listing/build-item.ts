import { eitherNames, isEither } from "./alternatives.ts";
import type { CatalogueModel } from "./catalogue.ts";
import { chooseModel } from "./choose-model.ts";
import type { Stretch } from "./clauses.ts";
import { emptyItem } from "./empty-item.ts";
import type { NameFound } from "./find-model.ts";
import type { ItemDraft } from "./item-draft.ts";
import type { Doubt, ListingItem } from "./listing.ts";
import type { Mention, MentionField } from "./mention.ts";
import type { ReadyCatalogue } from "./ready-catalogue.ts";

/** A field of an item with the words it was read from. */
export interface FieldAt extends Stretch {
  readonly field: string;
}

export interface BuiltItem {
  readonly item: ListingItem;
  readonly at: readonly FieldAt[];
  readonly doubts: readonly Doubt[];
}

/** What a field is called in a sentence. */
const fieldWords: Readonly<Record<MentionField, string>> = {
  year: "year",
  clubType: "type of club",
  clubNumber: "number of the club",
  loftDeg: "loft",
  hand: "hand",
  flex: "flex",
  shaftMaterial: "material of the shaft",
  shaftMassG: "mass of the shaft",
  length: "length",
  tip: "tip size",
  adapter: "adapter",
  adapterFamily: "adapter family",
  cover: "cover",
  wrench: "wrench",
};

const same = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);

type Said = Exclude<Mention, { field: "fault" }>;

const isSaid = (mention: Mention): mention is Said => mention.field !== "fault";

/** The mention of each field that counts: the first, or none of two joined by "or"; one that says otherwise makes a doubt. */
function settle(mentions: readonly Said[], plain: string): { kept: Said[]; doubts: Doubt[] } {
  const kept = new Map<string, Said>();
  const open = new Set<string>();
  const doubts: Doubt[] = [];
  for (const mention of mentions) {
    const first = kept.get(mention.field);
    if (!first) kept.set(mention.field, mention);
    else if (!same(first.value, mention.value) && isEither(plain, first, mention)) {
      open.add(mention.field);
      const words = plain.slice(first.start, mention.end);
      doubts.push({
        field: mention.field,
        start: first.start,
        end: mention.end,
        text: `The words leave open which ${fieldWords[mention.field]} it is: "${words}".`,
      });
    } else if (!same(first.value, mention.value)) {
      const words = plain.slice(mention.start, mention.end);
      doubts.push({
        field: mention.field,
        start: mention.start,
        end: mention.end,
        text: `The words give more than one ${fieldWords[mention.field]}; "${words}" was left aside.`,
      });
    }
    if (mention.doubt)
      doubts.push({ field: mention.field, start: mention.start, end: mention.end, text: mention.doubt });
  }
  return { kept: [...kept.values()].filter(({ field }) => !open.has(field)), doubts };
}

/** The faults that are said to be there and those said not to be; one said both ways counts as there. */
function settleFaults(mentions: readonly Mention[]) {
  const faults = mentions.filter((mention) => mention.field === "fault");
  const asserted = new Map(faults.filter(({ denied }) => !denied).map((fault) => [fault.value, fault]));
  const denied = new Map(
    faults
      .filter(({ denied: not, value }) => not && !asserted.has(value))
      .map((fault) => [fault.value, fault]),
  );
  return { asserted, denied };
}

const isCode = (model: CatalogueModel | null) => (model ? { model: model.model, modelId: model.id } : {});

/** The words of a maker: its own part of a name, or the whole name where only the model says who made it. */
const makerPlace = ({ start, end, maker, makerEnd }: NameFound): Stretch => ({
  start,
  end: maker === null ? end : makerEnd,
});

export interface ItemWords {
  readonly draft: ItemDraft;
  readonly mentions: readonly Mention[];
  readonly names: readonly NameFound[];
  readonly plain: string;
  /** The names that the words say it is a copy of. */
  readonly copied: ReadonlySet<NameFound>;
  /** Lofts joined by "or". */
  readonly openLofts: readonly Stretch[];
}

/** Doubts about names that say nothing sure, and about lofts of which one holds. */
function openDoubts({ names, copied, openLofts, plain }: ItemWords, either: ReadonlySet<NameFound>): Doubt[] {
  const said = ({ start, end }: Stretch) => plain.slice(start, end);
  return [
    ...names
      .filter((name) => copied.has(name))
      .map((name) => ({
        field: "model",
        start: name.start,
        end: name.end,
        text: `The words say it is a copy, or not what "${said(name)}" is; its maker and model were left out.`,
      })),
    ...[...either].map((name) => ({
      field: "model",
      start: name.start,
      end: name.end,
      text: `"${said(name)}" is one of several names that the words leave open.`,
    })),
    ...openLofts.map((lofts) => ({
      field: "loftDeg",
      start: lofts.start,
      end: lofts.end,
      text: `The words leave open which loft it is: "${said(lofts)}".`,
    })),
  ];
}

/** Makes an item of what the words say of it. Offsets are those of the prepared words. */
export function buildItem(source: ItemWords, ready: ReadyCatalogue): BuiltItem {
  const { draft, mentions, plain, copied } = source;
  const either = eitherNames(plain, source.names);
  const names = source.names.filter((name) => !copied.has(name) && !either.has(name));
  const { kept, doubts } = settle(mentions.filter(isSaid), plain);
  const { asserted, denied } = settleFaults(mentions);
  const values: Partial<ListingItem> = Object.fromEntries(kept.map(({ field, value }) => [field, value]));
  const { kind } = draft;
  const type = values.clubType ?? null;
  const choice = chooseModel({ kind, type, year: values.year ?? null, names }, ready);
  const item: ListingItem = {
    ...emptyItem(kind),
    ...values,
    quantity: draft.quantity?.value ?? 1,
    maker: choice.maker,
    ...isCode(choice.model),
    faults: [...asserted.keys()],
    deniedFaults: [...denied.keys()],
  };
  const at: FieldAt[] = [
    { field: "kind", start: draft.kindAt.start, end: draft.kindAt.end },
    ...(draft.quantity ? [{ field: "quantity", start: draft.quantity.start, end: draft.quantity.end }] : []),
    ...(choice.makerAt ? [{ field: "maker", ...makerPlace(choice.makerAt) }] : []),
    ...(choice.modelAt
      ? ["model", "modelId"].map((field) => ({
          field,
          start: choice.modelAt?.modelStart ?? 0,
          end: choice.modelAt?.end ?? 0,
        }))
      : []),
    ...kept.map(({ field, start, end }) => ({ field, start, end })),
    ...[...asserted.values()].map(({ value, start, end }) => ({ field: `faults.${value}`, start, end })),
    ...[...denied.values()].map(({ value, start, end }) => ({ field: `deniedFaults.${value}`, start, end })),
  ];
  const undecided = choice.undecided;
  const unsure: Doubt[] = undecided
    ? [
        {
          field: "model",
          start: undecided.start,
          end: undecided.end,
          text: `"${plain.slice(undecided.start, undecided.end)}" may be any of several models; the words do not say which.`,
        },
      ]
    : [];
  return { item, at, doubts: [...doubts, ...unsure, ...openDoubts(source, either)] };
}
