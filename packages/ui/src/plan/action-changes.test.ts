import type { PlanAction } from "@ferrule/core";
import { describe, expect, it } from "vitest";
import { actionChanges } from "./action-changes.ts";

const action = (what: PlanAction["do"], title: string): PlanAction => ({
  do: what,
  title,
  parts: [],
  sightings: [],
  netMinor: 0,
  outlayMinor: 0,
  minutes: 0,
  work: [],
  waitsFor: null,
});

describe("changes from one plan to another", () => {
  it("are what is only in one of them", () => {
    const { added, dropped } = actionChanges(
      [action("build", "driver"), action("sell", "shaft")],
      [action("sell", "driver"), action("sell", "shaft")],
    );
    expect(added.map(({ do: what, title }) => `${what} ${title}`)).toEqual(["sell driver"]);
    expect(dropped.map(({ do: what, title }) => `${what} ${title}`)).toEqual(["build driver"]);
  });

  it("count alike things, so that two sold instead of one is one more", () => {
    const one = action("sell", "shaft");
    expect(actionChanges([one], [one, one])).toEqual({ added: [one], dropped: [] });
  });
});
