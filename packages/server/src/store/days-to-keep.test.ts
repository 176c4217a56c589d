import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { daysToKeep } from "./days-to-keep.ts";

// The rule is our own (derived, no published source); it is held here to plain counting from the calendar.
const dayMs = 86_400_000;
const dayAt = (number: number) => new Date(Date.UTC(2026, 0, 1) + number * dayMs).toISOString().slice(0, 10);

describe("the days whose backups are kept", () => {
  it("are the latest seven, and the last of four weeks and of twelve months, for a bench that is used every day", () => {
    // To Wednesday 25 November 2026; 22, 15 and 8 November were Sundays.
    const days = Array.from({ length: 800 }, (_, at) => dayAt(328 - at));
    expect(daysToKeep(days).sort()).toEqual([
      "2025-12-31",
      "2026-01-31",
      "2026-02-28",
      "2026-03-31",
      "2026-04-30",
      "2026-05-31",
      "2026-06-30",
      "2026-07-31",
      "2026-08-31",
      "2026-09-30",
      "2026-10-31",
      "2026-11-08",
      "2026-11-15",
      "2026-11-19",
      "2026-11-20",
      "2026-11-21",
      "2026-11-22",
      "2026-11-23",
      "2026-11-24",
      "2026-11-25",
    ]);
  });

  it("are all there are while they are few, however long ago", () => {
    const days = ["2019-02-03", "2021-07-08", "2026-11-25"];
    expect(daysToKeep(days).sort()).toEqual(days);
  });

  it("are none where there are none", () => {
    expect(daysToKeep([])).toEqual([]);
  });

  it("grow old day by day without a gap: what the rule wants later has not been taken away before", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 300 }), (steps) => {
        let number = 0;
        const all: string[] = [];
        let kept: string[] = [];
        for (const step of steps) {
          number += step;
          all.push(dayAt(number));
          // Thinned every day, as it is done.
          kept = daysToKeep([...kept, dayAt(number)]);
        }
        expect(kept.sort()).toEqual(daysToKeep(all).sort());
        expect(kept.length).toBeLessThanOrEqual(7 + 4 + 12);
        expect(kept).toContain(all.at(-1));
      }),
      { numRuns: 60 },
    );
  });
});
