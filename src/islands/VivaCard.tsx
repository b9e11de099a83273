import { withUnit } from "../engine/quantity/format.ts";
import type { Item } from "../engine/question/item.ts";
import { cautionText } from "../facts/cautions.ts";
import { paperWordsOf } from "../facts/paper-words.ts";
import { filled } from "../facts/words.ts";
import { fullDayText } from "./dates.ts";
import { Glyph } from "./Glyph.tsx";
import { Valued } from "./Valued.tsx";
import { verdictText } from "./verdict-text.ts";
import type { VivaQuestion } from "./viva-questions.ts";

const words = paperWordsOf("en").viva;
const MOST_STEPS = 3;

const givensText = ({ givens }: Item): string => givens.map(({ label, text, unit }) => `${label} ${withUnit(text, unit)}`).join("; ");

const saidText = ({ item, event, explanation }: VivaQuestion): string => {
  if ("says" in event.response && item.kind === "sum") return item.says[event.response.says];
  return explanation.compare.map(({ label, yours, answer }) => (explanation.compare.length > 1 ? `${label}: ${yours ?? answer}` : (yours ?? answer))).join("; ");
};

/** What an examiner may ask next, each with what the working of the question says. */
const nextOf = ({ explanation }: VivaQuestion): readonly { readonly ask: string; readonly look: string }[] => {
  const rows = [
    { ask: words.asks.why, look: explanation.happened.join(" ") },
    { ask: words.asks.how, look: explanation.working.slice(0, MOST_STEPS).join(" · ") },
    { ask: words.asks.moves, look: explanation.movesText.join(" ") },
    { ask: words.asks.inverse, look: explanation.inverse.join(" ") },
  ];
  return rows.filter(({ look }) => look !== "");
};

const Question = ({ question, at }: { readonly question: VivaQuestion; readonly at: number }) => {
  const { item, verdict, explanation } = question;
  return (
    <section>
      <h4><span className="n">{at}</span> {item.title} <span className="l steel">{item.code}</span></h4>
      <p>{item.question} <Valued text={givensText(item)} /></p>
      <p><Glyph id={`v-${verdict.verdict}`} /> {verdictText(item.unsafe, verdict.verdict)}. {words.answered} <b><Valued text={saidText(question)} /></b>. {explanation.slipName === undefined ? null : filled(words.slip, { slip: explanation.slipName })}</p>
      <dl>{nextOf(question).map(({ ask, look }) => <div key={ask}><dt>{ask}</dt><dd><Valued text={look} /></dd></div>)}</dl>
    </section>
  );
};

/** The card that a supervisor holds while asking: the learner's own answers, their slips, and what could be asked next. */
export const VivaCard = ({ questions, todayDay }: { readonly questions: readonly VivaQuestion[]; readonly todayDay: number }) => {
  const isUnsafe = questions.some(({ verdict }) => verdict.verdict === "unsafe-side");
  return (
    <article className="card card-a4 viva">
      <header><div><h3>{words.paperTitle}</h3><p>{filled(words.made, { date: fullDayText(todayDay) })}</p></div><p className="policy">{words.name}</p></header>
      {questions.map((question, index) => <Question key={question.event.id} question={question} at={index + 1} />)}
      <footer>{[...(isUnsafe ? ["C10"] : []), "C12", "C6", "C1"].map((id) => <p key={id} data-caution={id}><span>{id}</span> {cautionText(id)}</p>)}</footer>
    </article>
  );
};
