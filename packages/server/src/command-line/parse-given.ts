import { parseArgs } from "node:util";
import type { Command, Given, OptionSpec } from "./command.ts";
import { WrongUse } from "./wrong-use.ts";

/** Options that every command takes. */
export const commonOptions: Readonly<Record<string, OptionSpec>> = {
  json: { text: "the whole answer as JSON" },
  help: { short: "h", text: "this help" },
};

/** Reads what stands after a command's name; throws `WrongUse` for what the command does not take. */
export function parseGiven(command: Command, args: readonly string[]): Given {
  const { values, positionals } = parsed(command, args);
  const { least, most } = command.words;
  if (values.help !== true && (positionals.length < least || positionals.length > most))
    throw new WrongUse(`expected ${command.takes}, got ${counted(positionals)}`);
  return {
    words: positionals,
    isOn: (option) => values[option] === true,
    value: (option) => [values[option]].flat().findLast((value) => typeof value === "string"),
    values: (option) => [values[option]].flat().filter((value) => typeof value === "string"),
  };
}

type Values = Readonly<Record<string, string | boolean | (string | boolean)[] | undefined>>;

function parsed(
  { options }: Command,
  args: readonly string[],
): { readonly values: Values; readonly positionals: readonly string[] } {
  const known = Object.entries({ ...options, ...commonOptions }).map(([name, { short, takes, many }]) => [
    name,
    {
      type: takes === undefined ? ("boolean" as const) : ("string" as const),
      ...(short === undefined ? {} : { short }),
      ...(many ? { multiple: true } : {}),
    },
  ]);
  try {
    return parseArgs({ args: [...args], options: Object.fromEntries(known), allowPositionals: true });
  } catch (error) {
    if (!String((error as { code?: string }).code).startsWith("ERR_PARSE_ARGS_")) throw error;
    throw new WrongUse(firstSentence((error as Error).message));
  }
}

/** Node goes on to explain how words that look like options are passed. */
const firstSentence = (text: string) => (/^[^.\n]*/.exec(text)?.[0] ?? text).replace(/^U/, "u");

function counted(words: readonly string[]): string {
  return words.length === 0 ? "nothing" : words.map((word) => JSON.stringify(word)).join(" ");
}
