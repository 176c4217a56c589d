import { BaseSequencer, type TestSpecification } from "vitest/node";

/** Where the files that take longest are, the longest first. */
const heaviest = ["/test/browser/", "/test/properties/plan-bench", "/test/api/", "/test/properties/"];

/** Begins with the files that take longest, so that at the end no worker waits for another. */
export class HeavyFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    return sorted.toSorted((one, other) => rank(one) - rank(other));
  }
}

function rank({ moduleId }: TestSpecification): number {
  const place = heaviest.findIndex((part) => moduleId.includes(part));
  return place < 0 ? heaviest.length : place;
}
