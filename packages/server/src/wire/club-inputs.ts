import {
  type Adapter,
  adapterSchema,
  type ClubParts,
  type Grip,
  gripSchema,
  type Head,
  headSchema,
  type Shaft,
  shaftSchema,
} from "@ferrule/core";
import { z } from "zod";

/** The parts of one club as they are sent: `id` and `kind` may be left out, since the name of each says them. */
export const clubInputShape = {
  head: headSchema.partial({ id: true, kind: true }),
  adapter: adapterSchema.partial({ id: true, kind: true }).optional(),
  shaft: shaftSchema.partial({ id: true, kind: true }),
  grip: gripSchema.partial({ id: true, kind: true }),
  /** Whether the grip and the adapter are on the shaft already: a length read with them on includes them. */
  gripped: z.boolean().optional(),
  bonded: z.boolean().optional(),
};

const clubInputSchema = z.strictObject(clubInputShape);

/** The club's parts with their ids and kinds filled in: the head is called `head`, and so on. */
export function clubPartsFrom({
  head,
  adapter,
  shaft,
  grip,
  gripped,
  bonded,
}: z.infer<typeof clubInputSchema>): ClubParts {
  return {
    head: { ...head, id: head.id ?? "head", kind: "head" } as Head,
    adapter: adapter && ({ ...adapter, id: adapter.id ?? "adapter", kind: "adapter" } as Adapter),
    shaft: { ...shaft, id: shaft.id ?? "shaft", kind: "shaft" } as Shaft,
    grip: { ...grip, id: grip.id ?? "grip", kind: "grip" } as Grip,
    gripped,
    bonded,
  };
}
