import { emptyItem } from "../../packages/core/dist/index.js";

const typeOfSort = { wood: "driver", hybrid: "hybrid" };
const tipOfSort = { wood: 0.335, hybrid: 0.37 };
const lengthOfSort = { wood: 45, hybrid: 40 };
const dayZero = Date.UTC(2027, 0, 1);

export const dateOf = (day) => new Date(dayZero + day * 86_400_000).toISOString().slice(0, 10);

const euros = (amountMinor) => ({ amountMinor, currency: "EUR" });
const modelFacts = ({ id, maker, model }) => ({ modelId: id, maker, model });

/** A listing as its words say it; as its seller says it who has been asked, where `isAnswered`. */
export function asListing(listing, isAnswered) {
  const { askingMinor, postageMinor, negotiable, goods, unsaid } = listing;
  const hidden = isAnswered ? { hand: false, flex: false, fault: false } : unsaid;
  const item = itemOf(goods, hidden);
  return {
    intent: "sell",
    asking: euros(askingMinor),
    negotiable: negotiable ? true : null,
    postage: postageMinor === 0 ? "included" : euros(postageMinor),
    items: [{ ...emptyItem(item.kind), ...item }],
    spans: [],
    doubts: [],
  };
}

function itemOf({ head, shaft, adapter }, hidden) {
  const hand = (part) => (hidden.hand ? {} : { hand: part.hand });
  const ofShaft = shaft && {
    ...(hidden.flex ? {} : { flex: shaft.flex }),
    length: { lengthIn: lengthOfSort[shaft.sort], basis: "playing" },
    tip: { diameterIn: tipOfSort[shaft.sort], form: "parallel" },
  };
  if (head) {
    const faults = head.fault === "none" || hidden.fault ? [] : [head.fault];
    const ofHead = { ...modelFacts(head.model), clubType: head.model.clubType, faults, ...hand(head) };
    return shaft
      ? { kind: "club", ...ofShaft, ...ofHead, adapter: "fitted", adapterFamily: adapter.family }
      : { kind: "head", ...ofHead };
  }
  if (shaft) {
    const onTip = adapter
      ? { adapter: "fitted", adapterFamily: adapter.family, ...hand(adapter) }
      : { adapter: "none" };
    return {
      kind: "shaft",
      ...modelFacts(shaft.model),
      clubType: typeOfSort[shaft.sort],
      ...ofShaft,
      ...onTip,
    };
  }
  const tip = { diameterIn: tipOfSort[adapter.sort], form: "parallel" };
  return { kind: "adapter", adapterFamily: adapter.family, tip, ...hand(adapter) };
}

const measured = (value) => ({ value, source: "measured" });
/** What one looks for when a part is unpacked. */
const soundHead = ["crack", "caved-face", "rattle", "dent-head"];
const soundShaft = ["dent-shaft", "crease-shaft", "exposed-fibre", "bent-shaft"];

/** A thing on the bench as parts and joints, once it has been looked at. */
export function asParts({ head, shaft, adapter, paidMinor }) {
  const parts = [];
  const joints = [];
  if (head) parts.push(headPart(head));
  if (adapter) parts.push(adapterPart(adapter));
  if (shaft) parts.push(shaftPart(shaft));
  if (shaft?.isGripped) {
    parts.push({ id: `${shaft.id}-g`, kind: "grip", deniedFaults: ["grip-worn"] });
    joints.push({ type: "gripped", parts: [shaft.id, `${shaft.id}-g`] });
  }
  if (shaft && adapter) joints.push({ type: "bonded", parts: [adapter.id, shaft.id] });
  if (head && adapter && shaft) joints.push({ type: "screwed", parts: [head.id, adapter.id] });
  return { parts: parts.map((part, at) => (at === 0 ? { ...part, paid: euros(paidMinor) } : part)), joints };
}

function headPart({ id, model, family, hand, fault }) {
  const isSound = fault !== "crack";
  return {
    ...{ id, kind: "head", maker: model.maker, model: model.model, clubType: model.clubType, hand },
    ...(model.year ? { year: model.year } : {}),
    socket: { type: "receiver", family },
    ...(fault === "none" ? {} : { faults: [fault] }),
    ...(isSound ? { deniedFaults: soundHead } : {}),
  };
}

const adapterPart = ({ id, family, hand, sort }) => ({
  ...{ id, kind: "adapter", family, hand },
  bore: { diameterIn: measured(tipOfSort[sort]), form: "parallel" },
  deniedFaults: ["adapter-damaged"],
});

const shaftPart = ({ id, model, sort, flex }) => ({
  ...{ id, kind: "shaft", maker: model.maker, model: model.model, suits: sort, flex },
  length: { lengthIn: measured(lengthOfSort[sort]), basis: "playing" },
  tip: { diameterIn: measured(tipOfSort[sort]), form: "parallel" },
  buttDiameterIn: measured(0.6),
  deniedFaults: soundShaft,
});

/** What was sold, as a noted price. */
export function asEvidence({ thing, result, soldOn, listedOn }, id, own) {
  return {
    ...{ id, on: dateOf(soldOn), what: "sold", own, price: euros(result.priceMinor), kind: result.kind },
    daysToSell: soldOn - listedOn,
    ...subjectOf(thing),
  };
}

const kindOf = { head: "head", donor: "club", fitted: "shaft", bare: "shaft", adapter: "adapter" };

/** What was asked for a thing, as a noted price, as far as the words go. */
export function asAsked({ id, kind, askingMinor, goods, unsaid }, day) {
  const { hand, flex, condition, ...said } = subjectOf(goods);
  return {
    ...{ id: `asked ${id}`, on: dateOf(day), what: "asked", price: euros(askingMinor), kind: kindOf[kind] },
    ...said,
    ...(hand && !unsaid.hand ? { hand } : {}),
    ...(flex && !unsaid.flex ? { flex } : {}),
    ...(condition && !unsaid.fault ? { condition } : {}),
  };
}

function subjectOf({ head, shaft, adapter }) {
  const worn = head && head.fault !== "none" ? { condition: "fair" } : {};
  const ofHead = head && {
    ...modelFacts(head.model),
    ...(head.model.year ? { year: head.model.year } : {}),
    ...{ clubType: head.model.clubType, hand: head.hand, adapterFamily: head.family },
  };
  const ofShaft = !head &&
    shaft && {
      ...modelFacts(shaft.model),
      clubType: typeOfSort[shaft.sort],
      adapter: adapter ? "fitted" : "none",
      ...(adapter ? { adapterFamily: adapter.family } : {}),
    };
  const ofAdapter = adapter && { adapterFamily: adapter.family, hand: adapter.hand };
  return {
    ...(ofHead || ofShaft || ofAdapter),
    ...(shaft ? { flex: shaft.flex } : {}),
    ...worn,
  };
}
