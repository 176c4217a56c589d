import type { Evidence, EvidenceWeight, Resale } from "@ferrule/core";

/** One price of an estimate, to be drawn: `own` is a sale of the bench itself. */
export interface PricePoint {
  readonly id: string;
  readonly priced: "own" | "sold" | "asked";
  readonly closeness: EvidenceWeight["closeness"];
  /** As it is counted: brought to this condition, this month and a price paid. */
  readonly amountMinor: number;
  /** In months of 365.25/12 days, never negative; `undefined` where its day is not known. */
  readonly ageMonths: number | undefined;
}

type Known = Extract<Resale, { known: true }>;

const dayMs = 86_400_000;
const daysPerMonth = 365.25 / 12;

/** The prices behind an estimate. A row that is no evidence in the list is a sale in the books. */
export function pricePoints(
  { basis }: Known,
  evidence: ReadonlyMap<string, Evidence>,
  today: string,
): readonly PricePoint[] {
  return basis.map(({ evidence: id, closeness, adjustedMinor }) => {
    const row = evidence.get(id);
    return {
      id,
      priced: row === undefined || row.own ? "own" : row.what,
      closeness,
      amountMinor: adjustedMinor,
      ageMonths: row && Math.max(0, (Date.parse(today) - Date.parse(row.on)) / dayMs / daysPerMonth),
    };
  });
}

/** Half of how wide a price is drawn, in pixels: the newer the larger, and never too small to be seen. */
export function sizePx(ageMonths: number | undefined): number {
  return 2.5 + 3.5 * 0.5 ** ((ageMonths ?? 12) / 9);
}

/** Where on the axis a price stands: equal steps are equal factors. */
export function priceDomain(resale: Known, points: readonly PricePoint[]): readonly [number, number] {
  const all = [resale.lowMinor, resale.highMinor, ...points.map(({ amountMinor }) => amountMinor)].filter(
    (amount) => amount > 0,
  );
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const factor = Math.max(1.08, (high / low) ** 0.05);
  return [low / factor, high * factor];
}

/** One to seven times the powers of ten, in steps of much the same factor, thinned until their labels have room. */
export function priceTicks(
  [low, high]: readonly [number, number],
  toPx: (amountMinor: number) => number,
  roomPx: number,
): readonly number[] {
  const ticks: number[] = [];
  for (let power = Math.floor(Math.log10(low)); power <= Math.log10(high); power++)
    for (const step of [1, 1.5, 2, 3, 5, 7]) {
      const amount = Math.round(step * 10 ** power);
      const last = ticks.at(-1);
      const hasRoom = last === undefined || toPx(amount) - toPx(last) >= roomPx;
      if (amount >= low && amount <= high && hasRoom) ticks.push(amount);
    }
  return ticks;
}

/** How far off its lane's middle each point stands so that none covers another: the nearest free place, up or down by turns. */
export function swarm(
  points: readonly { readonly xPx: number; readonly sizePx: number }[],
): readonly number[] {
  const placed: { x: number; y: number; size: number }[] = [];
  return points.map(({ xPx, sizePx: size }) => {
    for (let step = 0; ; step++) {
      const y = Math.ceil(step / 2) * (step % 2 === 0 ? 3 : -3);
      const isFree = placed.every((other) => Math.hypot(other.x - xPx, other.y - y) >= other.size + size + 1);
      if (!isFree) continue;
      placed.push({ x: xPx, y, size });
      return y;
    }
  });
}
