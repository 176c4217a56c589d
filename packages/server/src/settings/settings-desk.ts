import { type CostSettings, clubTypes, type Goal } from "@ferrule/core";
import { done, type Outcome, problem } from "../errors.ts";
import type { LabelSetup } from "../store/labels.ts";
import type { Settings } from "../store/settings.ts";
import type { Tables } from "../store/tables.ts";
import { type Costs, costsProblem } from "../trade/costs.ts";
import { changedSettings, type SettingChange } from "./changed-settings.ts";
import { nextCosts } from "./next-costs.ts";
import type { Region } from "./regions.ts";
import type { SettingsFile, SettingsPart } from "./settings-file.ts";

/** Everything that the user decides. */
interface AllSettings {
  readonly display: Settings;
  readonly goal: Goal;
  readonly costs: CostSettings;
  readonly labels: LabelSetup;
  readonly saleTemplate: string | null;
}

interface PutIn {
  readonly changes: readonly SettingChange[];
  /** Whether it was done, and not only shown. */
  readonly done: boolean;
}

interface PutInOptions {
  /** Shows what would change, and changes nothing. */
  readonly dryRun: boolean;
  /** How much of the new currency one unit of the old is worth. */
  readonly rate?: number | undefined;
}

/** Settings by the handful: all of them to take elsewhere, some of them put in, and the last of that taken back. */
export interface SettingsDesk {
  readonly regions: readonly Region[];
  file(): SettingsFile;
  putIn(part: SettingsPart, options: PutInOptions): Outcome<PutIn>;
  canTakeBack(): boolean;
  /** Settings as they were before the last that were put in; what was changed by hand since stays. */
  takeBack(): Outcome<PutIn>;
}

export function openSettingsDesk(tables: Tables, costs: Costs, regions: readonly Region[]): SettingsDesk {
  const present = (): AllSettings => ({
    display: tables.settings.read(),
    goal: tables.goals.read(),
    costs: costs.read(),
    labels: tables.labels.setup(),
    saleTemplate: tables.settings.saleTemplate() ?? null,
  });
  return {
    regions,
    file: () => ({ format: "ferrule-settings", version: 1, ...present() }),
    putIn: (part, { dryRun, rate }) =>
      tables.together(
        () => {
          const before = present();
          const next = nextCosts(before.costs, part.costs ?? {}, rate);
          if ("refusals" in next)
            return problem("bad-request", "The settings were not changed", next.refusals);
          const after = together(before, part, next.costs);
          return write(tables, before, after, dryRun, { before, after });
        },
        { what: "settings-put-in" },
      ),
    canTakeBack: () => tables.settings.formerSettings() !== undefined,
    takeBack: () =>
      tables.together(
        () => {
          const former = tables.settings.formerSettings() as Former | undefined;
          if (former === undefined)
            return problem("nothing-to-undo", "No settings have been put in that could be taken back");
          const before = present();
          return write(tables, before, takenBack(before, former), false, null);
        },
        { what: "settings-taken-back" },
      ),
  };
}

/** The settings before and after they were put in. */
interface Former {
  readonly before: AllSettings;
  readonly after: AllSettings;
}

function together(before: AllSettings, part: SettingsPart, costs: CostSettings): AllSettings {
  return {
    display: { ...before.display, ...part.display },
    goal: goalTogether(before.goal, part.goal ?? {}),
    costs,
    labels: part.labels ?? before.labels,
    saleTemplate: part.saleTemplate === undefined ? before.saleTemplate : part.saleTemplate,
  };
}

/** Of a target, too, what is left out stays. */
function goalTogether(before: Goal, part: Goal): Goal {
  if (!part.targets) return { ...before, ...part };
  const types = clubTypes.filter((type) => before.targets?.[type] ?? part.targets?.[type]);
  const targets = types.map(
    (type) => [type, { ...before.targets?.[type], ...part.targets?.[type] }] as const,
  );
  return { ...before, ...part, targets: Object.fromEntries(targets) };
}

function write(
  tables: Tables,
  before: AllSettings,
  after: AllSettings,
  dryRun: boolean,
  former: Former | null,
): Outcome<PutIn> {
  const refused = costsProblem(tables, after.costs, "costs.");
  if (refused) return refused;
  const changes = changedSettings(before, after);
  if (dryRun || changes.length === 0) return done({ changes, done: false });
  tables.settings.write(after.display);
  tables.goals.write(after.goal);
  tables.costs.write(after.costs, before.costs);
  tables.labels.writeSetup(after.labels);
  tables.settings.writeSaleTemplate(after.saleTemplate);
  tables.settings.writeFormerSettings(former);
  return done({ changes, done: true });
}

/** Each setting as it was, unless somebody has changed it since. Amounts go back with their currency. */
function takenBack(present: AllSettings, { before, after }: Former): AllSettings {
  const keys = ["display", "goal", "labels"] as const;
  const back = Object.fromEntries(keys.map((key) => [key, keyByKey(present[key], before[key], after[key])]));
  const isOneCurrency = before.costs.currency === after.costs.currency;
  return {
    ...(back as unknown as Pick<AllSettings, (typeof keys)[number]>),
    costs: isOneCurrency ? keyByKey(present.costs, before.costs, after.costs) : before.costs,
    saleTemplate: present.saleTemplate === after.saleTemplate ? before.saleTemplate : present.saleTemplate,
  };
}

function keyByKey<T extends object>(present: T, before: T, after: T): T {
  const names = [...new Set([...Object.keys(present), ...Object.keys(before)])] as (keyof T)[];
  const isAsPutIn = (name: keyof T) => JSON.stringify(present[name]) === JSON.stringify(after[name]);
  const back = names.map((name) => [name, isAsPutIn(name) ? before[name] : present[name]] as const);
  return Object.fromEntries(back.filter(([, value]) => value !== undefined)) as T;
}
