import { expect, it } from "vitest";
import { findNounPhrases } from "./item-nouns.ts";
import { squeezeWords } from "./words.ts";

const named = (text: string) =>
  findNounPhrases(squeezeWords(text)).map(({ kind, type }) => (type ? `${kind} ${type}` : kind));

it.each([
  ["driver head", ["head driver"]],
  ["driver", ["club driver"]],
  ["3 wood head", ["head fairway"]],
  ["5w", ["club fairway"]],
  ["4h hybrid", ["club hybrid"]],
  ["7 iron", ["club iron"]],
  ["irons 4-PW", ["club iron"]],
  ["5 iron to PW", ["club iron"]],
  ["sand wedge", ["club wedge"]],
  ["GW SW LW", ["club wedge", "club wedge", "club wedge"]],
  ["driver shaft", ["shaft driver"]],
  ["wood shaft", ["shaft"]],
  ["shaft adapter", ["adapter"]],
  ["driver headcover", ["cover driver"]],
  ["torque wrench", ["wrench"]],
  ["putter grip", ["grip putter"]],
  ["tête de driver", ["head driver"]],
  ["cabeza de driver", ["head driver"]],
  ["Driverkopf", ["head driver"]],
  ["Holz 3 Kopf", ["head fairway"]],
  ["drivr head", ["head driver"]],
  ["driver and 3 wood", ["club driver", "club fairway"]],
  ["heads up, a tool box", []],
  ["head weight 198g", []],
])("%j names %j", (text, kinds) => expect(named(text)).toEqual(kinds));
