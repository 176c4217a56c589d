import type { WorldRequest } from "../trade/world.ts";
import { evidenceSheet, modelsSheet } from "../transfer/list-files.ts";
import { benchFrom } from "./bench-from.ts";
import type { Given, Surroundings } from "./command.ts";
import { costsFrom } from "./costs-from.ts";
import { type InputText, inputText } from "./input-text.ts";
import { listFrom } from "./list-from.ts";
import { dateOption } from "./option-value.ts";
import { sightingsFrom } from "./sightings-from.ts";
import { WrongUse } from "./wrong-use.ts";

const fileOptions = ["bench", "catalogue", "evidence", "sightings", "costs"] as const;

/** What the options bring in the place of what is stored. */
export async function givenWorld(given: Given, around: Surroundings): Promise<WorldRequest> {
  const today = dateOption(given, "today");
  oneFromInput(given);
  const from = async <T>(option: (typeof fileOptions)[number], read: (text: InputText) => T) => {
    const name = given.value(option);
    return name === undefined ? undefined : read(await inputText(name, around));
  };
  const catalogue = await from("catalogue", (text) => listFrom(text, modelsSheet));
  const evidence = await from("evidence", (text) => listFrom(text, evidenceSheet));
  const sightings = await from("sightings", sightingsFrom);
  const costs = await from("costs", costsFrom);
  return {
    ...(await from("bench", benchFrom)),
    ...(today === undefined ? {} : { today }),
    ...(catalogue ? { catalogue } : {}),
    ...(evidence ? { evidence } : {}),
    ...(sightings ? { sightings } : {}),
    ...(costs ? { costs } : {}),
  };
}

/** Standard input can be read once. */
function oneFromInput(given: Given): void {
  const places = [
    ...given.words.filter((word) => word === "-"),
    ...fileOptions.filter((option) => given.value(option) === "-"),
  ];
  if (places.length > 1) throw new WrongUse("standard input (-) can be given once");
}
