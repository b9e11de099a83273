import { memo, useId, useMemo } from "react";
import { firstPapers } from "../../engine/cohort/first-marks.ts";
import type { Paper } from "../../engine/cohort/paper.ts";
import { cautionText } from "../../facts/cautions.ts";
import { cohortWordsOf } from "../../facts/cohort-words.ts";
import { filled } from "../../facts/words.ts";
import { Glyph } from "../Glyph.tsx";
import { Valued } from "../Valued.tsx";
import type { Names } from "./names.ts";
import { dayOfMoment } from "./say.ts";
import type { Families } from "./use-families.ts";
import { givensOf, type VivaCard, vivaCard, type VivaQuestion } from "./viva.ts";

const { viva: words } = cohortWordsOf("en");

const Stem = ({ drawn }: { readonly drawn: VivaQuestion["drawn"] }) => {
  if (drawn === undefined) return <p className="note">{words.olderVersion}</p>;
  const { item, answer, working } = drawn;
  return (
    <>
      <p className="kind">{words.stem}</p>
      <p>{item.stem.map((sentence) => <span key={sentence}><Valued text={sentence} /> </span>)}</p>
      {item.givens.length === 0 ? null : <p className="l">{givensOf(item).map(({ key, label, value }) => <span key={key} className="given">{label}: <b className="v">{value}</b></span>)}</p>}
      <p><b><Valued text={item.question} /></b></p>
      <p className="l"><b>{words.right}</b> <Valued text={answer} /></p>
      <p className="l"><b>{words.listen}</b></p>
      <ul className="working">{working.map((line) => <li key={line}><Valued text={line} /></li>)}</ul>
    </>
  );
};

/** C8 is in the figure that a question has on its own page. */
const cautionsOf = ({ drawn }: VivaQuestion): readonly string[] => (drawn?.item.cautions ?? []).filter((id) => id !== "C8");

interface QuestionProps {
  readonly question: VivaQuestion;
  /** Cautions that stand under an earlier question of the card: on paper each stands once. */
  readonly before: readonly string[];
}

const Question = ({ question, question: { mark, title, said, asks, drawn }, before }: QuestionProps) => (
  <div className={mark.verdict === "unsafe-side" ? "talk-question unsafe" : "talk-question"}>
    <h5><Glyph id={`v-${mark.verdict}`} /> {filled(words.question, { at: String(mark.slot + 1), title })}</h5>
    <p>{said}</p>
    <p className="l"><b>{words.ask}</b></p>
    <ul>{asks.map((ask) => <li key={ask}>{ask}</li>)}</ul>
    <Stem drawn={drawn} />
    {cautionsOf(question).map((id) => <p key={id} className={before.includes(id) ? "caution no-print" : "caution"} data-caution={id}><span className="id">{id}</span> {cautionText(id)}</p>)}
    {mark.verdict === "unsafe-side" ? <p className="caution stop" data-caution="C10"><span className="id">C10</span> {cautionText("C10")}</p> : null}
  </div>
);

const Card = ({ card }: { readonly card: VivaCard }) => (
  <article className="talk-card">
    <h4>{filled(words.card, { learner: card.learner })}</h4>
    <p className="l">{filled(words.handed, { attempt: String(card.attempt), day: dayOfMoment(card.handedInAt) })}</p>
    {card.questions.length === 0 ? <p>{words.empty}</p> : card.questions.map((question, at) => <Question key={question.mark.slot} question={question} before={card.questions.slice(0, at).flatMap(cautionsOf)} />)}
    {card.more === 0 ? null : <p className="note">{filled(words.more, { count: String(card.more) })}</p>}
    <p className="signed">{words.supervisor}</p>
    {["C6", "C12"].map((id) => <p key={id} className="caution" data-caution={id}><span className="id">{id}</span> {cautionText(id)}</p>)}
  </article>
);

interface VivaProps {
  readonly papers: readonly Paper[];
  readonly families: Families;
  readonly names: Names;
  readonly learners: readonly string[];
  readonly chosen: string;
  readonly onChoose: (learner: string) => void;
  /** True while all cards are printed; on the screen one card stands at a time, and none is folded away. */
  readonly isWhole: boolean;
  readonly onPrint: (what: "card" | "cards") => void;
}

/** Questions for a talk with each learner, from his or her own answers. */
export const Viva = memo(({ papers, families, names, learners, chosen, onChoose, isWhole, onPrint }: VivaProps) => {
  const id = useId();
  const cards = useMemo(
    () => firstPapers(papers).filter(({ learner }) => isWhole || learner === chosen).toSorted((one, other) => (one.learner < other.learner ? -1 : 1)).map((paper) => ({ key: `${paper.list} ${paper.learner}`, card: vivaCard(paper, families, names) })),
    [papers, families, names, chosen, isWhole],
  );
  return (
    <section className="talk">
      <h3 id="talk" tabIndex={-1}>{words.title}</h3>
      <p className="note">{words.lead}</p>
      <div className="which no-print"><label htmlFor={id}>{words.learner}</label><select id={id} value={chosen} onChange={(event) => onChoose(event.currentTarget.value)}>{learners.map((learner) => <option key={learner}>{learner}</option>)}</select></div>
      {cards.map(({ key, card }) => <Card key={key} card={card} />)}
      <div className="btns no-print">
        <button type="button" className="main" onClick={() => onPrint("card")}>{words.printOne}</button>
        <button type="button" onClick={() => onPrint("cards")}>{words.print}</button>
      </div>
    </section>
  );
});
