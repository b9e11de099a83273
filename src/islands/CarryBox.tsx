import { useId, useMemo, useState } from "react";
import { carryCode, readCarryCode } from "../engine/record/carry-code.ts";
import type { LearnerState } from "../engine/record/learner-state.ts";
import { CODE_WORDS } from "../engine/record/words.ts";
import { CARRY_PLANS } from "../facts/editions.ts";
import { recordWordsOf } from "../facts/record-words.ts";
import { filled } from "../facts/words.ts";
import { dayText } from "./dates.ts";
import { carriedEvent } from "./new-event.ts";
import { Square } from "./Square.tsx";
import { keepEvent, type KeptRecord } from "./store/record.ts";

const words = recordWordsOf("en").box;

interface CarryProps {
  readonly record: KeptRecord;
  readonly state: LearnerState;
  readonly todayDay: number;
  readonly onSaid: (said: string) => void;
}

/** Where the learner stands as a code to type or to read with a camera, and the field for a code from elsewhere. */
export const CarryBox = ({ record, state, todayDay, onSaid }: CarryProps) => {
  const id = useId();
  const [typed, setTyped] = useState("");
  const plan = CARRY_PLANS.at(-1);
  const code = useMemo(() => (plan === undefined || record.reading.lines.length === 0 ? null : carryCode(state, plan, todayDay)), [plan, record, state, todayDay]);
  const bring = async (): Promise<void> => {
    const read = readCarryCode(typed, CARRY_PLANS);
    if ("fault" in read) return onSaid(CODE_WORDS.en[read.fault]);
    const bare = typed.replace(/[\s\-‐-―−]/g, "").toUpperCase();
    const isOld = record.reading.lines.some(({ event }) => event.kind === "carried" && event.givens["code"] === bare);
    if (isOld) return onSaid(words.carryOld);
    await keepEvent(carriedEvent(bare));
    setTyped("");
    onSaid(filled(words.carryDone, { date: dayText(read.writtenDay, todayDay) }));
  };
  return (
    <>
      <h3>{words.carryTitle}</h3>
      <p>{words.carryLead}</p>
      {code === null ? null : (
        <div className="carry">
          <div><p className="label">{words.carryCode}</p><p className="code"><code>{code}</code></p></div>
          <Square text={code} name={words.carrySquare} />
        </div>
      )}
      <div className="typed">
        <label htmlFor={id}>{words.carryType}</label>
        <input id={id} type="text" value={typed} autoComplete="off" autoCapitalize="characters" spellCheck={false} onChange={(event) => setTyped(event.currentTarget.value)} onKeyDown={(event) => { if (event.key === "Enter") void bring(); }} />
        <button type="button" onClick={() => void bring()}>{words.carryUse}</button>
      </div>
    </>
  );
};
