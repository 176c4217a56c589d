import { randomUUID } from "node:crypto";
import Fastify, { type FastifyServerOptions } from "fastify";
import type { ZodTypeProvider } from "fastify-type-provider-zod";
import { openBatches } from "./batches/batches.ts";
import { openAnswers } from "./bench/answers.ts";
import { type Bench, openBench } from "./bench/bench.ts";
import type { Example } from "./bench/bench-contents.ts";
import { localToday } from "./clock.ts";
import { errorTable, problemBody } from "./errors.ts";
import { openAuthors } from "./history/authors.ts";
import { openHistory } from "./history/history.ts";
import { openLabelDesk } from "./labels/label-desk.ts";
import { openLiveFeed } from "./live/live-feed.ts";
import type { NetworkPlace } from "./network/network-place.ts";
import { refuseBroken } from "./network/refuse-broken.ts";
import { connectionsMost, type TimeLimits, timedServer, timeLimits } from "./network/time-limits.ts";
import { openPairing } from "./pairing/pairing.ts";
import { openPlanJobs } from "./plan/plan-jobs.ts";
import { openPlans } from "./plan/plans.ts";
import { addAuthor } from "./plugins/author.ts";
import { addErrorReplies, problemOf } from "./plugins/error-replies.ts";
import { addJsonBody } from "./plugins/json-body.ts";
import { addKeptAnswers } from "./plugins/kept-answers.ts";
import { addOpenApi } from "./plugins/openapi.ts";
import { addOwnHost } from "./plugins/own-host.ts";
import { addPage } from "./plugins/page.ts";
import { addPairedDevices } from "./plugins/paired-devices.ts";
import { addRateLimit } from "./plugins/rate-limit.ts";
import { addSecurityHeaders } from "./plugins/security-headers.ts";
import { addValidation } from "./plugins/validation.ts";
import type { ReferenceFiles } from "./reference-files.ts";
import type { App } from "./routes/context.ts";
import { addRoutes } from "./routes/index.ts";
import { openSettingsDesk } from "./settings/settings-desk.ts";
import { openSheetDesk } from "./sheet/sheet-desk.ts";
import { closeDatabase, openDatabase } from "./store/database.ts";
import type { Author } from "./store/history.ts";
import { openTables, type Tables } from "./store/tables.ts";
import { openThreadPool } from "./threads/thread-pool.ts";
import { openCosts } from "./trade/costs.ts";
import { openJudgements } from "./trade/judgements.ts";
import { openReadyModels } from "./trade/ready-models.ts";
import { openTrade } from "./trade/trade.ts";
import { notingShelf } from "./watch/noting-shelf.ts";
import { openWatchlist } from "./watch/watchlist.ts";
import { versionTag } from "./wire/version-tag.ts";

/** What a server is started with. With nothing but the reference tables it serves this machine alone, and keeps nothing. */
export interface AppOptions {
  /** The folder of the bench's database; without it the bench is kept in memory and gone at the end. */
  readonly dataFolder?: string;
  readonly reference: ReferenceFiles;
  /** The example that is put on the bench at the very first start, or what reads it when it is needed. */
  readonly demo?: Example | (() => Example);
  /** Today's date, such as 2026-11-25; by default this machine's. */
  readonly today?: () => string;
  /** The folder of the built page. */
  readonly pageFolder?: string;
  /** Names besides the loopback ones that this server may be called by. */
  readonly allowedHosts?: readonly string[];
  /** Where the bench is served on the local network, if it is. */
  readonly network?: NetworkPlace;
  /** Milliseconds since 1970; by default this machine's. Codes for pairing end by it. */
  readonly now?: () => number;
  readonly logger?: FastifyServerOptions["logger"];
  /** How much this machine may ask for in a minute; by default plenty for the pages of one. */
  readonly requestsPerMinute?: number | undefined;
  /** How long requests may take to come in; by default as long as is reasonable. */
  readonly limits?: TimeLimits;
  /** Is told what somebody who starts the server should know. */
  readonly note?: (words: string) => void;
}

const version = "0.1.0";
const bodyLimit = 8 * 1024 * 1024;

