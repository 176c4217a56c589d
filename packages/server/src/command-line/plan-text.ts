import { type Part, type Plan, type PlanAction, titleOfPart } from "@ferrule/core";
import { bullets } from "./bullets.ts";
import { columns } from "./columns.ts";
import { amountText } from "./money-text.ts";
import { cautionsOf, stepsText } from "./resolution-text.ts";

const doWords: Readonly<Record<PlanAction["do"], string>> = {
  fetch: "fetch",
  buy: "buy",
  "take-apart": "take apart",
  build: "build",
  sell: "sell as it is",
  wait: "keep waiting",
};

/** A plan with its sums, what is to be done in order, what is short and what was left out. */
export function planText(plan: Plan, parts: readonly Part[], width: number): string {
  const { actions, currency, nextBest } = plan;
  const money = (minor: number) => `${amountText(minor, currency)} ${currency}`;
  return [
    `The plan brings ${money(plan.netMinor)} for ${money(plan.outlayMinor)} laid out and ${hoursText(plan.minutes)} of work`,
    boundText(plan),
    "",
    actions.length === 0
      ? "Nothing pays better than leaving everything as it is."
      : actionColumns(plan, parts, width),
    ...bullets("At the bench:", cautionsOf(actions), width),
    ...bullets(
      "What is short:",
      plan.binding.map((one) => bindingText(one, currency)),
      width,
    ),
    ...bullets(
      "Left out:",
      plan.leftOut.map(({ sighting, text }) => `${sighting}: ${text}`),
      width,
    ),
    ...(nextBest
      ? bullets("Next best:", [`without ${nextBest.without} it brings ${money(nextBest.netMinor)}`], width)
      : []),
  ].join("\n");
}

function boundText({ boundMinor, netMinor, currency, stopped }: Plan): string {
  const bound = Math.round(boundMinor);
  const most = `No plan brings more than ${amountText(bound, currency)} ${currency}`;
  if (bound <= netMinor) return `${most}: this is the best there is.`;
  return stopped
    ? `${most}; the time was up before that could be settled (--seconds gives it more).`
    : `${most}.`;
}

const hoursText = (minutes: number) =>
  `${Math.floor(Math.round(minutes) / 60)} h ${String(Math.round(minutes) % 60).padStart(2, "0")} min`;

function actionColumns({ actions, currency }: Plan, parts: readonly Part[], width: number): string {
  const byId = new Map(parts.map((part) => [part.id, part]));
  const rows = actions.map((action, at) => [
    String(at + 1),
    doWords[action.do],
    amountText(action.netMinor, currency),
    amountText(action.outlayMinor, currency),
    String(Math.round(action.minutes)),
    namesText(action),
    titleOf(action, byId) + waitText(action, currency),
    stepsText(action.work),
  ]);
  const header = ["", "DO", `BRINGS ${currency}`, "LAID OUT", "MINUTES", "PARTS", "WHAT", "WORK"];
  return columns({ header, rows, figures: [0, 2, 3, 4], indent: 2, width });
}

/** What is kept waiting is called by what is here, for nobody knows the whole club yet. */
function titleOf(action: PlanAction, byId: ReadonlyMap<string, Part>): string {
  if (action.do !== "wait") return action.title;
  const here = action.parts.flatMap((id) => byId.get(id) ?? []);
  const lead = here.find(({ kind }) => kind === "head") ?? here.find(({ kind }) => kind === "shaft");
  return lead ? titleOfPart(lead) : action.title;
}

function waitText({ waitsFor }: PlanAction, currency: string): string {
  return waitsFor
    ? `, for ${waitsFor.text} at ${amountText(waitsFor.takeAtOrUnderMinor, currency)} or less`
    : "";
}

const namesText = ({ parts, sightings }: PlanAction) => [...sightings, ...parts].join(", ");

function bindingText({ limit, text, worthMinor }: Plan["binding"][number], currency: string): string {
  const worth = `would bring about ${amountText(worthMinor, currency)} ${currency}`;
  if (limit === "budget") return `One more ${amountText(100, currency)} ${currency} to spend ${worth}`;
  if (limit === "minutes") return `One more hour ${worth}`;
  return limit === "part" ? `One more ${text} ${worth}` : `One more of the ${text} ${worth}`;
}
