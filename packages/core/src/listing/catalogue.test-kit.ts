import type { CatalogueModel } from "./catalogue.ts";
import { type ReadyCatalogue, readyCatalogue } from "./ready-catalogue.ts";

const head = (
  id: string,
  maker: string,
  model: string,
  clubType: CatalogueModel["clubType"],
): CatalogueModel => ({
  id,
  kind: "head",
  maker,
  model,
  clubType,
});

/** A few models of each kind, invented; among them everyday words, numbers in names, and one name for several clubs. */
export const fewModels: readonly CatalogueModel[] = [
  { ...head("ombrel-driver", "Northmoor", "Ombrel", "driver"), aliases: ["Ombrell"] },
  { ...head("ombrel-fairway", "Northmoor", "Ombrel", "fairway"), aliases: ["Ombrell"] },
  { ...head("ombrel-2-driver", "Northmoor", "Ombrel II", "driver"), aliases: ["Ombrel 2"] },
  head("fenwrack-driver", "Kestrelyn", "Fenwrack", "driver"),
  head("fenwrack-10-driver", "Kestrelyn", "Fenwrack 10", "driver"),
  head("copper-wedge", "Pellowick", "Copper", "wedge"),
  head("lapwick-irons", "Orvane", "Lapwick", "iron"),
  { id: "reedlace-60", kind: "shaft", maker: "Vexholm", model: "Reedlace 60" },
  {
    id: "tarnlock",
    kind: "adapter",
    maker: "Haldenbach",
    model: "Tarnlock adapter",
    adapterFamily: "Tarnlock",
  },
  { id: "knarl-58", kind: "grip", maker: "Thistlemere", model: "Knarl 58" },
  { id: "ombrel-cover", kind: "cover", maker: "Northmoor", model: "Ombrel cover" },
];

export const fewReady: ReadyCatalogue = readyCatalogue(fewModels);
