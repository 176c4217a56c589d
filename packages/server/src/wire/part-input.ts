import { adapterSchema, coverSchema, gripSchema, headSchema, shaftSchema, wrenchSchema } from "@ferrule/core";
import { z } from "zod";

/** A part as it is sent to the bench: without an id it is given one. */
export const partInputSchema = z
  .discriminatedUnion(
    "kind",
    [
      headSchema.partial({ id: true }),
      adapterSchema.partial({ id: true }),
      shaftSchema.partial({ id: true }),
      gripSchema.partial({ id: true }),
      coverSchema.partial({ id: true }),
      wrenchSchema.partial({ id: true }),
    ],
    {
      error: "a part, whose kind is head, adapter, shaft, grip, cover or wrench",
    },
  )
  .meta({ id: "NewPart" });
