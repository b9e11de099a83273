import type { Item, Option } from "../../engine/question/item.ts";

/** A list that lies before the learner: cards, things, choices. */
export interface Before {
  readonly label: string;
  readonly items: readonly string[];
}

const list = (label: string, options: readonly Option[]): Before => ({ label, items: options.map(({ text }) => text) });

/** What an item shows beside its stem and its givens, by kind, in the order shown. */
export const beforeTheLearner = (item: Item): readonly Before[] => {
  switch (item.kind) {
    case "order":
      return [list("Cards, as shown", item.cards)];
    case "tray":
      return [list("Things on the tray", item.things), { label: "Where nothing is wrong", items: [item.nothing] }];
    case "name":
      return item.attributes.map(({ text, options }) => list(text, options));
    case "count":
      return [list("Classes", item.classes)];
    case "judge":
      return [list("Decisions", item.options), list("Reasons", item.reasons)];
    case "mark":
      return [list("To be marked", item.targets)];
    case "chain":
      return item.steps.map(({ question, asks, says }, index) => ({ label: `Step ${index + 1}: ${question}`, items: [...asks.map(({ label }) => label), ...Object.values(says)] }));
    case "sum":
      return [{ label: "Answers that are not a number", items: Object.values(item.says) }];
    default:
      return [];
  }
};
