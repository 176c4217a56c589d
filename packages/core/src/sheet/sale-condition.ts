import type { Fault } from "../parts/fault.ts";
import type { Part } from "../parts/part.ts";
import { titleOfPart } from "../worth/titles.ts";
import type { Clearance } from "./clearance.ts";
import type { Inspection } from "./inspection.ts";
import { ofPart, type SaleFact, type SaleLine } from "./sale-line.ts";
import { listWords, saleFaultWords } from "./sale-words.ts";

export interface ConditionFacts {
  readonly inspections: readonly Inspection[];
  readonly clearances: readonly Clearance[];
}

/** Faults as they are said of each part; what was looked for and not there; what was cleared, and how. */
export function conditionLines(parts: readonly Part[], facts: ConditionFacts): readonly SaleLine[] {
  return parts.flatMap((part) => [
    ...assertedLine(part),
    ...deniedLines(part, facts.inspections),
    ...facts.clearances
      .filter((clearance) => clearance.part === part.id)
      .map((one) => clearedLine(part, one)),
  ]);
}

function assertedLine(part: Part): SaleLine[] {
  const { id, faults = [] } = part;
  if (faults.length === 0) return [];
  const words = listWords(faults.map((fault) => saleFaultWords[fault]));
  return [{ text: `The ${titleOfPart(part)} has ${words}`, from: [ofPart(id, "faults")] }];
}

/** Somebody at this bench looked, or somebody said so: a buyer is told which. */
function deniedLines(part: Part, inspections: readonly Inspection[]): SaleLine[] {
  const denied = part.deniedFaults ?? [];
  const last = inspections.findLast((inspection) => inspection.part === part.id);
  const looked = denied.filter((fault) => last?.denied.includes(fault));
  const heard = denied.filter((fault) => !looked.includes(fault));
  const name = titleOfPart(part);
  const seen: SaleFact[] = last ? [{ of: "inspection", inspection: last.id }] : [];
  return [
    ...lineOf(looked, `Looked over on ${last?.on}: the ${name} showed no`, [
      ...seen,
      ofPart(part.id, "deniedFaults"),
    ]),
    ...lineOf(heard, `Said to be without on the ${name}:`, [ofPart(part.id, "deniedFaults")]),
  ];
}

function lineOf(faults: readonly Fault[], opening: string, from: readonly SaleFact[]): SaleLine[] {
  const [first, ...rest] = from;
  if (faults.length === 0 || !first) return [];
  const words = faults.map((fault) => saleFaultWords[fault].replace(/^an? /, ""));
  return [{ text: `${opening} ${listWords(words)}`, from: [first, ...rest] }];
}

function clearedLine(part: Part, { id, fault, because, on }: Clearance): SaleLine {
  const what = `${saleFaultWords[fault]} on the ${titleOfPart(part)}`;
  const text =
    because === "put-right"
      ? `Put right on ${on}: ${what}`
      : `Looked at again on ${on}: ${what} had been suspected and was not there`;
  return { text, from: [{ of: "clearance", clearance: id }] };
}
