import { expect, it } from "vitest";
import { anItem } from "./deal.test-kit.ts";
import { dealVerdict, type VerdictFacts } from "./deal-verdict.ts";

const facts: VerdictFacts = {
  listing: { intent: "sell", negotiable: null, items: [anItem()] },
  askingMinor: 3000,
  lacksRate: false,
  mostMinor: 4000,
  hopedMinor: 4000,
  lacksPrices: false,
  lacksDistance: false,
  offers: { leastOfferPercent: 60, leastOfferInvitedPercent: 40 },
};
const said = (other: Partial<VerdictFacts["listing"]>) => ({ listing: { ...facts.listing, ...other } });
const limits = (mostMinor: number | undefined, hopedMinor = mostMinor) => ({ mostMinor, hopedMinor });
const unasked = { askingMinor: undefined };

it.each<[string, Partial<VerdictFacts>, string, string]>([
  ["the price is within the most to pay", {}, "buy", "within"],
  ["the price is the most to pay", { askingMinor: 4000 }, "buy", "within"],
  ["nobody says that it is for sale", said({ intent: null }), "buy", "within"],
  ["it is given away, and worth having", { askingMinor: 0, ...limits(0) }, "buy", "within"],
  [
    "it is given away, and getting it costs more than it brings",
    { askingMinor: 0, ...limits(-1) },
    "leave",
    "no-gain",
  ],
  ["the price is over it, but not by far", { askingMinor: 6000 }, "offer-up-to", "over"],
  ["the price is just as far over as an offer reaches", { askingMinor: 6667 }, "leave", "far-over"],
  [
    "offers are invited, and reach further",
    { askingMinor: 6667, ...said({ negotiable: true }) },
    "offer-up-to",
    "over",
  ],
  [
    "offers are invited, and the price is beyond them",
    { askingMinor: 10_001, ...said({ negotiable: true }) },
    "leave",
    "far-over",
  ],
  [
    "the user offers lower",
    { askingMinor: 10_000, offers: { leastOfferPercent: 40, leastOfferInvitedPercent: 40 } },
    "offer-up-to",
    "over",
  ],
  [
    "the user offers nothing lower",
    { askingMinor: 4001, offers: { leastOfferPercent: 100, leastOfferInvitedPercent: 100 } },
    "leave",
    "far-over",
  ],
  ["offers are refused", { askingMinor: 4001, ...said({ negotiable: false }) }, "leave", "firm"],
  ["offers are refused, and none is needed", said({ negotiable: false }), "buy", "within"],
  ["it is worth nothing", { ...limits(-300) }, "leave", "no-gain"],
  ["no price is asked", unasked, "offer-up-to", "no-price-asked"],
  ["no price is asked, and it is worth nothing", { ...unasked, ...limits(-300) }, "leave", "no-gain"],
  [
    "no price is asked, and it may be worth something",
    { ...unasked, ...limits(-300, 900) },
    "ask-first",
    "unsettled",
  ],
  [
    "no price is asked, and some things have no known price",
    { ...unasked, ...limits(-300), lacksPrices: true },
    "ask-first",
    "partly-priced",
  ],
  [
    "it is worth the price only if answers are good",
    { askingMinor: 5000, ...limits(4000, 5000) },
    "ask-first",
    "unsettled",
  ],
  [
    "only a club that waits for an answer is worth anything",
    limits(undefined, 5000),
    "ask-first",
    "unsettled",
  ],
  ["good answers would not be enough", { askingMinor: 9000, ...limits(4000, 5000) }, "leave", "far-over"],
  [
    "it may hold something that nobody knows a price of",
    { askingMinor: 9000, lacksPrices: true },
    "ask-first",
    "partly-priced",
  ],
  ["what is known of it is enough already", { lacksPrices: true }, "buy", "within"],
  ["nobody knows any price", { ...limits(undefined), lacksPrices: true }, "ask-first", "no-evidence"],
  ["nothing can be done with it", limits(undefined), "leave", "no-way"],
  ["how far away it is is not known", { lacksDistance: true }, "ask-first", "getting-here"],
  [
    "an offer waits for how far away it is",
    { askingMinor: 6000, lacksDistance: true },
    "ask-first",
    "getting-here",
  ],
  ["it is too dear however near it is", { askingMinor: 9000, lacksDistance: true }, "leave", "far-over"],
  ["the price has no rate", { ...unasked, lacksRate: true }, "ask-first", "no-rate"],
  [
    "the price has no rate, and it is worth nothing",
    { ...unasked, lacksRate: true, ...limits(-1) },
    "leave",
    "no-gain",
  ],
  ["it is offered in exchange", { ...unasked, ...said({ intent: "swap" }) }, "ask-first", "swap"],
  ["it is offered in exchange or for money", said({ intent: "swap" }), "buy", "within"],
  ["somebody is looking for it", said({ intent: "wanted" }), "leave", "wanted"],
  [
    "nothing was read from the words",
    { ...said({ items: [] }), ...limits(undefined) },
    "ask-first",
    "nothing-read",
  ],
])("where %s", (_title, other, verdict, code) => {
  const answer = dealVerdict({ ...facts, ...other });
  expect([answer.verdict, answer.reasons.map((reason) => reason.code)]).toEqual([verdict, [code]]);
});
