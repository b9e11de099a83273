import { useEffect, useRef } from "react";
import { calendarText } from "../../engine/record/calendar.ts";
import { listId, questionCount, type TeachingList } from "../../engine/record/list-form.ts";
import { linkText } from "../../engine/record/list-link.ts";
import { cautionText } from "../../facts/cautions.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { filled } from "../../facts/words.ts";
import { saveFile } from "../save-file.ts";
import { siteHref } from "../site-href.ts";
import { Square } from "../Square.tsx";
import { CopyText } from "./CopyText.tsx";
import type { MadeList } from "./draft.ts";
import { dateText, orText, ruleText } from "./list-text.ts";

const all = listWordsOf("en");
const words = all.compose;

const backText = ({ back, backTo }: TeachingList): string =>
  filled(words.mailBack, { ways: orText(back.map((route) => all.handIn.way[route])), to: backTo === "" ? "" : filled(words.mailTo, { to: backTo }) });

const mailText = ({ list, code }: MadeList, link: string): string =>
  filled(words.mailText, {
    title: list.title, opens: dateText(list.opensOn), due: dateText(list.dueOn), count: String(questionCount(list)), rule: ruleText(list.rule), link, code: code === null ? "" : filled(words.mailCode, { code }), spoken: list.spoken === null ? "" : `${words.spokenAlso}\n`,
    back: backText(list), keep: dateText(list.keepUntil), caution: cautionText("C1"),
  });

const calendarFor = (list: TeachingList, link: string): string =>
  calendarText({ uid: `${listId(list)}@small-knee-workbook`, stampedAt: new Date().toISOString(), on: list.dueOn, title: filled(words.calendarTitle, { title: list.title }), description: `${ruleText(list.rule)}\n${link}\n${cautionText("C1")}`, url: link });

const Seen = ({ list }: { readonly list: TeachingList }) => (
  <div className="seen">
    <p className="l">{words.seen}</p>
    <h3>{list.title}</h3>
    <p>{filled(words.seenFacts, { count: String(questionCount(list)), opens: dateText(list.opensOn), due: dateText(list.dueOn) })}</p>
    <p>{ruleText(list.rule)}</p>
    {list.spoken === null ? null : <p>{words.spokenAlso}</p>}
    <p className="caution" data-caution="C1"><span className="id">C1</span> {cautionText("C1")}</p>
  </div>
);

/** All that is given out for a list: link, square, code, mail, calendar, a sheet for the board. What leads away opens beside it, since the page keeps neither link nor word. */
export const ComposeOut = ({ made }: { readonly made: MadeList }) => {
  const { list, code, spoken } = made;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const fragment = linkText(list);
  const path = siteHref("/list/");
  const link = `${window.location.origin}${path}#${fragment}`;
  return (
    <section className="compose-out">
      <h2 tabIndex={-1} ref={heading}>{words.outTitle}</h2>
      <Seen list={list} />
      <Square text={link} name={words.square} />
      {code === null ? <p className="note no-print">{words.noCode}</p> : <><p className="l no-print">{words.code}</p><p className="big-code">{code}</p></>}
      {spoken === null ? null : <div className="no-print"><p className="l">{words.spoken}</p><p className="big-code">{spoken}</p><p className="note">{words.spokenHint}</p></div>}
      <p className="print-only">{filled(code === null ? words.boardLink : words.boardCode, { address: `${window.location.origin}${path}` })}</p>
      <p className="print-only">{backText(list)}</p>
      <div className="no-print">
        <CopyText label={filled(words.link, { count: String(link.length) })} text={link} rows={5} copy={words.copyLink} />
        <CopyText label={words.mail} text={mailText(made, link)} rows={8} copy={words.copyMail} />
        <div className="btns">
          <button type="button" onClick={() => saveFile(calendarFor(list, link), "teaching-list.ics", "text/calendar")}>{words.calendar}</button>
          <button type="button" onClick={() => window.print()}>{words.print}</button>
          <a className="btn quiet" target="_blank" rel="noopener" href={`${path}#${fragment}`}>{words.walk}</a>
          <a className="btn quiet" target="_blank" rel="noopener" href={`${siteHref("/returns/")}#${fragment}`}>{words.desk}</a>
        </div>
        <p className="note">{words.keepLink}</p>
        <p className="note"><b>{words.cheat}</b> {words.cheatText}</p>
      </div>
    </section>
  );
};
