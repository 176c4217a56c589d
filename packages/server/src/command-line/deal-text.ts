import type { Alternative, Deal, Listing, WaitingAnswer, Way } from "@ferrule/core";
import { bullets } from "./bullets.ts";
import { columns } from "./columns.ts";
import { termsText } from "./listing-text.ts";
import { amountText, moneyText } from "./money-text.ts";
import { cautionsOf } from "./resolution-text.ts";
import { wrapped } from "./wrapped.ts";

const wayWords: Readonly<Record<Way, string>> = {
  "build-now": "build with what is here",
  wait: "wait for a part",
  "sell-as-it-is": "sell it as it is",
  "part-out": "take it apart, sell the parts",
  leave: "leave it",
};

/** A verdict on a listing with its reasons, the ways side by side, and what to ask. */
export function dealText(
  { from, listing, deal }: { readonly from: string; readonly listing: Listing; readonly deal: Deal },
  currency: string,
  isNamed: boolean,
  width: number,
): string {
  return [
    ...(isNamed ? [`${from}:`] : []),
    verdictText(deal),
    ...wrapped(termsText(listing), { width, first: "  " }),
    ...bullets("Why:", textsOf(deal.reasons), width),
    ...bullets("Take care:", textsOf(deal.cares), width),
    ...itemLines(deal, width),
    "",
    `What could be done with it, in ${currency}:`,
    wayColumns(deal, currency, width),
    ...cautionLines(deal, width),
    ...bullets("Find out yourself:", textsOf(deal.questions.filter(({ to }) => to === "you")), width),
    ...messageLines(deal, width),
  ].join("\n");
}

/** "OFFER UP TO 41.71 EUR, asked 50.00 EUR". */
function verdictText({ verdict, mostToPay, asking }: Deal): string {
  const most = mostToPay ? moneyText(mostToPay) : "nothing known";
  const asked = asking ? `, asked ${moneyText(asking)}` : "";
  if (verdict === "offer-up-to") return `OFFER UP TO ${most}${asked}`;
  const upTo = mostToPay ? `, worth up to ${most}` : "";
  if (verdict === "buy") return `BUY IT${asked}${upTo}`;
  return `${verdict === "leave" ? "LEAVE IT" : "ASK FIRST"}${asked}${upTo}`;
}

function itemLines({ items }: Deal, width: number): string[] {
  if (items.length === 0) return [];
  const lines = items.flatMap(({ title, resale, clubs, wants }) => [
    ...wrapped(`${title}: ${resale.known ? `should sell for ${rangeText(resale)}` : resale.question}`, {
      width,
      first: "  ",
      rest: "    ",
    }),
    ...clubs
      .slice(0, clubsShown)
      .flatMap((club) => wrapped(`${verdictWords[club.verdict]}: ${club.title}`, { width, first: "    " })),
    ...(clubs.length > clubsShown ? [`    and ${clubs.length - clubsShown} clubs more`] : []),
    ...wants.slice(0, 3).flatMap(({ text }) => wrapped(`lacks ${text}`, { width, first: "    " })),
  ]);
  return ["", "What it is to this bench:", ...lines];
}

const clubsShown = 5;
const verdictWords = { fits: "fits", "fits-with-work": "fits with work", unsettled: "unsettled" } as const;

function rangeText(resale: {
  valueMinor: number;
  lowMinor: number;
  highMinor: number;
  currency: string;
}): string {
  const { valueMinor, lowMinor, highMinor, currency } = resale;
  const [value, low, high] = [valueMinor, lowMinor, highMinor].map((minor) => amountText(minor, currency));
  return `${value} ${currency} (${low} to ${high})`;
}

function wayColumns({ alternatives, best }: Deal, currency: string, width: number): string {
  const amount = (minor: number | null | undefined) => (minor == null ? "" : amountText(minor, currency));
  const rows = alternatives.map((one) => [
    one.way === best ? "*" : "",
    wayWords[one.way],
    amount(one.net?.valueMinor),
    one.net ? `${amount(one.net.lowMinor)} to ${amount(one.net.highMinor)}` : "",
    amount(one.mostToPayMinor),
    amount(one.outlayMinor),
    one.minutes === null ? "" : String(Math.round(one.minutes)),
    noteOf(one, currency),
  ]);
  const header = ["", "WAY", "LEAVES", "95 IN 100 BETWEEN", "MOST TO PAY", "LAID OUT", "MINUTES", "NOTE"];
  return columns({ header, rows, figures: [2, 3, 4, 5, 6], indent: 2, width });
}

function waitText({ takeAtOrUnderMinor, expectedWaitWeeks }: WaitingAnswer, currency: string): string {
  const weeks =
    expectedWaitWeeks === null ? "" : `, in ${Math.max(1, Math.round(expectedWaitWeeks))} weeks or so`;
  return `the part at ${amountText(takeAtOrUnderMinor, currency)} or less${weeks}`;
}

function noteOf({ possible, reasons, waiting, lossChance }: Alternative, currency: string): string {
  if (!possible) return reasons[0]?.text ?? "cannot be done";
  const wait = waiting ? `${waitText(waiting, currency)}; ` : "";
  return lossChance === null ? wait : `${wait}a loss in ${Math.round(lossChance * 100)} of 100`;
}

/** The cautions of the steps that the first few clubs take. */
function cautionLines({ items }: Deal, width: number): string[] {
  return bullets(
    "At the bench:",
    cautionsOf(items.flatMap(({ clubs }) => clubs.slice(0, clubsShown))),
    width,
  );
}

const textsOf = (things: readonly { readonly text: string }[]) => things.map(({ text }) => text);

function messageLines({ message }: Deal, width: number): string[] {
  return message === "" ? [] : ["", "To the seller:", ...wrapped(message, { width, first: "  " })];
}
