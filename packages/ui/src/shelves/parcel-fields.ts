import type { RecordField } from "../form/record-field.ts";

const size = (path: string, label: string, unit: string): RecordField => ({
  path,
  label,
  control: "number",
  unit,
  needed: true,
});

/** One parcel as it is sent. */
export const parcelFields: readonly RecordField[] = [
  { path: "shape", label: "Shape", control: "choice", choices: { box: "A box", tube: "A tube" } },
  size("lengthCm", "Length", "cm"),
  size("widthCm", "Width, or diameter", "cm"),
  size("heightCm", "Height, or diameter", "cm"),
  size("massG", "Mass, packed", "g"),
];
