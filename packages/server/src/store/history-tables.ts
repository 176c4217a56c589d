import type { CostSettings } from "@ferrule/core";
import type { CostsTable } from "./costs.ts";
import type { DocumentTable } from "./document-table.ts";
import type { GoalsTable } from "./goals.ts";
import type { SingleName, TableName } from "./history.ts";
import type { Recorder } from "./history-recorder.ts";
import type { LabelsTable } from "./labels.ts";
import type { SettingsTable } from "./settings.ts";

/** The same table, with every change of it written down. */
export function recordedTable<T extends { id?: string }>(
  table: DocumentTable<T>,
  name: TableName,
  recorder: Recorder,
): DocumentTable<T> {
  return {
    ...table,
    insert: (value, place) =>
      recorder.together(() => {
        const at = table.insert(value, place);
        recorder.note({ table: name, id: value.id, after: { place: at, value } });
        return at;
      }),
    replace: (id, value) =>
      recorder.together(() => {
        const before = table.get(id);
        table.replace(id, value);
        if (before) recorder.note({ table: name, id, before, after: { place: before.place, value } });
      }),
    remove: (id) =>
      recorder.together(() => {
        const before = table.get(id);
        table.remove(id);
        if (before) recorder.note({ table: name, id, before });
      }),
    clear: () =>
      recorder.together(() => {
        const all = table.all();
        table.clear();
        for (const before of all) recorder.note({ table: name, id: before.value.id as string, before });
      }),
  };
}

/** The id of what there is one of. */
export const onlyId = "bench";

function noteSingle(recorder: Recorder, table: SingleName, before: unknown, after: unknown): void {
  const state = (value: unknown) => ({ place: null, value: value ?? null });
  recorder.note({ table, id: onlyId, before: state(before), after: state(after) });
}

export function recordedGoals(table: GoalsTable, recorder: Recorder): GoalsTable {
  return {
    ...table,
    write: (goal) =>
      recorder.together(() => {
        noteSingle(recorder, "goal", table.read(), goal);
        table.write(goal);
      }),
  };
}

export interface RecordedCosts extends CostsTable {
  /** `former` are the costs that held until now, where those that were written do not name them all. */
  write(costs: CostSettings, former?: CostSettings): void;
}

export function recordedCosts(table: CostsTable, recorder: Recorder): RecordedCosts {
  return {
    ...table,
    write: (costs, former) =>
      recorder.together(() => {
        noteSingle(recorder, "costs", former ?? table.read(), costs);
        table.write(costs);
      }),
  };
}

export function recordedSettings(table: SettingsTable, recorder: Recorder): SettingsTable {
  const recorded = <T>(name: SingleName, read: () => unknown, write: (value: T) => void) => {
    return (value: T) =>
      recorder.together(() => {
        noteSingle(recorder, name, read(), value);
        write(value);
      });
  };
  const writeSettings = recorded("settings", table.read, table.write);
  return {
    ...table,
    write: (settings) => recorder.together(() => writeSettings(settings), { what: "settings-changed" }),
    markExample: recorded("example", table.isExample, table.markExample),
    writeSaleTemplate: recorded("sale-template", table.saleTemplate, table.writeSaleTemplate),
    writeFormerSettings: recorded("former-settings", table.formerSettings, table.writeFormerSettings),
  };
}

export function recordedLabels(table: LabelsTable, recorder: Recorder): LabelsTable {
  return {
    ...table,
    writeSetup: (setup) =>
      recorder.together(() => {
        noteSingle(recorder, "labels", table.setup(), setup);
        table.writeSetup(setup);
      }),
    writePrinted: (places) =>
      recorder.together(() => {
        const [before, after] = [table.printed(), new Set(places)];
        const state = (is: boolean) => (is ? { place: null, value: true } : undefined);
        if (isSameSet(before, after)) return;
        for (const place of new Set([...before, ...after]))
          recorder.note({
            table: "labels-printed",
            id: String(place),
            before: state(before.has(place)),
            after: state(after.has(place)),
          });
        table.writePrinted(after);
      }),
  };
}

const isSameSet = (one: ReadonlySet<unknown>, other: ReadonlySet<unknown>) =>
  one.size === other.size && [...one].every((each) => other.has(each));
