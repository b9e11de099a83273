import { useId, useMemo, useState } from "react";
import { learnerState } from "../engine/record/learner-state.ts";
import { type StudyFacts, studyCode, studyFacts } from "../engine/record/study-code.ts";
import { type PathStudy, pathStudy, pathVersion } from "../engine/record/study-path.ts";
import { CARRY_PLANS } from "../facts/editions.ts";
import { paperWordsOf } from "../facts/paper-words.ts";
import { filled } from "../facts/words.ts";
import { CertificateCheck } from "./CertificateCheck.tsx";
import { CertificatePaper } from "./CertificatePaper.tsx";
import { CertificatePath } from "./CertificatePath.tsx";
import { type CertificatePathFacts, studyParts } from "./certificate-path.ts";
import { type CourseModule, courseView } from "./course.ts";
import { today } from "./new-event.ts";
import { siteHref } from "./site-href.ts";
import type { KeptRecord } from "./store/record.ts";
import { useRecord } from "./use-record.ts";

const words = paperWordsOf("en").certificate;
const MOST_NAME = 120;
const PLAN = CARRY_PLANS.at(-1) ?? null;

interface Course {
  readonly modules: readonly CourseModule[];
  readonly paths: readonly CertificatePathFacts[];
}

interface Studied {
  readonly facts: StudyFacts;
  /** How far the chosen path was worked through; null where none is chosen. */
  readonly study: PathStudy | null;
}

/** What the record says of study; the paper names a path only where nothing of it is missing. */
const studiedIn = ({ reading: { lines } }: KeptRecord, { modules, path, todayDay }: { readonly modules: readonly CourseModule[]; readonly path: CertificatePathFacts | null; readonly todayDay: number }): Studied | null => {
  if (PLAN === null) return null;
  const course = courseView(modules);
  const state = learnerState(lines, { ...course, todayDay });
  const study = path === null ? null : pathStudy(studyParts(path), { state, lines, course });
  const named = path === null || study === null || study.level === "open" ? null : { number: path.number, level: study.level, version: pathVersion(studyParts(path)) };
  return { study, facts: studyFacts(state, lines, { plan: PLAN, todayDay, path: named }) };
};

const ChoosePath = ({ paths, chosen, onChoose }: { readonly paths: Course["paths"]; readonly chosen: CertificatePathFacts | null; readonly onChoose: (number: number) => void }) => {
  const id = useId();
  return (
    <p className="which no-print">
      <label htmlFor={id}>{words.path.choose}</label>
      <select id={id} value={chosen?.number ?? 0} onChange={(event) => onChoose(Number(event.currentTarget.value))}>
        <option value={0}>{words.path.none}</option>
        {paths.map(({ number, title, who }) => <option key={number} value={number}>{filled(words.path.option, { who, title: title.toLowerCase() })}</option>)}
      </select>
    </p>
  );
};

const Sign = ({ facts, path, modules }: { readonly facts: StudyFacts; readonly path: CertificatePathFacts | null; readonly modules: readonly CourseModule[] }) => {
  const id = useId();
  const [name, setName] = useState("");
  if (PLAN === null) return null;
  return (
    <>
      <div className="typed no-print"><label htmlFor={id}>{words.name}</label><input id={id} type="text" value={name} maxLength={MOST_NAME} autoComplete="off" spellCheck={false} aria-describedby={`${id}-hint`} onChange={(event) => setName(event.currentTarget.value)} /></div>
      <p className="note no-print" id={`${id}-hint`}>{words.nameHint}</p>
      <div className="btns"><button type="button" className="main" onClick={() => window.print()}>{words.print}</button></div>
      <CertificatePaper facts={facts} name={name} code={studyCode(facts, name, PLAN)} modules={modules} path={path} />
    </>
  );
};

const Make = ({ record, modules, paths }: Course & { readonly record: KeptRecord }) => {
  const [number, setNumber] = useState(0);
  const todayDay = today();
  const path = paths.find((one) => one.number === number) ?? null;
  const studied = useMemo(() => studiedIn(record, { modules, path, todayDay }), [record, modules, path, todayDay]);
  if (studied === null) return <p>{words.nothing}</p>;
  const { facts, study } = studied;
  const isAny = facts.path !== null || Object.values(facts.modules).some((level) => level !== "open");
  return (
    <>
      <ChoosePath paths={paths} chosen={path} onChoose={setNumber} />
      {path === null || study === null ? null : <CertificatePath path={path} study={study} modules={modules} />}
      {isAny ? <Sign facts={facts} path={facts.path === null ? null : path} modules={modules} /> : <><p>{path === null ? words.nothing : words.path.nothing}</p><div className="btns"><a className="btn" href={siteHref("/stand/")}>{words.stand}</a></div></>}
    </>
  );
};

/** Makes a certificate of study from the record, and compares one with its code. */
export const CertificateDesk = ({ modules, paths }: Course) => {
  const record = useRecord();
  return (
    <div className="papers">
      <h2 className="no-print">{words.makeTitle}</h2>
      {record === null ? <p role="status" className="needs-script">{words.opening}</p> : <Make record={record} modules={modules} paths={paths} />}
      <CertificateCheck modules={modules} paths={paths} />
    </div>
  );
};
