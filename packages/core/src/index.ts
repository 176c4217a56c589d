/** The public door: the only way in for the server and the page. In the order parts → findings → measures → clubs → listings → worth. */

export { canonicalText } from "./canonical-text.ts";
export { decodedText } from "./decoded-text.ts";
export { type FoundCode, findByCode } from "./find-by-code.ts";
export type { CitedFact } from "./findings/cited-fact.ts";
export type { Finding } from "./findings/finding.ts";
export { type Verdict, verdicts } from "./findings/verdict.ts";
export type { Bench } from "./graph/bench-graph.ts";
export {
  type CatalogueModel,
  catalogueModelSchema,
  type ItemKind,
  itemKindSchema,
  itemKinds,
} from "./listing/catalogue.ts";
export { emptyItem } from "./listing/empty-item.ts";
export {
  type Doubt,
  type Intent,
  type Listing,
  type ListingItem,
  listingItemSchema,
  listingSchema,
  type Postage,
  type Span,
} from "./listing/listing.ts";
export { readListing } from "./listing/read-listing.ts";
export { type ReadyCatalogue, readyCatalogue } from "./listing/ready-catalogue.ts";
export { splitListings } from "./listing/split-listings.ts";
export { type Build, buildSchema, type ClubParts } from "./measure/build.ts";
export { type ClubDimensions, clubDimensionNames, clubDimensions } from "./measure/club-dimensions.ts";
export { type ClubSummary, clubSummary } from "./measure/club-summary.ts";
export type {
  BasisEntry,
  Estimate,
  Estimates,
  SettingEstimate,
  SwingWeightEstimate,
} from "./measure/estimate.ts";
export { type EstimatedClub, estimateClub } from "./measure/estimates.ts";
export {
  type EffectName,
  type Tuned,
  type TuneOptions,
  type TuneSolution,
  type TuneTarget,
  tune,
} from "./measure/tune.ts";
export { mergePatch } from "./merge-patch.ts";
export {
  amountMinorMost,
  convertMinor,
  minorDigits,
  percentOfMinor,
  roundMinor,
  splitMinor,
} from "./money.ts";
export { type Claim, claimSchema } from "./parts/claim.ts";
export { type Fault, faultNames } from "./parts/fault.ts";
export { type FieldMeaning, type FieldPath, fields } from "./parts/fields.ts";
export {
  type Goal,
  goalSchema,
  type Skill,
  skillSchema,
  skills,
  type Target,
  targetSchema,
} from "./parts/goal.ts";
export { type Joint, type JointType, jointSchema } from "./parts/joint.ts";
export {
  type Adapter,
  adapterSchema,
  type ClubType,
  clubTypes,
  coverSchema,
  type Flex,
  flexes,
  type Grip,
  gripSchema,
  type Head,
  headSchema,
  type Money,
  type Part,
  type PartKind,
  partSchema,
  type Shaft,
  shaftSchema,
  wrenchSchema,
} from "./parts/part.ts";
export { type Reading, readingFrom, readingSources, type WrittenReading } from "./parts/reading.ts";
export type { CautionRow, Reference, WorkRow } from "./parts/reference.ts";
export { type Parsed, parseWith, type Refusal } from "./parts/refusal.ts";
export type { TypicalRow } from "./parts/typical.ts";
export { isSold, unsold } from "./parts/unsold.ts";
export type {
  Bounds,
  LinearAnswer,
  LinearProgramme,
  LinearSolver,
  SolverOptions,
} from "./plan/linear-solver.ts";
export { planBench, planOn, type SolveModel } from "./plan/plan-bench.ts";
export type { PlanInput, PlanWishes } from "./plan/plan-input.ts";
export type {
  Bundle,
  PlanChoice,
  PlanLimits,
  PlanModel,
  PlanSolution,
  PlanTrip,
  Resource,
  Share,
  Use,
} from "./plan/plan-model.ts";
export type { Plan, PlanAction, PlanBinding } from "./plan/plan-result.ts";
export { type PlanGround, planGround } from "./plan/plan-setup.ts";
export { priceParts } from "./plan/price-parts.ts";
export { searchWords } from "./plan/search-words.ts";
export { type PlanOptions, solvePlan } from "./plan/solve-plan.ts";
export { wantedThing } from "./plan/wanted-things.ts";
export { type Hit, hitSchema, type Watch, watchSchema } from "./plan/watch.ts";
export { type Match, type WatchIndex, watchIndex } from "./plan/watch-index.ts";
export { type WantValue, wantValues } from "./plan/watch-values.ts";
export { type GoesWith, goesWith } from "./resolve/goes-with.ts";
export { type ReadyBench, readyBench } from "./resolve/ready-bench.ts";
export { clubsAndWants, clubsForHead, type ResolveResult, resolveBench } from "./resolve/resolve-bench.ts";
export type { Club, NearMiss, Question, Resolution, Want, WorkStep } from "./resolve/result.ts";
export { rules } from "./rules/index.ts";
export type { Rule } from "./rules/rule.ts";
export { type AfterBuildInput, shaftAfterBuild } from "./sheet/after-build.ts";
export {
  type BuildSheet,
  buildSheet,
  type SheetAnswer,
  type SheetInput,
  type SheetPart,
} from "./sheet/build-sheet.ts";
export {
  type Clearance,
  canBePutRight,
  clearanceReasons,
  clearanceRefusals,
  clearanceSchema,
  clearedFaults,
} from "./sheet/clearance.ts";
export {
  faultsFromAnswers,
  type InspectedFaults,
  type Inspection,
  type InspectionAnswer,
  type InspectionRow,
  inspectedFaults,
  inspectionAnswers,
  inspectionRowsFor,
  inspectionSchema,
} from "./sheet/inspection.ts";
export {
  type Blank,
  type Comparison,
  comparisonsOf,
  type Experience,
  estimatedOf,
} from "./sheet/measured-back.ts";
export {
  type MeasuredQuantity,
  type Measurement,
  measuredQuantities,
  measuredQuantityNames,
  measurementSchema,
  type Uncertain,
} from "./sheet/measurement.ts";
export type { PriceSuggestion } from "./sheet/price-suggestion.ts";
export { droppedSafetyFaults, type SafetyStop, safetyStops } from "./sheet/safety-stops.ts";
export {
  type SaleAnswer,
  type SaleDescription,
  type SaleInput,
  saleDescription,
} from "./sheet/sale-description.ts";
export type { SaleFact, SaleLine } from "./sheet/sale-line.ts";
export {
  firstSaleTemplate,
  parseSaleTemplate,
  type SaleTemplate,
  salePlaceholders,
} from "./sheet/sale-template.ts";
export type { SheetCheck } from "./sheet/sheet-checks.ts";
export {
  type SheetDimension,
  type SheetDimensionName,
  sheetDimensionNames,
} from "./sheet/sheet-dimensions.ts";
export { shortCode, type TypedCode, typedCode } from "./short-code.ts";
export { type ArrivalPrior, type Arrivals, arrivalsOf, weakArrivalPrior } from "./worth/arrivals.ts";
export type { BooksLine, BooksSummary, OutcomeTrust, TrustRow } from "./worth/books-summary.ts";
export {
  type Adjustments,
  type CostSettings,
  costSettingsSchema,
  type FeeTable,
  type Parcel,
  type PostageService,
} from "./worth/cost-settings.ts";
export {
  type Alternative,
  type Deal,
  type DealItem,
  type DealLine,
  type DealQuestion,
  type DealReason,
  type DealVerdict,
  dealVerdicts,
  type MoneyInterval,
  type WaitingAnswer,
  type Way,
  ways,
} from "./worth/deal.ts";
export type { DealInput } from "./worth/deal-input.ts";
export {
  entriesOfPurchase,
  entriesOfSale,
  type NewEntry,
  type PartShare,
  type Purchase,
  type Sale,
  sharePerPart,
} from "./worth/entries-of.ts";
export { type Entry, entryPartsMax, entrySchema, entryTypes } from "./worth/entry.ts";
export { estimateResale, resaleEstimator } from "./worth/estimate-resale.ts";
export {
  type Condition,
  conditions,
  type Evidence,
  evidenceSchema,
  type Subject,
  subjectSchema,
} from "./worth/evidence.ts";
export { type FeeBill, type FeeLine, feesOn } from "./worth/fee-bill.ts";
export { type FittedAdjustments, fitAdjustments } from "./worth/fit-adjustments.ts";
export { type DealQuery, dealJudge, judgeDeal } from "./worth/judge-deal.ts";
export { type ModelFinder, modelFinder } from "./worth/model-finder.ts";
export { countingIds, type ListingParts, partsOfListing } from "./worth/parts-of-listing.ts";
export type { PlanPrices } from "./worth/plan-prices.ts";
export { type PostageQuote, type PostageRefusal, postageFor } from "./worth/postage-quote.ts";
export { type PriceBelief, type PricePrior, priceBeliefOf } from "./worth/price-belief.ts";
export { logNormalPrices, type PriceLaw } from "./worth/price-law.ts";
export type { AppliedAdjustment, EvidenceWeight, Resale } from "./worth/resale.ts";
export { type SeenForWant, seenForWant } from "./worth/seen-for-want.ts";
export { outcomes, type Sighting, sightingSchema } from "./worth/sighting.ts";
export { subjectOfClub, subjectOfPart } from "./worth/subject-of.ts";
export { convertedEntries, summariseBooks } from "./worth/summarise-books.ts";
export { titleOfClub, titleOfItem, titleOfPart } from "./worth/titles.ts";
export { type Trip, type TripCost, timeMinor, tripCost } from "./worth/trip-cost.ts";
export { type PartWait, type WaitAnswer, waitForPart } from "./worth/wait-for-part.ts";
export { type CostedStep, type WorkCost, workCost } from "./worth/work-cost.ts";
