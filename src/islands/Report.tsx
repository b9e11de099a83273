import { useId } from "react";
import type { Item } from "../engine/question/item.ts";
import { SITE } from "../facts/site.ts";
import { filled, type Words } from "../facts/words.ts";
import type { Graded } from "./grading.ts";
import { mailHref, reportText } from "./report-text.ts";

interface ReportProps {
  readonly item: Item;
  readonly graded: Graded;
  readonly words: Words;
}

/** To whom the text goes: a letter to open, words, or the person who runs the site. */
const Receiver = ({ text, words }: { readonly text: string; readonly words: Words }) => {
  const [before, after] = words.report.sendTo.split("{address}");
  const mail = mailHref(SITE.reportTo, text);
  if (SITE.reportTo === "") return <>{words.report.handTo}</>;
  return <>{before}{mail === null ? SITE.reportTo : <a href={mail}>{SITE.reportTo}</a>}{after}</>;
};

/** A text to copy when a question seems wrong. It shows what it holds and sends nothing. */
export const Report = ({ item, graded, words }: ReportProps) => {
  const id = useId();
  const { protocol, origin, pathname } = window.location;
  const text = reportText(item, graded, { site: SITE, page: { protocol, origin, pathname, title: document.title }, words });
  return (
    <details className="more report no-print">
      <summary>{words.report.open}</summary>
      <div>
        <p>{words.report.lead} <Receiver text={text} words={words} /></p>
        <label htmlFor={id}>{filled(words.report.label, { code: item.code })}</label>
        <textarea id={id} readOnly rows={10} spellCheck={false} value={text} onFocus={(event) => event.currentTarget.select()} />
      </div>
    </details>
  );
};
