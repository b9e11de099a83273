import type { StudyFacts } from "../engine/record/study-code.ts";
import { cautionText } from "../facts/cautions.ts";
import { paperWordsOf } from "../facts/paper-words.ts";
import { SITE } from "../facts/site.ts";
import { filled } from "../facts/words.ts";
import { type CertificatePathFacts, levelText, namesQuestions, partsText, pathName } from "./certificate-path.ts";
import type { CourseModule } from "./course.ts";
import { fullDayText } from "./dates.ts";

const words = paperWordsOf("en").certificate;
const CAUTIONS = ["C6", "C12", "C1"];

interface PaperProps {
  readonly facts: StudyFacts;
  readonly name: string;
  readonly code: string;
  readonly modules: readonly CourseModule[];
  /** The path that the facts name; null where they name none. */
  readonly path: CertificatePathFacts | null;
}

/** The path as the paper names it, with its parts as they are on the day of writing: a path may change later. */
const PathRow = ({ path, studied }: { readonly path: CertificatePathFacts; readonly studied: NonNullable<StudyFacts["path"]> }) => (
  <tr><th scope="row">{filled(words.path.row, { name: pathName(path) })} <span className="parts">{partsText(path)}</span></th><td>{levelText(path, studied.level)}</td></tr>
);

/** The certificate as it is printed: what was studied, by which rule, and what the paper does not show. */
export const CertificatePaper = ({ facts, name, code, modules, path }: PaperProps) => (
  <article className="card card-a4 certificate">
    <h3>{words.paperTitle}</h3>
    <p className="named">{name.trim() === "" ? <span className="write-on" /> : <b>{name.trim()}</b>}</p>
    <p>{filled(words.has, { site: SITE.name, edition: SITE.edition, date: fullDayText(facts.day) })}</p>
    <table className="plain">
      <thead><tr><th scope="col">{path === null ? words.head.module : words.path.head}</th><th scope="col">{words.head.level}</th></tr></thead>
      <tbody>
        {path === null || facts.path === null ? null : <PathRow path={path} studied={facts.path} />}
        {modules.flatMap(({ code: module, title }) => {
          const level = facts.modules[module] ?? "open";
          return level === "open" ? [] : [<tr key={module}><th scope="row"><span className="ref">{module}</span> {title}</th><td>{words.levels[level]}</td></tr>];
        })}
      </tbody>
    </table>
    <p>{filled(words.answers, { answers: String(facts.answers), days: String(facts.answerDays) })} {facts.stops === 0 ? words.noStops : filled(words.stops, { count: String(facts.stops) })}</p>
    <p className="note">{[words.means, ...(path === null ? [] : [words.path.means]), ...(path !== null && namesQuestions(path) ? [words.path.meansOnce] : [])].join(" ")}</p>
    <p className="study-code">{words.code} <code>{code}</code></p>
    <p className="note">{filled(words.codeSays, { title: words.title })}</p>
    <p><b>{words.proves}</b></p>
    <p className="note">{words.seen} <span className="write-on" /></p>
    <footer>{CAUTIONS.map((id) => <p key={id} data-caution={id}><span>{id}</span> {cautionText(id)}</p>)}</footer>
  </article>
);
