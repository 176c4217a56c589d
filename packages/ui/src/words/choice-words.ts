import {
  clubTypeWords,
  faultWords,
  flexWords,
  formWords,
  handWords,
  kindWords,
  materialWords,
} from "./part-words.ts";

const choices: Readonly<Record<string, string>> = {
  ...kindWords,
  ...clubTypeWords,
  ...handWords,
  ...flexWords,
  ...materialWords,
  ...formWords,
  ...faultWords,
  receiver: "A seat for a screwed adapter",
  bore: "A plain bore",
  unstated: "Not said",
};

/** A choice's words; any other text stands for itself. */
export function fieldChoiceText(value: string): string {
  return choices[value] ?? value;
}
