import { readRule, type RuleMiss, type RuleReading } from "../../engine/cohort/pass-rule.ts";
import type { TeachingList } from "../../engine/record/list-form.ts";
import type { Sheet } from "../../engine/record/sheet-number.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { filled } from "../../facts/words.ts";
import type { SheetState } from "../use-sheet.ts";
import { mustOf, ruleText, slotsText } from "./list-text.ts";

const words = listWordsOf("en").work;

/** The rule read by what this page graded; the returns desk reads it by its own grading. */
const readingOf = (list: TeachingList, sheet: Sheet, { items, graded }: SheetState): RuleReading => {
  const marks = items.flatMap((item, slot) => {
    const verdict = graded.get(item.seed)?.verdict;
    if (verdict === undefined) return [];
    return [{ slot, family: item.family, version: item.version, module: item.module, objective: item.objectives[0] ?? "", seed: item.seed, verdict: verdict.verdict, score: verdict.score, slip: verdict.slip ?? null, unsafe: verdict.verdict === "unsafe-side", try: 1 }];
  });
  return readRule(list.rule, mustOf(list), { sheet, paper: { learner: "", place: null, list: "", attempt: 1, handedInAt: "", marks } });
};

const missText = ({ why, slots }: RuleMiss, { right, questions }: RuleReading, percent: number): string =>
  filled(words.miss[why], { right: String(right), all: String(questions), percent: String(percent), list: slotsText(slots) });

/** The rule of the list, and what is still missing, in words. */
export const ListRule = ({ list, sheet, state }: { readonly list: TeachingList; readonly sheet: Sheet; readonly state: SheetState }) => {
  const reading = readingOf(list, sheet, state);
  return (
    <section className="list-rule">
      <h3>{words.ruleTitle}</h3>
      <p>{ruleText(list.rule)}</p>
      <p><b>{reading.passes ? words.passes : words.notYet}</b> {reading.misses.map((miss) => missText(miss, reading, list.rule.rightPercent)).join(" ")}</p>
    </section>
  );
};
