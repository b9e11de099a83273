import { useEffect, useState } from "react";
import { vivaPicks } from "../engine/record/viva-picks.ts";
import { paperWordsOf } from "../facts/paper-words.ts";
import { filled } from "../facts/words.ts";
import { today } from "./new-event.ts";
import { siteHref } from "./site-href.ts";
import { useRecord } from "./use-record.ts";
import { VivaCard } from "./VivaCard.tsx";
import { type VivaQuestion, vivaQuestions } from "./viva-questions.ts";

const words = paperWordsOf("en").viva;
/** As many as one side of A4 holds, whatever the questions are. */
const MOST = 3;

interface Drawn {
  readonly questions: readonly VivaQuestion[];
  readonly asked: number;
}

const lostText = ({ questions, asked }: Drawn): string => (asked - questions.length === 1 ? words.lostOne : filled(words.lost, { count: String(asked - questions.length) }));

/** Makes the card from the record in this browser; nothing of it leaves. */
export const VivaDesk = () => {
  const record = useRecord();
  const [drawn, setDrawn] = useState<Drawn | null>(null);
  useEffect(() => {
    if (record === null) return undefined;
    let isGone = false;
    const picks = vivaPicks(record.reading.lines, MOST);
    vivaQuestions(picks).then((questions) => {
      if (!isGone) setDrawn({ questions, asked: picks.length });
    }, () => undefined);
    return () => {
      isGone = true;
    };
  }, [record]);
  if (drawn === null) return <p role="status" className="needs-script">{words.opening}</p>;
  const lost = drawn.asked === drawn.questions.length ? null : <p className="note no-print">{lostText(drawn)}</p>;
  if (drawn.questions.length === 0) return <><p>{words.nothing}</p>{lost}<div className="btns"><a className="btn" href={siteHref("/sheet/")}>{words.sheet}</a></div></>;
  return (
    <div className="papers">
      {lost}
      <div className="btns"><button type="button" className="main" onClick={() => window.print()}>{words.print}</button></div>
      <VivaCard questions={drawn.questions} todayDay={today()} />
    </div>
  );
};
