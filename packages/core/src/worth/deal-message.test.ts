import { expect, it } from "vitest";
import type { DealQuestion } from "./deal.ts";
import { dealMessage as messageFor } from "./deal-message.ts";

const dealMessage = (title: string, questions: readonly DealQuestion[]) =>
  messageFor(title, questions, "ask-first");

const asked = (to: DealQuestion["to"], text: string): DealQuestion => ({
  to,
  text,
  field: "items.0.hand",
  swingMinor: 0,
  decides: false,
});

it("asks the seller in the order given, and leaves out what the user has to answer", () => {
  const questions = [
    asked("seller", "Which hand is it?"),
    asked("you", "How far is it?"),
    asked("seller", "Any dents?"),
  ];
  expect(dealMessage("Northmoor Ombrel driver head", questions)).toBe(
    "Hello, I am interested in your Northmoor Ombrel driver head. Before I decide, could you tell me:\n" +
      "- Which hand is it?\n- Any dents?\nThank you very much.",
  );
});

it("is empty where there is nothing to ask the seller", () => {
  expect(dealMessage("head", [])).toBe("");
  expect(dealMessage("head", [asked("you", "How far is it?")])).toBe("");
});

it("asks the first six of many", () => {
  const many = Array.from({ length: 9 }, (_, at) => asked("seller", `Question ${at + 1}?`));
  const lines = dealMessage("head", many).split("\n");
  expect(lines.slice(1, -1)).toEqual(many.slice(0, 6).map(({ text }) => `- ${text}`));
});

it("is empty where the listing is to be left, whatever there is to ask", () => {
  expect(messageFor("head", [asked("seller", "Any dents?")], "leave")).toBe("");
});
