import type { Money } from "../parts/part.ts";
import type { WorkStep } from "../resolve/result.ts";
import type { Resale } from "./resale.ts";

/** Money with its 95 % interval, in whole minor units of the bench's currency. */
export interface MoneyInterval {
  readonly valueMinor: number;
  readonly lowMinor: number;
  readonly highMinor: number;
}

/** In the order in which they are shown. Every deal has all five, with those that cannot be gone. */
export const ways = ["build-now", "wait", "sell-as-it-is", "part-out", "leave"] as const;
/** One thing that can be done with a listing; `leave` is not to buy it. */
export type Way = (typeof ways)[number];

/** From a yes to a no; `ask-first` is for what hangs on something that nobody has said. */
export const dealVerdicts = ["buy", "offer-up-to", "ask-first", "leave"] as const;
/** What to do about a listing, at the price asked where there is one. */
export type DealVerdict = (typeof dealVerdicts)[number];

/** One line of a sum, so that the user can follow it. Money in is positive. */
export interface DealLine {
  readonly code: string;
  readonly text: string;
  readonly amountMinor: number;
}

/** Something that can go wrong, or that speaks for or against a way. */
export interface DealReason {
  readonly code: string;
  readonly text: string;
}

/** One thing that can be done with a listing. */
export interface Alternative {
  readonly way: Way;
  /** Whether it can be done at all; if not, `reasons` say why, and the figures are null. */
  readonly possible: boolean;
  /** Money out before any comes in: price, postage, trip, materials, fees paid unsold. */
  readonly outlayMinor: number | null;
  /** What is left when all is sold and paid, own hours at the user's rate included; at the price asked, or at nothing where none is asked. */
  readonly net: MoneyInterval | null;
  /** The most to pay for the listing itself if this is what is done with it. */
  readonly mostToPayMinor: number | null;
  /** Chance that the net is below nothing. */
  readonly lossChance: number | null;
  readonly minutes: number | null;
  /** Net before own hours, per hour. Null where no time is spent. */
  readonly profitPerHourMinor: number | null;
  readonly daysToMoney: { readonly value: number; readonly low: number; readonly high: number } | null;
  readonly lines: readonly DealLine[];
  readonly risks: readonly DealReason[];
  readonly reasons: readonly DealReason[];
  /** Ids of the clubs (as the resolver names them) that are built, of parts on the bench that are used. */
  readonly clubs: readonly string[];
  readonly usesParts: readonly string[];
  /** For `wait`: what is waited for. */
  readonly waiting: WaitingAnswer | null;
}

/** What waiting for one missing part comes to. */
export interface WaitingAnswer {
  /** The want of the resolver, and its words. */
  readonly want: string;
  readonly text: string;
  readonly takeAtOrUnderMinor: number;
  readonly expectedWaitWeeks: number | null;
  readonly chanceByDeadline: number | null;
  readonly chanceWithinWeeks: readonly { readonly weeks: number; readonly chance: number }[];
  readonly valueMinor: number;
  readonly ratePerWeek: number;
  readonly sightings: number;
  /** Whether rate and prices rest on a prior alone. */
  readonly priorOnly: boolean;
}

/** A fact that would tell more, as a question to somebody; money in whole minor units of the bench's currency. */
export interface DealQuestion {
  /** Who can answer: the seller, or the user. */
  readonly to: "seller" | "you";
  /** Field of the listing, such as `items.0.hand`, or of the money, such as `resale`. */
  readonly field: string;
  readonly text: string;
  /** How much money the answer can change: the gap between the most to pay at the best and at the worst answer. */
  readonly swingMinor: number;
  /** Whether the answer can change the verdict. */
  readonly decides: boolean;
}

/** What one item of the listing is to this bench. */
export interface DealItem {
  readonly title: string;
  /** The draft parts it was judged as, by their ids in the answer. */
  readonly parts: readonly string[];
  readonly resale: Resale;
  /** Clubs it makes with what is here, by verdict. */
  readonly clubs: readonly {
    readonly id: string;
    readonly verdict: "fits" | "fits-with-work" | "unsettled";
    readonly title: string;
    readonly resale: Resale;
    /** Its steps at the bench, each with its cautions. */
    readonly work: readonly WorkStep[];
  }[];
  readonly wants: readonly { readonly id: string; readonly text: string }[];
}

/** What a listing is worth to this bench. */
export interface Deal {
  readonly verdict: DealVerdict;
  /** The most to pay for the listing; null where there is nothing to go by. */
  readonly mostToPay: Money | null;
  readonly asking: Money | null;
  /** What it costs to get it here, over its price. */
  readonly gettingHereMinor: number;
  readonly alternatives: readonly Alternative[];
  /** The way with the greatest net. */
  readonly best: Way;
  readonly items: readonly DealItem[];
  readonly questions: readonly DealQuestion[];
  /** The seller's questions as one polite message; empty where there is none, and where the verdict is to leave it. */
  readonly message: string;
  /** Reasons for care, in neutral words. */
  readonly cares: readonly DealReason[];
  /** Why the verdict is what it is, in sentences. */
  readonly reasons: readonly DealReason[];
  readonly notices: readonly string[];
}
