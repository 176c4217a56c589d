import type { Interval } from "../interval.ts";
import { fields } from "../parts/fields.ts";
import type { Reading } from "../parts/reading.ts";
import { coverageFactor95 } from "./uncertainty.ts";

/** The most a butt is lengthened, steel or graphite, because a plug holds no more: our own default, no source. */
export const buttExtensionMaxIn = 2;

/** How far the trade's ruler and the Rules' 60 degree method differ at most. Source: tutelman.com/golf/measure/ruler.php. */
export const rulesMethodSlackIn = 1 / 12;

/** The readings that the playing length of a club with its shaft uncut is made of. */
export interface UncutLengthFacts {
  readonly aloneLengthIn?: Reading;
  readonly bbgmIn?: Reading;
  readonly capThicknessIn?: Reading;
}

const names = ["aloneLengthIn", "bbgmIn", "capThicknessIn"] as const;

/** What a missing reading can be at most and at least: the whole range its field allows, in inches. */
const believable: Readonly<Record<(typeof names)[number], Interval>> = {
  aloneLengthIn: { low: fields["length.lengthIn"].min, high: fields["length.lengthIn"].max },
  bbgmIn: {
    low: Math.min(
      fields["socket.bbgmIn"].min,
      fields["socket.seatToGroundIn"].min - fields.tipStopFromSeatIn.max,
    ),
    high: Math.max(
      fields["socket.bbgmIn"].max,
      fields["socket.seatToGroundIn"].max - fields.tipStopFromSeatIn.min,
    ),
  },
  capThicknessIn: { low: fields.capThicknessIn.min, high: fields.capThicknessIn.max },
};

/**
 * Playing length in inches with nothing cut: shaft alone + bottom of bore to ground + grip cap.
 * `undefined` when a reading is missing. Source: tutelman.com/golf/design/flex4.php (without the cap term).
 */
export function uncutLengthIn(facts: UncutLengthFacts): number | undefined {
  return names.reduce<number | undefined>((sumIn, name) => {
    const reading = facts[name];
    return sumIn === undefined || reading === undefined ? undefined : sumIn + reading.value;
  }, 0);
}

/** Its 95 % interval in inches. A missing reading may be anything its field allows, so the interval never claims too much. */
export function uncutLengthInterval(facts: UncutLengthFacts): Interval {
  let [lowIn, highIn, variance] = [0, 0, 0];
  for (const name of names) {
    const reading = facts[name];
    lowIn += reading?.value ?? believable[name].low;
    highIn += reading?.value ?? believable[name].high;
    variance += (reading?.plusMinus ?? 0) ** 2;
  }
  const halfWidthIn = coverageFactor95 * Math.sqrt(variance);
  return { low: lowIn - halfWidthIn, high: highIn + halfWidthIn };
}

/** The first reading that `uncutLengthIn` lacks. */
export function missingLengthFact(facts: UncutLengthFacts): keyof UncutLengthFacts | undefined {
  return names.find((name) => facts[name] === undefined);
}

/** Which of the readings is the least certain: the one worth asking for when the sum is too vague. */
export function vaguestLengthFact(facts: UncutLengthFacts): keyof UncutLengthFacts {
  const vagueness = (name: keyof UncutLengthFacts) => facts[name]?.plusMinus ?? Number.POSITIVE_INFINITY;
  return names.reduce((worst, name) => (vagueness(name) > vagueness(worst) ? name : worst));
}
