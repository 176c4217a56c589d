import type { ListingItem } from "./listing.ts";
import type { Words } from "./words.ts";

/** Fields of an item that a small reader can find; which item each belongs to is the assembler's business. */
export type MentionField = Exclude<
  keyof ListingItem,
  "kind" | "quantity" | "maker" | "model" | "modelId" | "faults" | "deniedFaults" | "price"
>;

/** A fact as it stands in the words: what it says of which field, and where. */
export type Mention =
  | {
      readonly [Field in MentionField]: {
        readonly field: Field;
        readonly value: NonNullable<ListingItem[Field]>;
        readonly start: number;
        readonly end: number;
        readonly doubt?: string;
      };
    }[MentionField]
  | {
      readonly field: "fault";
      readonly value: ListingItem["faults"][number];
      readonly denied: boolean;
      /** Which fault it is where the thing is a shaft and the words do not say where on it: "no dents", "a scuff or two". */
      readonly onShaft?: ListingItem["faults"][number];
      /** Whether it is a fault of a shaft alone: "bag chatter" of a head is none. */
      readonly shaftOnly?: boolean;
      readonly start: number;
      readonly end: number;
      readonly doubt?: string;
    };

/** Reads one kind of fact from the words. Never throws; what it is not sure of it leaves out, or gives with a doubt. */
export type FactReader = (words: Words) => Mention[];
