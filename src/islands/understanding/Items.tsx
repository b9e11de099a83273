import { memo, useMemo } from "react";
import { meanWorking } from "../../engine/cohort/dead-choices.ts";
import type { FixedForm } from "../../engine/cohort/fixed-form.ts";
import type { Figure } from "../../engine/cohort/figure.ts";
import type { ItemFigures } from "../../engine/cohort/item-figures.ts";
import type { SheetFigures } from "../../engine/cohort/sheet-figures.ts";
import type { VariantSpread } from "../../engine/cohort/variants.ts";
import { type WorkingSlips, workingSlips } from "../../engine/cohort/working-slips.ts";
import { numberText } from "../../engine/quantity/format.ts";
import { cohortWordsOf } from "../../facts/cohort-words.ts";
import { filled } from "../../facts/words.ts";
import type { Names } from "./names.ts";
import { figureText, intervalText, learnersText, ofText, percentText, questionsText } from "./say.ts";
import { Strip } from "./Strip.tsx";
import type { Families } from "./use-families.ts";

const all = cohortWordsOf("en");
const words = all.items;

export interface ItemsProps {
  readonly sheet: SheetFigures;
  readonly items: readonly ItemFigures[];
  readonly form: FixedForm | null;
  readonly spreads: readonly VariantSpread[];
  readonly names: Names;
  readonly families: Families;
}

const Pair = ({ term, figure, places, unit = "{value}" }: { readonly term: string; readonly figure: Figure; readonly places: number; readonly unit?: string }) => (
  <div><dt>{term}</dt><dd className={figure.value === null ? "none" : "v"}>{figure.value === null ? filled(all.refused.notGiven, { reason: figureText(figure, places) }) : filled(unit, { value: figureText(figure, places) })}</dd></div>
);

const Sheet = ({ sheet }: { readonly sheet: SheetFigures }) => (
  <>
    {sheet.learners === 0 ? null : (
      <p>
        {filled(words.fixed, { learners: learnersText(sheet.learners), items: questionsText(sheet.items) })}{" "}
        {sheet.incomplete + sheet.otherForm === 0 ? null : filled(words.setAside, { incomplete: String(sheet.incomplete), other: String(sheet.otherForm) })}{" "}
        {sheet.isDrawnForEach ? words.drawn : null}
      </p>
    )}
    <dl className="sheet-figures">
      <Pair term={words.reliability} figure={sheet.reliability} places={2} />
      <Pair term={words.spreadOf} figure={sheet.sdPoints} places={1} unit={words.points} />
      <Pair term={words.error} figure={sheet.errorPoints} places={1} unit={words.points} />
    </dl>
  </>
);

/** Mean number of foreseen slips that work, over the questions in which they could be judged. */
const meanOf = (slips: readonly (WorkingSlips | null)[]): number | null => {
  const counts = slips.flatMap((one) => (one === null ? [] : [one.works]));
  return meanWorking(Array.from({ length: Math.max(0, ...counts) + 1 }, (_, works) => counts.filter((count) => count === works).length));
};

const Row = ({ item, at, names, slips, isWhole }: { readonly item: ItemFigures; readonly at: number; readonly slips: WorkingSlips | null; readonly isWhole: boolean } & Pick<ItemsProps, "names">) => (
  <tr>
    <td data-head={all.number} className="n">{at + 1}</td>
    <th scope="row" data-head={words.question}>{names.family(item.family)}</th>
    <td data-head={words.share} className="v">{ofText(item.right, item.answered)}</td>
    <td data-head={words.interval}>{item.interval === null || item.difficulty.value === null ? figureText(item.difficulty, 2) : <><Strip share={item.difficulty.value} interval={item.interval} /><span className="v">{intervalText(item.interval)}</span></>}</td>
    {isWhole ? <>
      <td data-head={words.discrimination} className="v">{figureText(item.discrimination, 2)}</td>
      <td data-head={words.without} className="v">{figureText(item.reliabilityWithout, 2)}</td>
      <td data-head={words.choices} className="v">{slips === null ? words.noChoices : ofText(slips.works, slips.of)}</td>
    </> : null}
  </tr>
);

const Spreads = ({ spreads, names }: Pick<ItemsProps, "spreads" | "names">) => (
  <>
    {spreads.flatMap(({ family, version, leastShare, greatestShare }) => (leastShare === null || greatestShare === null ? [] : [
      <p key={`${family} ${version}`} className="note">{filled(words.spread, { question: names.family(family), low: percentText(leastShare), high: percentText(greatestShare) })}</p>,
    ]))}
  </>
);

/** Figures of every question and of the sheet, each with its reason where it may not be given. */
export const Items = memo(({ sheet, items, form, spreads, names, families }: ItemsProps) => {
  const isWhole = sheet.reliability.refused !== "under-thirty" && form !== null;
  const slips = useMemo(() => items.map((item, at) => (form === null ? null : workingSlips(form, at, Object.keys(families.get(item.family)?.words.en.slips ?? {})))), [items, form, families]);
  const mean = meanOf(slips);
  const heads = [all.number, words.question, words.share, words.interval, ...(isWhole ? [words.discrimination, words.without, words.choices] : [])];
  return (
    <section>
      <h3 id="questions">{words.title}</h3>
      <p className="note">{words.lead}</p>
      <Sheet sheet={sheet} />
      <table className="plain result-table cohort">
        <thead><tr>{heads.map((head) => <th key={head} scope="col">{head}</th>)}</tr></thead>
        <tbody>{items.map((item, at) => <Row key={`${item.slot} ${item.family} ${item.version}`} item={item} at={at} names={names} slips={slips[at] ?? null} isWhole={isWhole} />)}</tbody>
      </table>
      {isWhole ? <p className="note">{words.negative} {words.choiceNote} {mean === null ? null : filled(words.choiceMean, { mean: numberText(mean, 1) })}</p> : <p className="note">{words.discrimination}, {words.without.toLowerCase()}, {words.choices.toLowerCase()}: {filled(all.refused.notGiven, { reason: figureText(sheet.reliability, 2) }).toLowerCase()}</p>}
      <Spreads spreads={spreads} names={names} />
    </section>
  );
});
