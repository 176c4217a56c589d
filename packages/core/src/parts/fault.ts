import { z } from "zod";

/** What can be wrong with a part. Each is asserted, denied or not mentioned; not mentioned is not the same as denied. */
export const faultNames = [
  "sky-mark",
  "crown-scratch",
  "face-wear",
  "dent-head",
  "crack",
  "rattle",
  "caved-face",
  "paint-wear-shaft",
  "dent-shaft",
  "crease-shaft",
  "exposed-fibre",
  "bent-shaft",
  "rust",
  "grip-worn",
  "adapter-damaged",
  "loose-joint",
  "other",
] as const;

export const faultSchema = z.enum(faultNames);
/** One thing wrong with a part; `other` is damage of which no more was said. */
export type Fault = z.infer<typeof faultSchema>;
