import { columns } from "./columns.ts";
import type { Command, Options } from "./command.ts";
import { exitWords } from "./exit-code.ts";
import { commonOptions } from "./parse-given.ts";
import { wrapped } from "./wrapped.ts";

/** What `ferrule help` says. */
export function generalHelp(commands: readonly Command[], width: number): string {
  return [
    ...wrapped("Ferrule on the command line: what fits, what is worth buying, what to do next.", { width }),
    "",
    "Use: ferrule COMMAND [WORDS] [OPTIONS]",
    "",
    columns({ rows: commands.map(({ name, summary }) => [name, summary]), indent: 2, width }),
    columns({
      rows: [["help", "this, or with the name of a command, its help"]],
      indent: 2,
      width,
      least: [nameWidth(commands)],
    }),
    "",
    ...wrapped(
      "It works on the bench of this machine's Ferrule, in the folder that FERRULE_DATA names, whether Ferrule is running or not; " +
        "or, with --bench, on one that has been exported. Only import and restore change anything.",
      { width },
    ),
    "",
    exitHelp(exitWords, width),
    "",
    "Examples for each: ferrule help COMMAND",
  ].join("\n");
}

const nameWidth = (commands: readonly Command[]) => Math.max(...commands.map(({ name }) => name.length));

/** What `ferrule help COMMAND` says. */
export function commandHelp(command: Command, width: number): string {
  const { name, takes, summary, more, exits, examples } = command;
  return [
    `ferrule ${name}: ${summary}`,
    "",
    `Use: ferrule ${[name, takes].filter(Boolean).join(" ")} [OPTIONS]`,
    ...more.flatMap((sentence) => ["", ...wrapped(sentence, { width })]),
    "",
    "Options:",
    optionHelp({ ...command.options, ...commonOptions }, width),
    "",
    exitHelp(exits.length > 0 ? withGeneral(exits) : exitWords.filter(([code]) => code < 3), width),
    "",
    "Examples:",
    ...examples.flatMap(({ text, line }) => [`  # ${text}`, `  ${line}`]),
  ].join("\n");
}

/** A command's own words for its answers, and the general ones for what can go wrong. */
function withGeneral(exits: Command["exits"]): Command["exits"] {
  const own = new Set(exits.map(([code]) => code));
  const others = exitWords.filter(([code]) => (code === 1 || code === 2) && !own.has(code));
  return [...exits, ...others].sort(([one], [other]) => one - other);
}

function optionHelp(options: Options, width: number): string {
  const rows = Object.entries(options).map(([name, { short, takes, text }]) => [
    `${short ? `-${short}, ` : ""}--${name}${takes ? ` ${takes}` : ""}`,
    text,
  ]);
  return columns({ rows, indent: 2, width });
}

function exitHelp(exits: Command["exits"], width: number): string {
  const rows = exits.map(([code, text]) => [String(code), text]);
  return ["Exit codes:", columns({ rows, indent: 2, width })].join("\n");
}
