import type { Part } from "@ferrule/core";
import { describe, expect, it } from "vitest";
import { defaultDisplay } from "../display-settings.ts";
import { draftFromPart, partFromDraft } from "./draft.ts";

const shaft: Part = {
  id: "S9",
  kind: "shaft",
  maker: "Vexholm",
  suits: "wood",
  flex: "stiff",
  massG: { value: 61, plusMinus: 0.5, source: "measured" },
  length: { lengthIn: 44.21875, basis: "with-adapter" },
  tip: { diameterIn: 0.335, form: "parallel" },
  faults: ["sky-mark", "paint-wear-shaft"],
  deniedFaults: ["dent-shaft", "crack"],
  note: "From the raffle.",
  paid: { amountMinor: 1250, currency: "EUR" },
  colourOfTheBand: "green",
};

describe("a part in the form", () => {
  it.each(["in", "cm"] as const)(
    "comes back as it was, a field we do not know included, in %s",
    (lengthUnit) => {
      const display = { ...defaultDisplay, lengthUnit };
      expect(partFromDraft("shaft", draftFromPart(shaft, display), display, shaft)).toEqual(shaft);
    },
  );

  it("keeps what cannot be read as it was typed, so that the refusal can name it", () => {
    const part = partFromDraft(
      "grip",
      { massG: "fifty", "coreDiameterIn:source": "measured" },
      defaultDisplay,
    );
    expect(part).toEqual({ kind: "grip", massG: "fifty" });
  });

  it("leaves out the fields of the way of taking a shaft that was not chosen", () => {
    const draft = { "socket.type": "bore", "socket.family": "Quillon 2", "socket.diameterIn": ".335" };
    expect(partFromDraft("head", draft, defaultDisplay)).toEqual({
      kind: "head",
      socket: { type: "bore", diameterIn: 0.335 },
    });
  });
});
