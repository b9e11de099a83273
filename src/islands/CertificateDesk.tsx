import { useId, useMemo, useState } from "react";
import { learnerState } from "../engine/record/learner-state.ts";
import { studyCode, studyFacts } from "../engine/record/study-code.ts";
import { CARRY_PLANS } from "../facts/editions.ts";
import { paperWordsOf } from "../facts/paper-words.ts";
import { CertificateCheck } from "./CertificateCheck.tsx";
import { CertificatePaper } from "./CertificatePaper.tsx";
import { type CourseModule, courseView } from "./course.ts";
import { today } from "./new-event.ts";
import { siteHref } from "./site-href.ts";
import type { KeptRecord } from "./store/record.ts";
import { useRecord } from "./use-record.ts";

const words = paperWordsOf("en").certificate;
const MOST_NAME = 120;

const Make = ({ record, modules }: { readonly record: KeptRecord; readonly modules: readonly CourseModule[] }) => {
  const id = useId();
  const [name, setName] = useState("");
  const todayDay = today();
  const plan = CARRY_PLANS.at(-1);
  const facts = useMemo(() => {
    if (plan === undefined) return null;
    const { lines } = record.reading;
    return studyFacts(learnerState(lines, { ...courseView(modules), todayDay }), lines, { plan, todayDay });
  }, [record, modules, plan, todayDay]);
  const isAny = facts !== null && Object.values(facts.modules).some((level) => level !== "open");
  if (plan === undefined || facts === null || !isAny) return <><p>{words.nothing}</p><div className="btns"><a className="btn" href={siteHref("/stand/")}>{words.stand}</a></div></>;
  return (
    <>
      <div className="typed no-print"><label htmlFor={id}>{words.name}</label><input id={id} type="text" value={name} maxLength={MOST_NAME} autoComplete="off" spellCheck={false} aria-describedby={`${id}-hint`} onChange={(event) => setName(event.currentTarget.value)} /></div>
      <p className="note no-print" id={`${id}-hint`}>{words.nameHint}</p>
      <div className="btns"><button type="button" className="main" onClick={() => window.print()}>{words.print}</button></div>
      <CertificatePaper facts={facts} name={name} code={studyCode(facts, name, plan)} modules={modules} />
    </>
  );
};

/** Makes a certificate of study from the record, and compares one with its code. */
export const CertificateDesk = ({ modules }: { readonly modules: readonly CourseModule[] }) => {
  const record = useRecord();
  return (
    <div className="papers">
      <h2 className="no-print">{words.makeTitle}</h2>
      {record === null ? <p role="status" className="needs-script">{words.opening}</p> : <Make record={record} modules={modules} />}
      <CertificateCheck modules={modules} />
    </div>
  );
};
