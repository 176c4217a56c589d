import type { Claim } from "@ferrule/core";

/** How somebody knows, the strongest first. */
export const evidenceWords: Readonly<Record<Claim["evidence"], string>> = {
  tried: "Tried at a bench",
  "maker-stated": "The maker says so",
  "seen-assembled": "Seen assembled",
  "seller-said": "A seller said so",
};
