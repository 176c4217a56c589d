import type { MeasuredQuantity, SheetDimension, SheetDimensionName } from "@ferrule/core";

export const sheetDimensionWords: Readonly<Record<SheetDimensionName, string>> = {
  "playing-length": "Playing length",
  "cut-length": "Shaft, tip to butt",
  "butt-trim": "Cut off the butt",
  "butt-extension": "Extend the butt by",
  "tip-trim": "Cut off the tip",
  insertion: "Tip goes in",
  "bottom-of-bore-to-ground": "Bottom of bore to ground",
  "tip-diameter": "Tip",
  "bore-diameter": "Bore",
  "sleeve-wall": "Sleeve wall",
  "butt-diameter": "Butt",
  "grip-core": "Grip core",
};

export const sheetSourceWords: Readonly<Record<SheetDimension["source"], string>> = {
  measured: "measured",
  stated: "as stated",
  catalogue: "by the catalogue",
  typical: "typical: measure it",
  chosen: "chosen",
  "worked-out": "worked out",
};

export const quantityWords: Readonly<Record<MeasuredQuantity, string>> = {
  playingLengthIn: "Playing length",
  swingWeightPoints: "Swing weight",
  massG: "Mass",
  frequencyCpm: "Frequency",
};

/** How each figure is read off a finished club. */
export const quantityHelp: Readonly<Record<MeasuredQuantity, string>> = {
  playingLengthIn: "Rule along the back of the shaft, heel on the ground, to the edge of the grip cap.",
  swingWeightPoints: "On the scale, such as D2.",
  massG: "The whole club, in grams.",
  frequencyCpm: "Butt clamped over 5 in, in cycles a minute.",
};
