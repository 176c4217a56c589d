const currencies = [
  [/(?:£|\bgbp|quid)/i, "GBP"],
  [/(?:€|\beuros?|\beur\b)/i, "EUR"],
  [/A\$|AUD/i, "AUD"],
  [/\$|usd|bucks/i, "USD"],
];
const clubTypes = [
  [/driver|\b1\s?w/i, "driver"],
  [/wood|fairway|\b\dw\b/i, "fairway"],
  [/hybrid|rescue|utility|\b\dh\b/i, "hybrid"],
  [/\birons?\b|\b\di\b/i, "iron"],
  [/wedge|\b[psgl]w\b/i, "wedge"],
  [/putter/i, "putter"],
];
const kinds = [
  [/\bheads?\b/i, "head"],
  [/\bshafts?\b/i, "shaft"],
  [/\badapt[eo]rs?\b|\bsleeves?\b/i, "adapter"],
  [/\bgrips?\b/i, "grip"],
];
const flexes = [
  [/x-?\s?stiff|\btx\b/i, "x-stiff"],
  [/stiff|\bs flex/i, "stiff"],
  [/regular|\breg\b|\br flex/i, "regular"],
  [/senior/i, "senior"],
  [/ladies/i, "ladies"],
];
const faults = [
  [/sky ?mark/i, "sky-mark"],
  [/\bdents?\b/i, "dent-head"],
  [/crack/i, "crack"],
  [/rattle/i, "rattle"],
  [/\brust/i, "rust"],
];

const first = (table, text) => table.find(([pattern]) => pattern.test(text))?.[1] ?? null;
const number = (match) => (match ? Number(match[1].replace(",", ".")) : null);

/** Half inches and hundredths aside, what a bare pattern can say of a length. */
function lengthOf(text) {
  const lengthIn = number(text.match(/(\d{2}(?:[.,]\d+)?)\s?(?:"|''|in\b|inch)/i));
  return lengthIn === null ? null : { lengthIn, basis: "unstated" };
}

function tipOf(text) {
  const diameter = text.match(/\.?(335|350|355|370)\b/);
  return diameter ? { diameterIn: Number(`0.${diameter[1]}`), form: null } : null;
}

function askingOf(text) {
  const currency = first(currencies, text);
  const amount = text.match(
    /[£€$]\s?(\d+(?:[.,]\d{1,2})?)|(\d+(?:[.,]\d{1,2})?)\s?(?:€|euro|eur\b|quid|bucks)/i,
  );
  if (!amount || currency === null) return null;
  return { amountMinor: Math.round(Number((amount[1] ?? amount[2]).replace(",", ".")) * 100), currency };
}

/** The first model of the catalogue whose maker or model stands in the words, by looking for each. */
function modelOf(text, models) {
  const plain = text.toLowerCase();
  return models.find(({ model }) => plain.includes(model.toLowerCase())) ?? null;
}

const said = (text, pattern, without) => (without.test(text) ? false : pattern.test(text) || null);

/** One pattern a field and one item a listing: what one writes before thinking of context. */
export function regexReader(models) {
  return (text) => {
    const model = modelOf(text, models);
    const item = {
      kind: first(kinds, text) ?? "club",
      quantity: Number(text.match(/\b(\d+)\s?x\b/i)?.[1] ?? 1),
      maker: model?.maker ?? null,
      model: model?.model ?? null,
      modelId: model?.id ?? null,
      year: number(text.match(/\b(20[012]\d)\b/)),
      clubType: first(clubTypes, text),
      clubNumber: text.match(/\b([3-9])\s?(?:wood|iron|hybrid|w\b|h\b)/i)?.[1] ?? null,
      loftDeg: number(text.match(/(\d{1,2}(?:[.,]\d)?)\s?(?:°|deg|\*)/i) ?? text.match(/\b(\d{1,2}\.5)\b/)),
      hand: first(
        [
          [/\brh\b|right/i, "right"],
          [/\blh\b|left/i, "left"],
        ],
        text,
      ),
      flex: first(flexes, text),
      shaftMaterial: first(
        [
          [/graphite|carbon/i, "graphite"],
          [/steel/i, "steel"],
        ],
        text,
      ),
      shaftMassG: number(text.match(/\b(\d{2,3})\s?g(?:r|ram)?s?\b/i)),
      length: lengthOf(text),
      tip: tipOf(text),
      adapter: first(
        [
          [/no adapt/i, "none"],
          [/adapter|sleeve/i, "fitted"],
        ],
        text,
      ),
      adapterFamily: text.match(/Quillon [12]|Tarnlock|Brackwater|Ashlock/i)?.[0] ?? null,
      cover: said(text, /head ?cover|\bhc\b/i, /no (?:head ?)?cover/i),
      wrench: said(text, /wrench|\btool\b/i, /no (?:wrench|tool)/i),
      faults: faults.filter(([pattern]) => pattern.test(text)).map(([, fault]) => fault),
      deniedFaults: [],
      price: null,
    };
    return {
      intent: /wanted|wtb|looking for/i.test(text) ? "wanted" : /swap|trade/i.test(text) ? "swap" : "sell",
      asking: askingOf(text),
      negotiable: /\bono\b|\bobo\b|offers/i.test(text) || null,
      postage: first(
        [
          [/free post|posted|shipped|delivered|inc p&p/i, "included"],
          [/collection only|pick ?up only/i, "collection-only"],
          [/p&p|postage|shipping/i, "extra"],
        ],
        text,
      ),
      items: [item],
    };
  };
}
