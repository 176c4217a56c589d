import type { IncomingMessage, ServerResponse } from "node:http";
import type { FastifyBaseLogger, FastifyInstance, RawServerDefault } from "fastify";
import type { ZodTypeProvider } from "fastify-type-provider-zod";
import type { Batches } from "../batches/batches.ts";
import type { Answers } from "../bench/answers.ts";
import type { Bench } from "../bench/bench.ts";
import type { History } from "../history/history.ts";
import type { LabelDesk } from "../labels/label-desk.ts";
import type { LiveFeed } from "../live/live-feed.ts";
import type { NetworkPlace } from "../network/network-place.ts";
import type { Pairing } from "../pairing/pairing.ts";
import type { PlanJobs } from "../plan/plan-jobs.ts";
import type { Plans } from "../plan/plans.ts";
import type { ReferenceTables } from "../reference-files.ts";
import type { SettingsDesk } from "../settings/settings-desk.ts";
import type { SheetDesk } from "../sheet/sheet-desk.ts";
import type { OwnNameTable } from "../store/history-own-name.ts";
import type { SettingsTable } from "../store/settings.ts";
import type { Costs } from "../trade/costs.ts";
import type { Judgements } from "../trade/judgements.ts";
import type { ReadyModels } from "../trade/ready-models.ts";
import type { Trade } from "../trade/trade.ts";
import type { Watchlist } from "../watch/watchlist.ts";

/** A Fastify whose routes take the types of their zod schemas. */
export type App = FastifyInstance<
  RawServerDefault,
  IncomingMessage,
  ServerResponse,
  FastifyBaseLogger,
  ZodTypeProvider
>;

/** What routes work with. */
export interface RouteContext {
  readonly reference: ReferenceTables;
  readonly bench: Bench;
  readonly answers: Answers;
  readonly settings: SettingsTable;
  readonly costs: Costs;
  readonly models: ReadyModels;
  readonly trade: Trade;
  readonly judgements: Judgements;
  /** Differs after every change of the parts, the joints, the claims, the catalogue or the noted prices. */
  readonly benchStamp: () => string;
  readonly plans: Plans;
  readonly planJobs: PlanJobs;
  readonly watchlist: Watchlist;
  readonly batches: Batches;
  readonly sheetDesk: SheetDesk;
  readonly labelDesk: LabelDesk;
  readonly settingsDesk: SettingsDesk;
  readonly history: History;
  readonly liveFeed: LiveFeed;
  /** What this machine is called in the history. */
  readonly ownName: OwnNameTable;
  readonly pairing: Pairing;
  /** Where the bench is served on the local network, if it is. */
  readonly network?: NetworkPlace;
  /** Differs after every change of anything that a device takes with it. */
  readonly snapshotStamp: () => string;
  /** Today's date, such as 2026-11-25. */
  readonly today: () => string;
  readonly version: string;
}
