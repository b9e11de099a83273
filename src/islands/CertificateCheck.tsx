import { useId, useState } from "react";
import { readStudyCode, type StudyReading } from "../engine/record/study-code.ts";
import { CODE_WORDS } from "../engine/record/words.ts";
import { CARRY_PLANS } from "../facts/editions.ts";
import { paperWordsOf } from "../facts/paper-words.ts";
import { filled } from "../facts/words.ts";
import { type CertificatePathFacts, saidPath } from "./certificate-path.ts";
import type { CourseModule } from "./course.ts";
import { fullDayText } from "./dates.ts";

const words = paperWordsOf("en").certificate;
const MOST_NAME = 120;

const nameText = ({ hasName }: Extract<StudyReading, { readonly edition: number }>, name: string): string => {
  if (name.trim() !== "") return hasName(name) ? words.nameRight : words.nameWrong;
  return hasName("") ? words.nameNone : words.nameAsked;
};

interface Course {
  readonly modules: readonly CourseModule[];
  readonly paths: readonly CertificatePathFacts[];
}

const Says = ({ read, name, modules, paths }: Course & { readonly read: Extract<StudyReading, { readonly edition: number }>; readonly name: string }) => {
  const { facts } = read;
  const list = Object.entries(facts.modules).flatMap(([code, level]) => (level === "open" ? [] : [`${code} ${modules.find((one) => one.code === code)?.title ?? ""} (${words.levels[level]})`])).sort();
  const lines = [
    filled(words.written, { date: fullDayText(facts.day) }),
    saidPath(facts.path, paths),
    list.length === 0 ? words.noModules : filled(words.modules, { list: list.join("; ") }),
    filled(words.answers, { answers: String(facts.answers), days: String(facts.answerDays) }),
    facts.stops === 0 ? words.noStops : filled(words.stops, { count: String(facts.stops) }),
    nameText(read, name),
  ];
  return (
    <>
      <h3>{words.says}</h3>
      <ul className="says">{lines.map((line) => <li key={line}>{line}</li>)}</ul>
      <p>{words.agree}</p>
      <p><b>{words.notProved}</b></p>
    </>
  );
};

/** The box in which somebody who holds a paper compares it with its code. */
export const CertificateCheck = ({ modules, paths }: Course) => {
  const id = useId();
  const [typed, setTyped] = useState({ code: "", name: "" });
  const [asked, setAsked] = useState<{ readonly code: string; readonly name: string } | null>(null);
  const read = readStudyCode(asked?.code ?? "", CARRY_PLANS);
  return (
    <section className="record no-print">
      <h2>{words.checkTitle}</h2>
      <p>{words.checkLead}</p>
      <form onSubmit={(event) => { event.preventDefault(); setAsked(typed); }}>
        <div className="typed"><label htmlFor={`${id}-code`}>{words.checkCode}</label><input id={`${id}-code`} type="text" value={typed.code} autoComplete="off" autoCapitalize="characters" spellCheck={false} onChange={(event) => setTyped({ ...typed, code: event.currentTarget.value })} /></div>
        <div className="typed"><label htmlFor={`${id}-name`}>{words.checkName}</label><input id={`${id}-name`} type="text" value={typed.name} maxLength={MOST_NAME} autoComplete="off" spellCheck={false} onChange={(event) => setTyped({ ...typed, name: event.currentTarget.value })} /></div>
        <div className="btns"><button type="submit" className="main">{words.check}</button></div>
      </form>
      <div role="status" className="said-many">
        {asked !== null && "fault" in read ? <p>{CODE_WORDS.en[read.fault]}</p> : null}
        {asked === null || "fault" in read ? null : <Says read={read} name={asked.name} modules={modules} paths={paths} />}
      </div>
    </section>
  );
};
