import type { Line } from "../engine/record/chain.ts";
import type { ObjectiveStanding } from "../engine/record/learner-state.ts";
import type { Change } from "../engine/standing/standing.ts";
import { cautionText } from "../facts/cautions.ts";
import { recordWordsOf } from "../facts/record-words.ts";
import { filled, wordsOf } from "../facts/words.ts";
import type { CourseObjective } from "./course.ts";
import { dayText, momentText } from "./dates.ts";
import { Glyph } from "./Glyph.tsx";
import { Level } from "./Level.tsx";
import { siteHref } from "./site-href.ts";

const words = recordWordsOf("en");
const MOST_EVENTS = 30;

interface RowProps {
  readonly objective: CourseObjective;
  readonly standing: ObjectiveStanding;
  readonly lines: readonly Line[];
  readonly todayDay: number;
}

/** The date of return in a few words; nothing where there is none. */
export const returnText = ({ returns }: ObjectiveStanding, todayDay: number): string => {
  if (returns === null) return "";
  if (returns.day === todayDay) return words.stand.today;
  if (returns.day < todayDay) return filled(words.stand.since, { date: dayText(returns.day, todayDay) });
  return filled(words.stand.back, { date: returns.day === todayDay + 1 ? words.stand.tomorrow : dayText(returns.day, todayDay) });
};

const numberWord = (count: number): string => words.numbers[count] ?? String(count);

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const changeText = ({ by, to, count, fromDay }: Change, todayDay: number): string => {
  const from = fromDay === null || fromDay <= todayDay ? "" : filled(words.change.from, { day: dayText(fromDay, todayDay) });
  const gaps = { to: words.level[to], count: numberWord(count), from, day: fromDay === null ? "" : dayText(fromDay, todayDay) };
  if (by === "right") return filled(count === 1 ? words.change.rightOne : words.change.rightMany, gaps);
  return filled(words.change[by], gaps);
};

const isOf = ({ event }: Line, { id, module, families }: CourseObjective): boolean =>
  event.family === "" ? event.kind === "carried" || event.givens["objective"] === id || event.givens["module"] === module : families.includes(event.family);

const verdictWords = wordsOf("en").verdicts;

const EventLine = ({ line, isMaking }: { readonly line: Line; readonly isMaking: boolean }) => {
  const { kind, verdict, hint, slip, sheet, at, offsetMin } = line.event;
  const isAnswer = kind === "answered";
  return (
    <li>
      <span className="when">{momentText(at, offsetMin)}</span>
      {isAnswer ? <Glyph id={`v-${verdict}`} /> : <span />}
      <span>
        {sheet === undefined ? null : `${filled(words.stand.sheetRef, { number: sheet })}: `}
        {isAnswer ? verdictWords[verdict] : words.kindOf[kind]}{hint ? ` ${words.stand.helpLine}` : ""}{slip === undefined ? "" : `, ${filled(words.stand.slip, { slip: slip.replaceAll("-", " ") })}`}
        {isMaking ? <b> · {words.stand.made}</b> : null}
      </span>
    </li>
  );
};

/** The first tries one after the other: the learner's own curve, drawn as it was and fitted to nothing. */
const Tries = ({ tries }: { readonly tries: readonly boolean[] }) => (
  <p className="tries">
    <span>{words.stand.tries}: </span>
    {tries.map((isRight, index) => {
      const key = `${index} ${isRight}`;
      return <span key={key}><Glyph id={isRight ? "v-right" : "v-not-recognised"} /><span className="vh">{isRight ? verdictWords.right : words.stand.notRight}{index < tries.length - 1 ? ", " : ""}</span></span>;
    })}
  </p>
);

/** One objective: text, level and date; opened, what made the level, what would change it, and the error curve. */
export const StandRow = ({ objective, standing, lines, todayDay }: RowProps) => {
  const { level, madeBy, wouldChange, returns, firstTries } = standing;
  const own = lines.filter((line) => isOf(line, objective));
  const family = objective.families[0];
  return (
    <details className={level === "stop" ? "stand-row stopped" : "stand-row"} id={objective.id}>
      <summary><span className="t">{objective.text}</span><Level level={level} /><span className="when">{returnText(standing, todayDay)}</span></summary>
      <div>
        <h4>{filled(words.stand.why, { level: words.level[level] })}</h4>
        <p className="note">{words.rule[level]}</p>
        {own.length === 0 ? <p>{words.stand.noEvents}</p> : (
          <ul className="events" aria-label={words.stand.events}>{own.slice(-MOST_EVENTS).map((line) => <EventLine key={line.hash} line={line} isMaking={madeBy.includes(line.event.id)} />)}</ul>
        )}
        {firstTries.length > 0 ? <Tries tries={firstTries} /> : null}
        <p>{wouldChange.map((change) => changeText(change, todayDay)).join(" ")}{returns === null ? "" : ` ${capital(returnText(standing, todayDay))}: ${words.reason[returns.reason]}.`}</p>
        {level === "stop" ? <p className="caution stop" data-caution="C10"><span className="id">C10</span> {cautionText("C10")}</p> : null}
        {family === undefined ? null : <div className="btns"><a className="btn" href={siteHref(`/practice/${family}/`)}>{words.stand.practise}</a></div>}
      </div>
    </details>
  );
};
