import { errorTable, type Problem, ProblemError, problemBody } from "../errors.ts";
import { problemOf } from "../plugins/error-replies.ts";
import { StartupProblem } from "../startup-problem.ts";
import type { Answer, Command, Surroundings } from "./command.ts";
import { commands } from "./commands.ts";
import { type ExitCode, exitCodes } from "./exit-code.ts";
import { commandHelp, generalHelp } from "./help.ts";
import { parseGiven } from "./parse-given.ts";
import { problemText } from "./problem-text.ts";
import { WrongUse } from "./wrong-use.ts";

/** What a process takes and gives, besides what commands find around them. */
export interface Terminal extends Omit<Surroundings, "note"> {
  readonly args: readonly string[];
  /** Of the terminal; unbounded where what is said does not go to one. */
  readonly width: number;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

/** Runs one command line and returns what the process has to end with. */
export async function runCommandLine(terminal: Terminal): Promise<ExitCode> {
  const [first, ...args] = terminal.args;
  const { err, width } = terminal;
  if (first === undefined) {
    err(`${generalHelp(commands, width)}\n`);
    return exitCodes.wrongUse;
  }
  if (["help", "--help", "-h"].includes(first)) return help(args[0], terminal);
  const command = commands.find(({ name }) => name === first);
  if (command) return runCommand(command, args, terminal);
  err(`ferrule: there is no command ${JSON.stringify(first)}. There are ${names()}; see ferrule help\n`);
  return exitCodes.wrongUse;
}

const names = () => commands.map(({ name }) => name).join(", ");

function help(name: string | undefined, { out, err, width }: Terminal): ExitCode {
  const command = commands.find((one) => one.name === name);
  if (command === undefined && name !== undefined) {
    err(`ferrule: there is no command ${JSON.stringify(name)}. There are ${names()}\n`);
    return exitCodes.wrongUse;
  }
  out(`${command ? commandHelp(command, width) : generalHelp(commands, width)}\n`);
  return exitCodes.done;
}

async function runCommand(command: Command, args: readonly string[], terminal: Terminal): Promise<ExitCode> {
  const { out, err, width } = terminal;
  const isJson = args.includes("--json");
  try {
    const given = parseGiven(command, args);
    if (given.isOn("help")) return help(command.name, terminal);
    const around = { ...terminal, note: (text: string) => err(`ferrule ${command.name}: ${text}\n`) };
    const answer = await command.run(given, around);
    out(answerText(answer, given.isOn("json"), width));
    return answer.exit;
  } catch (error) {
    if (error instanceof WrongUse) {
      err(`ferrule ${command.name}: ${error.message}. See: ferrule help ${command.name}\n`);
      return exitCodes.wrongUse;
    }
    return failed(command, error, isJson, terminal);
  }
}

function answerText({ json, text, isFile = false }: Answer, isJson: boolean, width: number): string {
  if (isJson) return `${JSON.stringify(json, null, 2)}\n`;
  return isFile ? text(width) : `${withoutControls(text(width))}\n`;
}

/** Words of others go to the terminal as text and never as orders to it. */
const withoutControls = (text: string) => text.replace(/[^\P{Cc}\n]/gu, " ");

function failed({ name }: Command, error: unknown, isJson: boolean, { err }: Terminal): ExitCode {
  const stated = statedProblem(error);
  if (isJson) err(`${JSON.stringify(problemBody(stated), null, 2)}\n`);
  else err(withoutControls(`ferrule ${name}: ${problemText(stated)}\n`));
  if (errorTable[stated.code].status !== 500) return exitCodes.refused;
  err(`${(error as Error)?.stack ?? String(error)}\n`);
  return exitCodes.ourBug;
}

function statedProblem(error: unknown): Problem {
  if (error instanceof StartupProblem) return { code: "disk", message: error.message };
  if (error instanceof ProblemError) return error.problem;
  const { code, message } = problemOf(error as Parameters<typeof problemOf>[0]);
  if (code !== "disk") return { code: "our-bug" };
  return { code, message: `${message ?? errorTable.disk.message} (${(error as Error).message})` };
}
