import type { LengthTerm } from "./alone-length.ts";

/** What is certain about how the figures go together. */
export interface ClubShape {
  readonly aloneTerms: readonly Pick<LengthTerm, "key" | "weight">[];
  /** The playing length is chosen and the butt trim follows from it, or the other way round. */
  readonly cutTo: "playing-length" | "butt-trim";
  /** Whether the butt is extended by a plug instead of cut. */
  readonly extended: boolean;
  /** Whether the shaft's mass was read as it is now or as it left the maker. */
  readonly massRead: "now" | "raw";
  /** Whether its balance point was read or is a fraction of its length. */
  readonly balanceRead: boolean;
  /** Whether the free length of its frequency reading was read or is what the clamp left. */
  readonly beamRead: boolean;
}
