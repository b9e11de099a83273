import { useCallback, useMemo, useState } from "react";
import { byObjective } from "../../engine/cohort/by-objective.ts";
import { LEAST_PERSONS } from "../../engine/cohort/figure.ts";
import { firstAnswers } from "../../engine/cohort/first-marks.ts";
import { fixedForm } from "../../engine/cohort/fixed-form.ts";
import { itemFigures } from "../../engine/cohort/item-figures.ts";
import { learnerObjectives } from "../../engine/cohort/learner-objectives.ts";
import type { Paper } from "../../engine/cohort/paper.ts";
import { comparePlaces } from "../../engine/cohort/places.ts";
import { sheetFigures } from "../../engine/cohort/sheet-figures.ts";
import { slipCounts } from "../../engine/cohort/slip-counts.ts";
import { variantSpreads } from "../../engine/cohort/variants.ts";
import { cohortWordsOf } from "../../facts/cohort-words.ts";
import { filled } from "../../facts/words.ts";
import type { CourseModule } from "../course.ts";
import { ByObjective } from "./ByObjective.tsx";
import { Completion } from "./Completion.tsx";
import { Cut } from "./Cut.tsx";
import { Exports } from "./Exports.tsx";
import { Hospitals } from "./Hospitals.tsx";
import { Items } from "./Items.tsx";
import { Matrix } from "./Matrix.tsx";
import { namesOf } from "./names.ts";
import { answersText, learnersText } from "./say.ts";
import { Slips } from "./Slips.tsx";
import { useFamilies } from "./use-families.ts";
import { usePrint } from "./use-print.ts";
import { Viva } from "./Viva.tsx";

const words = cohortWordsOf("en");
const NO_MODULES: readonly CourseModule[] = [];
const NO_FAMILIES: readonly string[] = [];

export interface UnderstandingProps {
  readonly papers: readonly Paper[];
  /** The course, for the texts of its objectives. */
  readonly modules?: readonly CourseModule[];
  /** Families of the list of which every question must be right. */
  readonly must?: readonly string[];
  /** The list in words, and whether it was supervised, for the completion list; a saved file holds only its number. */
  readonly about?: string;
}

const figuresOf = (papers: readonly Paper[]) => {
  const answers = firstAnswers(papers);
  return {
    learners: new Set(answers.map(({ learner }) => learner)).size,
    answers: answers.length,
    objectives: byObjective(papers),
    rows: learnerObjectives(papers),
    slips: slipCounts(answers),
    form: fixedForm(papers),
    sheet: sheetFigures(papers),
    items: itemFigures(papers),
    spreads: variantSpreads(papers),
    places: comparePlaces(papers),
  };
};

const Head = ({ learners, answers }: { readonly learners: number; readonly answers: number }) => (
  <>
    <h2 id="understanding">{words.title}</h2>
    <p className="small-n"><b>{filled(words.small, { count: String(learners) })}</b> {filled(words.basis, { learners: learnersText(learners), answers: answersText(answers) })}</p>
  </>
);

/** What the papers of a cohort show: unsafe answers first, always with how sure a figure is, or why there is none. */
export const Understanding = ({ papers, modules = NO_MODULES, must = NO_FAMILIES, about }: UnderstandingProps) => {
  const families = useFamilies(papers);
  const names = useMemo(() => namesOf(families, modules), [families, modules]);
  const figures = useMemo(() => figuresOf(papers), [papers]);
  const [printed, print] = usePrint();
  const [picked, setPicked] = useState<string | null>(null);
  const learners = useMemo(() => figures.rows.map(({ learner }) => learner), [figures]);
  const chosen = picked !== null && learners.includes(picked) ? picked : (learners[0] ?? "");
  const choose = useCallback((learner: string): void => {
    setPicked(learner);
    document.getElementById("talk")?.focus();
  }, []);
  const printCompletion = useCallback((): void => print("completion"), [print]);
  if (learners.length === 0) return <p>{words.none}</p>;
  const isShared = learners.length >= LEAST_PERSONS;
  return (
    <div className="understanding" data-print={printed ?? undefined}>
      <Head learners={figures.learners} answers={figures.answers} />
      {isShared ? <ByObjective figures={figures.objectives} names={names} /> : <p><b>{words.few}</b></p>}
      <Matrix rows={figures.rows} objectives={figures.objectives} names={names} onChoose={choose} />
      {isShared ? <>
        <Slips slips={figures.slips} names={names} all={figures.learners} />
        <Items sheet={figures.sheet} items={figures.items} form={figures.form} spreads={figures.spreads} names={names} families={families} />
        <Hospitals found={figures.places} />
      </> : null}
      <Cut form={figures.form} names={names} must={must} />
      <Viva papers={papers} families={families} names={names} learners={learners} chosen={chosen} onChoose={setPicked} isWhole={printed === "cards"} onPrint={print} />
      <Completion papers={papers} about={about} onPrint={printCompletion} />
      <Exports papers={papers} families={families} />
    </div>
  );
};
