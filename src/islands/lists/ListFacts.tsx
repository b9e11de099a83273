import { questionCount, type TeachingList } from "../../engine/record/list-form.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { filled } from "../../facts/words.ts";
import { dateText, mustOf, ruleText, type Titles } from "./list-text.ts";

const words = listWordsOf("en").first;

/** What a learner must know before beginning: when it is due, how many questions, when it passes, what is stored. */
export const ListFacts = ({ list, titles }: { readonly list: TeachingList; readonly titles: Titles }) => {
  const must = mustOf(list);
  const questions = filled(list.sheet === "own" ? words.questionsOwn : words.questionsSame, { count: String(questionCount(list)) });
  return (
    <>
      <dl className="facts sheet-facts">
        <div><dt>{words.due}</dt><dd>{dateText(list.dueOn)}</dd></div>
        <div><dt>{words.opens}</dt><dd>{dateText(list.opensOn)}</dd></div>
        <div><dt>{words.questions}</dt><dd>{questions}</dd></div>
        <div><dt>{words.attempts}</dt><dd>{list.attempts}</dd></div>
      </dl>
      <div className="two">
        <section>
          <h3>{words.rule}</h3>
          <p>{ruleText(list.rule)}</p>
          {must.length === 0 ? null : <><h4>{words.mustTitle}</h4><ul className="ruled">{must.map((family) => <li key={family}>{titles[family] ?? family}</li>)}</ul></>}
        </section>
        <section>
          <h3>{words.stored}</h3>
          <p>{words.storedText}</p>
          <p>{filled(words.kept, { date: dateText(list.keepUntil) })}</p>
          {list.backTo === "" ? null : <p>{filled(words.backTo, { to: list.backTo })}</p>}
          <h4>{words.time}</h4>
          <p>{words.timeText}</p>
        </section>
      </div>
    </>
  );
};
