import type {
  Build,
  BuildSheet,
  Clearance,
  Comparison,
  Fault,
  Inspection,
  InspectionAnswer,
  InspectionRow,
  Joint,
  MeasuredQuantity,
  Measurement,
  Part,
  SaleDescription,
} from "@ferrule/core";
import { call } from "./api.ts";

/** A club that was measured, with estimate against measured. */
export interface Compared {
  readonly measurement: Measurement;
  readonly comparisons: readonly Comparison[];
}

export interface SheetReply {
  readonly sheet: BuildSheet;
  readonly measured: readonly Compared[];
}

export interface MeasureRequest {
  readonly club: string;
  readonly build?: Build;
  readonly measured: { readonly [Q in MeasuredQuantity]?: number };
  readonly built?: boolean;
  readonly by?: string;
  readonly note?: string;
}

export interface MeasureReply extends Compared {
  readonly parts: readonly Part[];
  readonly joints: readonly Joint[];
  readonly undone: readonly Joint[];
}

export interface InspectionReply {
  readonly part: Part;
  readonly rows: readonly InspectionRow[];
  readonly inspections: readonly Inspection[];
  readonly clearances: readonly Clearance[];
  readonly stops: readonly { readonly fault: Fault; readonly canBePutRight: boolean }[];
}

export interface InspectedReply {
  readonly inspection: Inspection;
  readonly part: Part;
  readonly toClear: readonly Fault[];
}

export interface TemplateReply {
  readonly template: string;
  readonly isFirst: boolean;
  readonly placeholders: readonly string[];
}

const advertPath = (parts: readonly string[]) =>
  `/api/advert?${parts.map((id) => `part=${encodeURIComponent(id)}`).join("&")}`;

/** Every call about sheets, inspections and sale descriptions. */
export const sheetApi = {
  sheet: (club: string, build: Build) => {
    const choices = Object.entries(build).map(([name, value]) => [name, String(value)]);
    return call<SheetReply>("GET", `/api/sheet?${new URLSearchParams([["club", club], ...choices])}`);
  },
  measure: (request: MeasureRequest) => call<MeasureReply>("POST", "/api/sheet/measured", request),
  inspection: (part: string) =>
    call<InspectionReply>("GET", `/api/inspection?part=${encodeURIComponent(part)}`),
  inspect: (request: {
    readonly part: string;
    readonly answers: readonly InspectionAnswer[];
    readonly by?: string;
    readonly note?: string;
  }) => call<InspectedReply>("POST", "/api/inspection", request),
  clear: (request: Omit<Clearance, "id" | "on">) =>
    call<{ clearance: Clearance; part: Part }>("POST", "/api/inspection/clear", request),
  advert: (parts: readonly string[]) => call<SaleDescription>("GET", advertPath(parts)),
  tryTemplate: (parts: readonly string[], template: string) =>
    call<SaleDescription>("POST", "/api/advert", { parts, template }),
  template: () => call<TemplateReply>("GET", "/api/advert/template"),
  /** Keeps it; `base` is the text that it was written over. */
  keepTemplate: (template: string | null, base?: string) =>
    call<TemplateReply>(
      "PUT",
      "/api/advert/template",
      { template },
      { from: base === undefined ? undefined : { base: { template: base }, only: "template" } },
    ),
};
