import { call } from "./api.ts";

/** One setting that would be changed, or was; null where there is none. */
interface SettingChange {
  readonly path: string;
  readonly before: unknown;
  readonly after: unknown;
}

export interface PutInReply {
  readonly changes: readonly SettingChange[];
  readonly done: boolean;
}

/** First values of a part of the world, and what each rests on. */
export interface Region {
  readonly id: string;
  readonly name: string;
  readonly rows: readonly { readonly of: string; readonly basis: string }[];
}

export interface RegionsReply {
  readonly regions: readonly Region[];
  readonly canTakeBack: boolean;
}

interface PutInOptions {
  readonly dryRun: boolean;
  /** How much of the new currency one unit of the old is worth. */
  readonly rate?: number;
}

/** What is put in: first values of a region, or the text of a file. */
export type SettingsSource = { readonly region: string } | { readonly text: string };

/** Every call about many settings at once. */
export const settingsApi = {
  regions: () => call<RegionsReply>("GET", "/api/settings/regions"),
  putIn: (source: SettingsSource, options: PutInOptions) =>
    "region" in source
      ? call<PutInReply>("POST", `/api/settings/regions/${encodeURIComponent(source.region)}`, options)
      : call<PutInReply>("POST", "/api/settings/file", { ...options, ...source }),
  takeBack: () => call<PutInReply>("POST", "/api/settings/undo"),
};
