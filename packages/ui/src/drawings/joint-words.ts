import { diameterText, type LengthUnit, lengthText } from "../format/length.ts";
import { numberText } from "../format/number.ts";
import { mmFromIn } from "../format/units.ts";
import type { JointFacts } from "./joint-facts.ts";
import { bondLineIn, type JointSection } from "./joint-section.ts";

/** A few thousandths of an inch: ".002 in", with hundredths of a millimetre for those who read centimetres. */
export function thousandthsText(valueIn: number, unit: LengthUnit): string {
  const inches = `${numberText(valueIn, 4).replace(/^(−?)0\./, "$1.")} in`;
  return unit === "cm" ? `${inches} (${numberText(mmFromIn(valueIn), 2)} mm)` : inches;
}

type Row = readonly [name: string, text: string];

/** Every size of the joint by its name; what nobody has measured says so. */
export function jointRows(facts: JointFacts, unit: LengthUnit): readonly Row[] {
  const {
    tipIn,
    tipForm,
    boreIn,
    boreForm,
    depthIn,
    parallelIn,
    outsideIn,
    reamedToIn,
    sandedIn,
    sleeveWallIn,
  } = facts;
  const size = (valueIn: number | undefined, form: string | undefined) =>
    valueIn === undefined ? "not known" : [diameterText(valueIn, unit), form].filter(Boolean).join(", ");
  const gapIn = bondLineIn(facts);
  const more: readonly (readonly [string, string | undefined])[] = [
    ["Tip sanded down by", sandedIn === undefined ? undefined : thousandthsText(sandedIn, unit)],
    ["Bore reamed to", reamedToIn === undefined ? undefined : diameterText(reamedToIn, unit)],
    ["Sleeve, its wall", sleeveWallIn === undefined ? undefined : thousandthsText(sleeveWallIn, unit)],
    [
      "Gap for the epoxy, all round",
      gapIn === undefined || sleeveWallIn !== undefined ? undefined : gapText(gapIn, unit),
    ],
    ["Parallel part of the tip", parallelIn === undefined ? undefined : lengthText(parallelIn, unit)],
    ["Outside of the hosel", outsideIn === undefined ? undefined : diameterText(outsideIn, unit)],
  ];
  return [
    ["Tip of the shaft", size(tipIn, tipForm)],
    [facts.holder === "adapter" ? "Bore of the adapter" : "Bore of the head", size(boreIn, boreForm)],
    ["Depth of the bore", depthIn === undefined ? "not known" : lengthText(depthIn, unit)],
    ...more.flatMap(([name, text]): Row[] => (text === undefined ? [] : [[name, text]])),
  ];
}

function gapText(gapIn: number, unit: LengthUnit): string {
  return gapIn < 0
    ? `none: ${thousandthsText(-gapIn, unit)} too little on each side`
    : thousandthsText(gapIn, unit);
}

/** What the section shows, for those who cannot see it. */
export function jointSentence(
  facts: JointFacts,
  { clashes, depthIn, tipEndIn }: JointSection,
  unit: LengthUnit,
): string {
  const rows = jointRows(facts, unit).map(([name, text]) => `${name}: ${text}`);
  const short =
    tipEndIn < depthIn ? ` The tip stops ${lengthText(depthIn - tipEndIn, unit)} short of the bottom.` : "";
  const clash = clashes.map(({ place, text }) => ` It clashes at the ${place}: ${text}.`).join("");
  return `The joint cut open along its axis. ${rows.join("; ")}.${short}${clash}`;
}
