import { cases } from "./cases.test-kit.ts";
import { socketTypeKnown } from "./socket-type-known.ts";

// The two ways a head takes its shaft: common practice, no source.
cases(socketTypeKnown, [
  {
    title: "a head with a bore is known to take the shaft itself",
    facts: { socketType: "bore" },
    verdict: "fits",
  },
  {
    title: "a head with a receiver is known to take an adapter",
    facts: { socketType: "receiver" },
    verdict: "fits",
  },
  {
    title: "a head that nobody has described is asked about in words that a seller can answer",
    facts: {},
    verdict: "unsettled",
    ask: "socketType",
    says: /straight into the head, or into an adapter with a screw/,
  },
]);
