import {
  catalogueModelSchema,
  claimSchema,
  clearanceSchema,
  costSettingsSchema,
  entrySchema,
  evidenceSchema,
  goalSchema,
  inspectionSchema,
  jointSchema,
  listingSchema,
  measurementSchema,
  partSchema,
  sightingSchema,
  subjectSchema,
} from "@ferrule/core";

/** Core's schemas under the names that the description of the interface gives them. */
export const namedPartSchema = partSchema.meta({ id: "Part" });
export const namedJointSchema = jointSchema.meta({ id: "Joint" });
export const namedClaimSchema = claimSchema.meta({ id: "Claim" });
export const namedGoalSchema = goalSchema.meta({ id: "Goal" });
export const namedModelSchema = catalogueModelSchema.meta({ id: "CatalogueModel" });
export const namedEvidenceSchema = evidenceSchema.meta({ id: "Evidence" });
export const namedListingSchema = listingSchema.meta({ id: "Listing" });
export const namedSightingSchema = sightingSchema.meta({ id: "Sighting" });
export const namedEntrySchema = entrySchema.meta({ id: "Entry" });
export const namedCostsSchema = costSettingsSchema.meta({ id: "CostSettings" });
export const namedSubjectSchema = subjectSchema.meta({ id: "Subject" });
export const namedMeasurementSchema = measurementSchema.meta({ id: "Measurement" });
export const namedInspectionSchema = inspectionSchema.meta({ id: "Inspection" });
export const namedClearanceSchema = clearanceSchema.meta({ id: "Clearance" });