/** The whole server, ready to listen or to be asked by `inject`. Throws a `StartupProblem` when the database cannot be used. */
export async function buildApp(options: AppOptions): Promise<App> {
  const database = openDatabase(options.dataFolder, { note: options.note });
  const authors = openAuthors();
  const { reference, network, today = localToday, now = Date.now } = options;
  const tables: Tables = openTables(database, { author: () => authors.current() ?? here(), now });
  const here = (): Author => ({ means: "here", device: null, name: tables.ownName.read() });
  const costs = openCosts(tables, options.reference.firstCosts);
  const stored = openBench(tables, costs.read, options.demo);
  const app: App = Fastify({
    logger: options.logger ?? false,
    bodyLimit,
    http: timedServer(options.limits ?? timeLimits),
    requestTimeout: (options.limits ?? timeLimits).requestMs,
    clientErrorHandler: refuseBroken,
    routerOptions: { maxParamLength: 1000 },
    frameworkErrors: (error, _request, reply) => {
      const stated = problemOf(error);
      // This runs outside of any route, so the reply is written without a schema.
      reply.raw.writeHead(errorTable[stated.code].status, {
        "content-type": "application/json; charset=utf-8",
        "x-content-type-options": "nosniff",
      });
      reply.raw.end(JSON.stringify(problemBody(stated)));
    },
  }).withTypeProvider<ZodTypeProvider>();
  app.server.maxConnections = connectionsMost;
  const threads = openThreadPool();
  addJsonBody(app);
  addValidation(app);
  addErrorReplies(app);
  const pairing = openPairing(tables.devices, { now, today });
  addOwnHost(app, options.allowedHosts ?? [], network?.names);
  await addSecurityHeaders(app);
  await addRateLimit(app, options.requestsPerMinute);
  addPairedDevices(app, pairing);
  addKeptAnswers(app, tables.keptAnswers, today);
  addAuthor(app, authors, pairing, here);
  await addOpenApi(app, version);
  const answers = openAnswers(stored, reference);
  const models = openReadyModels(tables);
  const logFailure = (error: unknown) => app.log.error(error);
  const world = { bench: stored, costs, models, reference, today };
  const watchlist = openWatchlist({ ...world, tables }, threads, logFailure);
  const bench: Bench = { ...stored, sightings: notingShelf(stored.sightings, watchlist.note) };
  const trade = openTrade(tables, costs, models, today);
  const { parts, joints, claims, models: catalogue, evidence, sightings, settings } = tables;
  // Changes are counted from the start on, so that a count says nothing without it.
  const started = randomUUID();
  const stamp = () => tables.stampOf(parts, joints, claims, catalogue, evidence, sightings);
  const benchStamp = () => tables.stampOf(parts, joints, claims, catalogue, evidence);
  const snapshotStamp = () => versionTag([started, stamp(), bench.goal(), costs.read(), settings.read()]);
  const judgements = openJudgements(threads);
  const plans = openPlans({ ...world, stamp }, threads);
  const planJobs = openPlanJobs(plans, logFailure);
  const batches = openBatches({ ...world, tables, watchlist }, threads, logFailure);
  app.addHook("onClose", async () => {
    const written = batches.close();
    await threads.close();
    await written;
    closeDatabase(database);
  });
  const sheetDesk = openSheetDesk({ ...world, tables, answers });
  const labelDesk = openLabelDesk(tables);
  const settingsDesk = openSettingsDesk(tables, costs, reference.regions ?? []);
  const context = { bench, answers, settings, costs, models, trade, today, reference, version };
  const history = openHistory(tables, costs);
  const atHome = {
    pairing,
    network,
    snapshotStamp,
    history,
    liveFeed: openLiveFeed(tables),
    ownName: tables.ownName,
  };
  addRoutes(app, {
    ...context,
    judgements,
    benchStamp,
    plans,
    planJobs,
    watchlist,
    batches,
    sheetDesk,
    labelDesk,
    settingsDesk,
    ...atHome,
  });
  await addPage(app, options.pageFolder);
  batches.goOn();
  return app;
}
