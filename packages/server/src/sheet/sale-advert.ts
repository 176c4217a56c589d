import {
  type ClubParts,
  type Estimates,
  estimateClub,
  estimateResale,
  firstSaleTemplate,
  type Joint,
  type Part,
  parseSaleTemplate,
  type Resale,
  type SaleDescription,
  saleDescription,
} from "@ferrule/core";
import { isSold } from "../bench/unsold.ts";
import { done, type Outcome, problem } from "../errors.ts";
import { saleSubject } from "../trade/sale-subject.ts";
import type { SheetTools } from "./sheet-tools.ts";
import { stopRefusal } from "./unsafe-problem.ts";

/** A draft of what to write about parts of the bench that go for one price, in the user's own template. */
export function saleAdvert(
  tools: SheetTools,
  ids: readonly string[],
  given?: string,
): Outcome<SaleDescription> {
  const { tables, bench } = tools;
  const found = partsNamed(bench.parts.all(), ids);
  if (!found.ok) return found;
  const parts = found.value;
  const template = parseSaleTemplate(given ?? tables.settings.saleTemplate() ?? firstSaleTemplate);
  if (!template.ok) return problem("bad-request", "The template cannot be filled in", template.refusals);
  const joints = bench.joints.all();
  const measurement = lastMeasured(tools, parts);
  const estimates = estimatesOf(tools, parts, joints);
  const answer = saleDescription({
    parts,
    joints,
    ...(measurement ? { measurement } : {}),
    ...(estimates ? { estimates } : {}),
    inspections: tables.inspections.all().map(({ value }) => value),
    clearances: tables.clearances.all().map(({ value }) => value),
    resale: resaleOf(tools, parts),
    evidence: bench.evidence.all(),
    template: template.value,
  });
  if (answer.ok) return done(answer.description);
  return problem("unsafe", undefined, answer.stops.map(stopRefusal));
}

function partsNamed(bench: readonly Part[], ids: readonly string[]): Outcome<readonly Part[]> {
  const byId = new Map(bench.map((part) => [part.id, part]));
  const refusals = ids.flatMap((id, at) => {
    const part = byId.get(id);
    if (part && !isSold(part) && ids.indexOf(id) === at) return [];
    const expected = "the id of a part on the bench that has not been sold, each once";
    return [{ field: `part.${at}`, got: JSON.stringify(id), expected }];
  });
  if (refusals.length > 0) return problem("bad-request", "Nothing can be described", refusals);
  return done(ids.flatMap((id) => byId.get(id) ?? []));
}

/** The last measuring of a club of exactly these parts, covers and wrenches aside. */
function lastMeasured({ tables }: SheetTools, parts: readonly Part[]) {
  const made = parts.filter(({ kind }) => kind !== "cover" && kind !== "wrench").map(({ id }) => id);
  const key = made.toSorted().join("\n");
  return tables.measurements
    .all()
    .map(({ value }) => value)
    .findLast((one) => one.parts.toSorted().join("\n") === key);
}

/** What the club would measure as it stands; nothing where these parts are not put together. */
function estimatesOf(
  { reference }: SheetTools,
  parts: readonly Part[],
  joints: readonly Joint[],
): Estimates | undefined {
  const of = <K extends Part["kind"]>(kind: K) =>
    parts.find((part): part is Extract<Part, { kind: K }> => part.kind === kind);
  const [head, adapter, shaft, grip] = [of("head"), of("adapter"), of("shaft"), of("grip")];
  if (!head || !shaft || !grip) return undefined;
  const joined = (type: Joint["type"], a: string, b: string) =>
    joints.some((joint) => joint.type === type && joint.parts.includes(a) && joint.parts.includes(b));
  const isWhole =
    joined("bonded", shaft.id, (adapter ?? head).id) &&
    joined("gripped", shaft.id, grip.id) &&
    (!adapter || joined("screwed", head.id, adapter.id));
  if (!isWhole) return undefined;
  const club: ClubParts = { head, ...(adapter ? { adapter } : {}), shaft, grip, gripped: true, bonded: true };
  const answer = estimateClub(club, {}, reference);
  return answer.ok ? answer.estimates : undefined;
}

const ofOneThing = "What would these go for together? Prices are noted of one club, or of one thing.";

function resaleOf({ costs, models, bench, today }: SheetTools, parts: readonly Part[]): Resale {
  const subject = saleSubject(parts, models.all());
  if (!subject) return { known: false, question: ofOneThing };
  return estimateResale(subject, bench.evidence.all(), costs.read(), today());
}
