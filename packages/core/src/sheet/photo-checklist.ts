import type { Part } from "../parts/part.ts";
import { saleFaultWords } from "./sale-words.ts";

/** Photographs that answer what buyers ask first, for exactly these parts: common practice, no source. */
export function photoChecklist(parts: readonly Part[]): readonly string[] {
  const has = (kind: Part["kind"]) => parts.some((part) => part.kind === kind);
  const marks = parts.flatMap(({ faults = [] }) => faults);
  return [
    ...(has("head") && has("shaft") ? ["The whole club beside a ruler or tape, grip to sole"] : []),
    ...(has("head")
      ? [
          "The head as a player sees it at address",
          "The face, straight on and across the light",
          "The sole, with its markings readable",
          "The hosel and the edge of the ferrule, close",
        ]
      : []),
    ...(has("adapter") ? ["The adapter's marking and its teeth, out of the head"] : []),
    ...(has("shaft")
      ? [
          "The shaft's label and its number",
          "The whole shaft along the light, most of all by the hosel and under the grip",
        ]
      : []),
    ...(has("grip") ? ["The grip, where the thumbs lie"] : []),
    ...[...new Set(marks)].map((fault) => `Close: ${saleFaultWords[fault]}`),
    ...(has("cover") ? ["The cover, inside and out"] : []),
    ...(has("wrench") ? ["The wrench and its tip"] : []),
    "The scale and the rule with what they read, where figures are said to be measured",
  ];
}
