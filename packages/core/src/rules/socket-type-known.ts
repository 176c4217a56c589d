import { fits } from "../findings/outcome.ts";
import { defineRule } from "./rule.ts";

/** How a head takes its shaft decides which other questions make sense. */
export const socketTypeKnown = defineRule({
  id: "socket-type-known",
  intent:
    "Whether a head takes the shaft itself or an adapter has to be known before anything can be joined to it",
  strength: "must",
  grain: "interface",
  needs: { socketType: "head.socket.type" },
  source: { title: "common practice, no source" },
  check: () => fits(),
  say: {},
  ask: {
    socketType: "Does the shaft go straight into the head, or into an adapter with a screw in the heel?",
  },
});
