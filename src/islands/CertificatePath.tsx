import type { ObjectiveStanding } from "../engine/record/learner-state.ts";
import { isStudied } from "../engine/record/study-level.ts";
import type { PartStudy, PathStudy } from "../engine/record/study-path.ts";
import { paperWordsOf } from "../facts/paper-words.ts";
import { filled } from "../facts/words.ts";
import type { CertificatePathFacts, PathPart, PathQuestion } from "./certificate-path.ts";
import type { CourseModule, CourseObjective } from "./course.ts";
import { Level } from "./Level.tsx";
import { siteHref } from "./site-href.ts";

const words = paperWordsOf("en").certificate.path;

const Questions = ({ lead, questions }: { readonly lead: string; readonly questions: readonly PathQuestion[] }) => (
  <p className="links">{lead} {questions.map(({ id, code, title }, at) => <span key={id}>{at > 0 ? " · " : ""}<a href={siteHref(`/practice/${id}/`)}>{code} {title}</a></span>)}</p>
);

interface LackProps {
  readonly objective: CourseObjective;
  readonly standing: ObjectiveStanding;
  /** The path's questions of this objective, and those of them that were never right. */
  readonly own: readonly PathQuestion[];
  readonly lacking: readonly PathQuestion[];
}

/** What one objective behind a part still needs, with the questions to answer. */
const Lack = ({ objective, standing: { level }, own, lacking }: LackProps) => (
  <li>
    <p>{objective.text} <Level level={level} /></p>
    {level === "stop" ? <Questions lead={words.stop} questions={own} /> : null}
    {lacking.length > 0 ? <Questions lead={words.lacking} questions={lacking} /> : null}
    {level !== "stop" && lacking.length === 0 ? <Questions lead={words.again} questions={own} /> : null}
  </li>
);

interface PartProps {
  readonly part: PathPart;
  readonly study: PartStudy;
  readonly modules: readonly CourseModule[];
}

const Missing = ({ part, study, modules }: PartProps) => {
  const { questions, sections, module } = part;
  if (questions === null) return <p>{filled(words.whole, { open: String(study.objectives.filter((one) => !isStudied(one)).length), all: String(study.objectives.length) })}</p>;
  const path = modules.find(({ code }) => code === module)?.path ?? "";
  const objectives = modules.flatMap((one) => one.objectives);
  const lacks = study.objectives.flatMap((standing) => {
    const objective = objectives.find(({ id }) => id === standing.objective);
    if (objective === undefined) return [];
    const own = questions.filter(({ id }) => objective.families.includes(id));
    const lacking = own.filter(({ id }) => study.lacking.includes(id));
    return lacking.length === 0 && isStudied(standing) ? [] : [<Lack key={objective.id} objective={objective} standing={standing} own={own} lacking={lacking} />];
  });
  return (
    <>
      {sections.length === 0 ? null : <p className="links">{words.sections} {sections.map(({ slug, text }, at) => <span key={slug}>{at > 0 ? " · " : ""}<a href={`${path}#${slug}`}>{text}</a></span>)}</p>}
      <ul>{lacks}</ul>
    </>
  );
};

const Part = ({ part, study, modules }: PartProps) => {
  const found = modules.find(({ code }) => code === part.module);
  const name = `${part.module} ${found?.title ?? ""}`;
  return (
    <li>
      <p className="part-name">{found === undefined ? name : <a href={found.path}>{name}</a>}{part.questions === null ? null : `, ${words.inPart}`}{study.isDone ? <>. <b>{words.partDone}</b></> : null}</p>
      {study.isDone ? null : <Missing part={part} study={study} modules={modules} />}
    </li>
  );
};

/** How far a path was worked through, sitting by sitting, and what is still missing of each part. */
export const CertificatePath = ({ path, study, modules }: { readonly path: CertificatePathFacts; readonly study: PathStudy; readonly modules: readonly CourseModule[] }) => {
  const done = study.parts.filter(({ isDone }) => isDone).length;
  const before = path.sittings.map((_, at) => path.sittings.slice(0, at).reduce((sum, { parts }) => sum + parts.length, 0));
  return (
    <div className="path-study no-print">
      <p role="status"><b>{study.level === "open" ? filled(words.open, { done: String(done), all: String(study.parts.length) }) : words.done}</b></p>
      <p className="note">{words.rule}{study.parts.some(({ lacking }) => lacking.length > 0) ? ` ${words.carried}` : ""}</p>
      {path.sittings.map(({ name, parts }, at) => (
        <section key={name}>
          <h3>{name}</h3>
          <ul>
            {parts.flatMap((part, index) => {
              const own = study.parts[(before[at] ?? 0) + index];
              return own === undefined ? [] : [<Part key={part.module} part={part} study={own} modules={modules} />];
            })}
          </ul>
        </section>
      ))}
    </div>
  );
};
