import { addAdvert } from "./advert.ts";
import { addBatches } from "./batches.ts";
import { addBench } from "./bench.ts";
import { addBenchResolve } from "./bench-resolve.ts";
import { addBooks } from "./books.ts";
import { addCatalogue } from "./catalogue.ts";
import { addClaims } from "./claims.ts";
import type { App, RouteContext } from "./context.ts";
import { addCosts } from "./costs.ts";
import { addDevices } from "./devices.ts";
import { addDimensions } from "./dimensions.ts";
import { addEstimate } from "./estimate.ts";
import { addEvents } from "./events.ts";
import { addEvidence } from "./evidence.ts";
import { addExports } from "./exports.ts";
import { addGoal } from "./goal.ts";
import { addGoesWith } from "./goes-with.ts";
import { addHealth } from "./health.ts";
import { addHistory } from "./history.ts";
import { addImport } from "./import.ts";
import { addInspection } from "./inspection.ts";
import { addJoints } from "./joints.ts";
import { addJudge } from "./judge.ts";
import { addLabels } from "./labels.ts";
import { addOpenApiRoute } from "./openapi.ts";
import { addParts } from "./parts.ts";
import { addPlan } from "./plan.ts";
import { addRead } from "./read.ts";
import { addResale } from "./resale.ts";
import { addResolve } from "./resolve.ts";
import { addSettings } from "./settings.ts";
import { addSheet } from "./sheet.ts";
import { addSightings } from "./sightings.ts";
import { addSnapshot } from "./snapshot.ts";
import { addTrade } from "./trade.ts";
import { addTrust } from "./trust.ts";
import { addTune } from "./tune.ts";
import { addHits, addWatch } from "./watch.ts";

/** Every route, in the order of the description. */
export function addRoutes(app: App, context: RouteContext): void {
  const routes = [
    addResolve,
    addEstimate,
    addDimensions,
    addTune,
    addBench,
    addParts,
    addJoints,
    addClaims,
    addGoal,
    addBenchResolve,
    addGoesWith,
    addExports,
    addImport,
    addRead,
    addJudge,
    addResale,
    addCatalogue,
    addEvidence,
    addSightings,
    addBooks,
    addTrade,
    addPlan,
    addWatch,
    addHits,
    addBatches,
    addSheet,
    addInspection,
    addAdvert,
    addLabels,
    addCosts,
    addSettings,
    addHistory,
    addEvents,
    addSnapshot,
    addDevices,
    addTrust,
    addHealth,
  ];
  for (const add of routes) add(app, context);
  addOpenApiRoute(app);
}
