import type { ExitCode } from "./exit-code.ts";

/** One option of a command. */
export interface OptionSpec {
  readonly short?: string;
  /** What follows it, such as FILE; nothing follows a switch. */
  readonly takes?: string;
  /** Whether it may be given more than once. */
  readonly many?: boolean;
  readonly text: string;
}

export type Options = Readonly<Record<string, OptionSpec>>;

/** A line that can be typed as it stands, and what the process then ends with. */
export interface Example {
  readonly text: string;
  readonly line: string;
  readonly exit: ExitCode;
}

/** One command: how it is called, what its help says, and what it does. */
export interface Command {
  readonly name: string;
  readonly summary: string;
  /** What stands after the name, such as `[FILE…]`. */
  readonly takes: string;
  /** How many words it takes besides options. */
  readonly words: { readonly least: number; readonly most: number };
  readonly options: Options;
  /** Sentences below the options. */
  readonly more: readonly string[];
  /** What its exit codes mean, where that is more than the general words say. */
  readonly exits: readonly (readonly [ExitCode, string])[];
  readonly examples: readonly [Example, ...Example[]];
  /** What it comes to. Throws a `ProblemError` for what the user has to put right, a `WrongUse` for a wrong value of an option. */
  run(given: Given, around: Surroundings): Promise<Answer>;
}

/** The words and options of a command, as they were typed. */
export interface Given {
  readonly words: readonly string[];
  readonly isOn: (option: string) => boolean;
  readonly value: (option: string) => string | undefined;
  readonly values: (option: string) => readonly string[];
}

/** What a command answers with: data, the same in words, and how the process ends. */
export interface Answer {
  readonly exit: ExitCode;
  readonly json: unknown;
  /** For people; `width` is that of the terminal, if there is one. */
  readonly text: (width: number) => string;
  /** Whether the text is a file's contents, to be written as it is. */
  readonly isFile?: boolean;
}

/** What a command finds around it. */
export interface Surroundings {
  readonly env: Readonly<Record<string, string | undefined>>;
  /** The `data` folder of the checkout. */
  readonly tablesFolder: string;
  readonly today: () => string;
  readonly readInput: () => Promise<Uint8Array>;
  /** Says something beside the answer. */
  readonly note: (text: string) => void;
  /** Calls `stop` when the user interrupts; the function that comes back ends that. */
  readonly onInterrupt: (stop: () => void) => () => void;
}
