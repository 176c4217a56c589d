import { cases } from "./cases.test-kit.ts";
import { flexAsWanted } from "./flex-as-wanted.ts";

// Common practice, no source.
cases(flexAsWanted, [
  { title: "passes the flex that is wanted", facts: { goalFlex: "stiff", flex: "stiff" }, verdict: "fits" },
  { title: "passes any flex where none is wanted", facts: { flex: "ladies" }, verdict: "fits" },
  { title: "has nothing to ask where no flex is wanted", facts: {}, verdict: "fits" },
  {
    title: "asks for the flex when it is not stated",
    facts: { goalFlex: "senior" },
    verdict: "unsettled",
    code: "flex-unknown",
    ask: "flex",
    says: /senior is wanted.*printed on the shaft/,
  },
  {
    title: "refuses the next flex",
    facts: { goalFlex: "regular", flex: "regular-plus" },
    verdict: "does-not-fit",
    code: "other-flex",
    because: ["goalFlex", "flex"],
    says: /is regular-plus, and regular is wanted/,
  },
]);
