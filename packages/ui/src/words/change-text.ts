import type { Part, TuneSolution } from "@ferrule/core";
import type { LengthUnit } from "../format/length.ts";
import { lengthText } from "../format/length.ts";
import { numberText } from "../format/number.ts";
import { titleById } from "./part-title.ts";

/** What one way of tuning asks for: "Cut 1/2 in from the butt, add 4 g at the head". */
export function changeText(
  { build, grip }: TuneSolution,
  gripNow: string,
  parts: ReadonlyMap<string, Part>,
  unit: LengthUnit,
): string {
  const { buttTrimIn = 0, tipTrimIn = 0, extraHeadMassG = 0, counterweightG = 0 } = build;
  const changes = [
    tipTrimIn > 0 && `cut ${lengthText(tipTrimIn, unit)} from the tip`,
    buttTrimIn > 0 && `cut ${lengthText(buttTrimIn, unit)} from the butt`,
    buttTrimIn < 0 && `extend the butt by ${lengthText(-buttTrimIn, unit)}`,
    extraHeadMassG > 0 && `add ${numberText(extraHeadMassG, 1)} g at the head`,
    extraHeadMassG < 0 && `take ${numberText(-extraHeadMassG, 1)} g from the head`,
    counterweightG > 0 && `put ${numberText(counterweightG, 1)} g in the butt`,
    grip !== gripNow && `change to the grip ${titleById(parts, grip)} (${grip})`,
  ].filter((change): change is string => typeof change === "string");
  const text = changes.join(", ");
  return text === "" ? "Nothing: it is there already" : text.charAt(0).toUpperCase() + text.slice(1);
}
