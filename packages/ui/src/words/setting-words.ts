import type { ClubType, Target } from "@ferrule/core";
import { moneyText } from "../format/money.ts";
import { numberText } from "../format/number.ts";
import { swingWeightText } from "../format/swing-weight.ts";
import { clubTypeWords } from "./part-words.ts";

const words: Readonly<Record<string, string>> = {
  "display.lengthUnit": "Lengths in",
  "display.currency": "Money in",
  "display.theme": "Light or dark",
  "goal.hand": "Hand",
  "goal.flex": "Flex",
  "goal.skill": "Skill allowed",
  "goal.localRule46": "Competitions cap length at 46 in",
  "goal.targets": "Targets by club type",
  "costs.currency": "The bench’s currency",
  "costs.rates": "Rates of currencies",
  "costs.hourValueMinor": "An hour of yours is worth",
  "costs.leastNetMinor": "The least a deal must leave",
  "costs.mostLossChance": "The greatest chance of a loss",
  "costs.feeTables": "Places to sell, and their fees",
  "costs.sellsBy": "You sell by",
  "costs.services": "Ways to send a parcel",
  "costs.packagingMinor": "Packaging for one parcel",
  "costs.buyerPaysPostage": "The buyer pays the postage",
  "costs.perKmMinor": "A kilometre costs",
  "costs.minutesPerKm": "Minutes for a kilometre",
  "costs.saleMinutes": "Minutes for one sale",
  "costs.holdingPerWeekMinor": "Keeping one thing for a week costs",
  "costs.discountPerYearPercent": "Money must earn in a year, in per cent",
  "costs.deadlineWeeks": "Give up waiting after weeks",
  "costs.leastOfferPercent": "Offer no less than, in per cent of the price asked",
  "costs.leastOfferInvitedPercent": "Where offers are invited, no less than",
  "costs.farUnderPercent": "A price is far too low under, in per cent",
  "costs.unpricedPartPercent": "A missing part costs, in per cent of the club",
  "costs.unseenPartWeeks": "A missing part turns up once in weeks",
  "costs.parcels": "Parcels",
  "costs.work": "Own figures for the work",
  "costs.adjustments": "What changes a price",
  labels: "Labels",
  saleTemplate: "Template of descriptions",
};

/** What a setting is called: by its own path, or by the nearest above it with the rest of the path. */
export function settingText(path: string): string {
  const own = words[path];
  if (own) return own;
  const [, type, what] = /^goal\.targets\.(\w+)\.(\w+)$/.exec(path) ?? [];
  if (type)
    return `${clubTypeWords[type as ClubType] ?? type}: ${what === "playingLengthIn" ? "playing length (in)" : "swing weight"}`;
  const [above = path] = Object.keys(words).filter((name) => path.startsWith(`${name}.`));
  const rest = path.slice(above.length + 1);
  return words[above] ? `${words[above]}: ${rest.replaceAll(".", ", ")}` : path;
}

/** A setting as it stands, in a few words; amounts are of the currency given. */
export function settingValueText(path: string, value: unknown, currency: string): string {
  if (value === null || value === undefined) return "not set";
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value === "number") {
    if (path.endsWith("Minor")) return moneyText(value, currency);
    return path.endsWith("swingWeightPoints") ? swingWeightText(value) : numberText(value, 4);
  }
  if (Array.isArray(value)) return value.map(nameOf).join(", ") || "none";
  if (path === "goal.targets") return targetsText(value as Partial<Record<ClubType, Target>>);
  if (typeof value === "object") return JSON.stringify(value);
  return String(value);
}

const nameOf = (one: unknown) => (one as { name?: string } | null)?.name ?? JSON.stringify(one);

function targetsText(targets: Partial<Record<ClubType, Target>>): string {
  return Object.entries(targets)
    .map(([type, { playingLengthIn, swingWeightPoints }]) => {
      const length = playingLengthIn === undefined ? [] : [`${numberText(playingLengthIn, 4)} in`];
      const weight = swingWeightPoints === undefined ? [] : [swingWeightText(swingWeightPoints)];
      return `${clubTypeWords[type as ClubType]} ${[...length, ...weight].join(" ")}`;
    })
    .join(", ");
}
