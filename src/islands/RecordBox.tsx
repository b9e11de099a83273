import { type ChangeEvent, useState } from "react";
import { lineText, logText, readLogText } from "../engine/record/chain.ts";
import type { LearnerState } from "../engine/record/learner-state.ts";
import { recordWordsOf } from "../facts/record-words.ts";
import { SITE } from "../facts/site.ts";
import { filled } from "../facts/words.ts";
import { CarryBox } from "./CarryBox.tsx";
import { forgetDrafts } from "./store/draft.ts";
import { askToStay, bringLines, eraseRecord, keepOnDevice, type KeptRecord } from "./store/record.ts";
import { saveFile } from "./save-file.ts";
import { siteHref } from "./site-href.ts";

const words = recordWordsOf("en").box;
const MOST_BYTES = 20_000_000;

const countText = (count: number): string => (count === 1 ? words.one : filled(words.many, { count: String(count) }));

/** Reads a chosen file into the record and says what came of it. */
const bringFile = async (file: File): Promise<string> => {
  if (file.size > MOST_BYTES) return words.loadBig;
  const reading = readLogText(await file.text());
  if (reading.lines.length === 0) return words.loadEmpty;
  const { added, trouble } = await bringLines(reading.lines.map(lineText));
  if (trouble !== null) return words[trouble];
  const bad = reading.findings.filter(({ isAside }) => isAside).length;
  return filled(words.loaded, { count: String(added), all: String(reading.lines.length) }) + (bad === 0 ? "" : ` ${filled(words.loadedBad, { count: String(bad) })}`);
};

const Erase = ({ count, onDone }: { readonly count: number; readonly onDone: (said: string) => void }) => {
  const [isAsked, setAsked] = useState(false);
  const erase = async (): Promise<void> => {
    forgetDrafts();
    const { trouble } = await eraseRecord();
    setAsked(false);
    onDone(trouble === null ? words.erased : words[trouble]);
  };
  if (!isAsked) return <button type="button" className="quiet" onClick={() => setAsked(true)}>{words.erase}</button>;
  return (
    <div className="sure">
      <p>{words.eraseAsk}</p>
      <div className="btns">
        <button type="button" className="main" onClick={() => void erase()}>{filled(words.eraseSure, { count: countText(count) })}</button>
        <button type="button" className="quiet" onClick={() => setAsked(false)}>{words.eraseNot}</button>
      </div>
    </div>
  );
};

/** The record itself: where it lives, and how to keep, take along, bring in and erase it. */
export const RecordBox = ({ record, state, todayDay }: { readonly record: KeptRecord; readonly state: LearnerState; readonly todayDay: number }) => {
  const [said, setSaid] = useState("");
  const count = record.texts.length;
  const beside = SITE.isShared ? words.shared : words.private;
  const keep = async (): Promise<void> => {
    const { trouble } = await keepOnDevice();
    const stays = trouble === null ? await askToStay() : null;
    if (trouble !== null) setSaid(words[trouble]);
    else setSaid(stays === true ? words.promised : words.notPromised);
  };
  const bring = async (event: ChangeEvent<HTMLInputElement>): Promise<void> => {
    const file = event.currentTarget.files?.[0];
    event.currentTarget.value = "";
    if (file !== undefined) setSaid(await bringFile(file));
  };
  return (
    <section className="record no-print">
      <h2>{words.title}</h2>
      <p>{filled(words[record.place], { count: countText(count) })} {record.place === "device" ? "" : beside}</p>
      <div className="btns">
        {record.place === "device" || SITE.isShared ? null : <button type="button" className="main" onClick={() => void keep()}>{words.keep}</button>}
        <button type="button" disabled={count === 0} onClick={() => saveFile(logText(record.reading.lines), "small-knee-record.txt")}>{words.save}</button>
        <label className="btn file">{words.load}<input type="file" accept=".txt,text/plain" onChange={(event) => void bring(event)} /></label>
        {count === 0 ? null : <Erase count={count} onDone={setSaid} />}
      </div>
      <p role="status" className="said">{said}</p>
      <p className="note">{words.proves} {words.format} <a href={siteHref("/record.schema.json")}>{words.formatLink}</a>.</p>
      <CarryBox record={record} state={state} todayDay={todayDay} onSaid={setSaid} />
    </section>
  );
};
