import { type Build, firstSaleTemplate, parseSaleTemplate, type SaleDescription } from "@ferrule/core";
import { done, type Outcome, problem } from "../errors.ts";
import { type ClubSheet, clubSheet } from "./club-sheet.ts";
import {
  type ClearRequest,
  clearFault,
  type Inspected,
  type InspectRequest,
  inspectPart,
  type PartInspection,
  partInspection,
} from "./inspect-part.ts";
import { type Measured, type MeasureRequest, measureClub } from "./measure-club.ts";
import { saleAdvert } from "./sale-advert.ts";
import type { SheetTools } from "./sheet-tools.ts";

export interface KeptTemplate {
  readonly template: string;
  /** Whether it is the one that every bench begins with. */
  readonly isFirst: boolean;
}

/** Sheets to build by, what is measured and looked over, and what is written to sell. What is kept is on disk when it returns. */
export interface SheetDesk {
  sheet(club: string, build: Build): Outcome<ClubSheet>;
  measure(request: MeasureRequest): Outcome<Measured>;
  inspection(part: string): Outcome<PartInspection>;
  inspect(request: InspectRequest): Outcome<Inspected>;
  clear(request: ClearRequest): ReturnType<typeof clearFault>;
  advert(parts: readonly string[], template?: string): Outcome<SaleDescription>;
  template(): KeptTemplate;
  /** Nothing takes the user's own away. */
  keepTemplate(template: string | null): Outcome<KeptTemplate>;
}

export function openSheetDesk(tools: SheetTools): SheetDesk {
  const { settings } = tools.tables;
  const template = (): KeptTemplate => {
    const own = settings.saleTemplate();
    return { template: own ?? firstSaleTemplate, isFirst: own === undefined };
  };
  return {
    sheet: (club, build) => clubSheet(tools, club, build),
    measure: (request) => measureClub(tools, request),
    inspection: (part) => partInspection(tools, part),
    inspect: (request) => inspectPart(tools, request),
    clear: (request) => clearFault(tools, request),
    advert: (parts, given) => saleAdvert(tools, parts, given),
    template,
    keepTemplate: (text) => {
      const parsed = text === null ? undefined : parseSaleTemplate(text);
      if (parsed && !parsed.ok) return problem("bad-request", "The template was not kept", parsed.refusals);
      tools.tables.together(() => settings.writeSaleTemplate(text), { what: "template-changed" });
      return done(template());
    },
  };
}
