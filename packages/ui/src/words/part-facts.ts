import type { Part } from "@ferrule/core";
import { valueAt } from "../form/path.ts";
import type { LengthUnit } from "../format/length.ts";
import { writtenText } from "../format/written-reading.ts";
import { faultWords, flexWords, formWords, handWords, materialWords, suitsWords } from "./part-words.ts";

/** The few facts that tell a part from its neighbours, in the order a buyer asks for them. */
export function shortFacts(part: Part, unit: LengthUnit): string[] {
  const facts = [...kindFacts(part, unit), ...(part.faults ?? []).map((fault) => faultWords[fault])];
  return facts.filter((fact): fact is string => fact !== undefined);
}

function kindFacts(part: Part, unit: LengthUnit): (string | undefined)[] {
  const reading = (path: string, word = "") => {
    const text = writtenText(path, valueAt(part, path), unit);
    return text && (word === "" ? text : `${word} ${text}`);
  };
  switch (part.kind) {
    case "head":
      return [
        reading("loftDeg"),
        part.hand && handWords[part.hand],
        ...socketFacts(part, unit),
        reading("massG"),
      ];
    case "adapter":
      return [
        part.family && `family ${part.family}`,
        part.hand && handWords[part.hand],
        reading("bore.diameterIn", "bore"),
      ];
    case "shaft":
      return [
        part.suits && suitsWords[part.suits],
        part.flex && flexWords[part.flex],
        reading("tip.diameterIn", "tip"),
        reading("length.lengthIn"),
        reading("massG"),
        part.material && materialWords[part.material],
      ];
    case "grip":
      return [reading("coreDiameterIn", "core"), reading("massG"), reading("lengthIn")];
    case "wrench":
      return [part.family && `family ${part.family}`];
    case "cover":
      return [part.clubType];
  }
}

function socketFacts(part: Part & { kind: "head" }, unit: LengthUnit): (string | undefined)[] {
  const { socket } = part;
  if (socket?.type === "receiver") return [socket.family ? `takes ${socket.family}` : "takes an adapter"];
  if (socket?.type !== "bore") return [];
  const bore = writtenText("socket.diameterIn", socket.diameterIn, unit);
  return [bore && `bore ${bore}${socket.form ? ` ${formWords[socket.form].toLowerCase()}` : ""}`];
}
