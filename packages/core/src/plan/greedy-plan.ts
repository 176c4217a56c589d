import { Draft } from "./draft.ts";
import { guideOf, scoresByNet } from "./guide.ts";
import { fill } from "./improve-draft.ts";
import type { Packing } from "./packing.ts";

/** What one does without thinking twice: always the use that brings most, from what is here and what each bundle adds for more than it costs. */
export function greedyDraft(packing: Packing, scores: readonly number[] = scoresByNet(packing)): Draft {
  const guide = guideOf(packing, scores);
  const draft = new Draft(packing);
  fill(draft, guide);
  packing.bundles.forEach((_, place) => {
    const { mark, net } = draft;
    if (!draft.canBuy(place)) return;
    draft.buy(place, 1);
    for (const { resource } of packing.bundles[place]?.gives ?? []) {
      for (const use of guide.byResource[resource] ?? []) {
        const room = draft.roomFor(use);
        if (room > 0) draft.do(use, room);
      }
    }
    if (draft.net <= net) draft.backTo(mark);
  });
  draft.settle();
  return draft;
}
