import { useEffect, useState } from "react";
import { offlineWordsOf } from "../facts/offline-words.ts";
import { SITE } from "../facts/site.ts";
import { filled } from "../facts/words.ts";
import { canKeepCourse, type CourseFacts, courseFacts, dropCourse, keepCourse, keptCourse } from "./store/course.ts";

const words = offlineWordsOf("en");
const BYTES_IN_MB = 1_000_000;

const sizeText = ({ bytes }: CourseFacts): string => `${(bytes / BYTES_IN_MB).toFixed(1)}\u2009MB`;

interface Here {
  readonly facts: CourseFacts | null;
  readonly kept: string | null;
}

interface Progress {
  readonly done: number;
  readonly all: number;
}

const lookHere = async (): Promise<Here> => ({ facts: await courseFacts(), kept: await keptCourse() });

const stateText = ({ facts, kept }: Here): string => {
  if (kept === null) return words.none;
  return facts === null || kept === facts.version ? words.kept : words.older;
};

const buttonText = ({ facts, kept }: Here, isBegun: boolean): string | null => {
  if (facts === null || kept === facts.version) return null;
  if (kept !== null) return filled(words.again, { size: sizeText(facts) });
  return filled(isBegun ? words.goOn : words.keep, { size: sizeText(facts) });
};

const Bar = ({ progress: { done, all } }: { readonly progress: Progress }) => (
  <p><label><progress max={all} value={done} /> {filled(words.progress, { done: String(done), all: String(all) })}</label></p>
);

const Keeping = () => {
  const [here, setHere] = useState<Here | null>(null);
  const [progress, setProgress] = useState<Progress | null>(null);
  const [said, setSaid] = useState("");
  const look = async (): Promise<void> => setHere(await lookHere());
  useEffect(() => {
    void lookHere().then(setHere);
  }, []);
  const keep = async (): Promise<void> => {
    setSaid("");
    setProgress({ done: 0, all: here?.facts?.files ?? 1 });
    const ended = await keepCourse((done, all) => setProgress({ done, all }));
    setProgress(null);
    if ("stopped" in ended) setSaid(filled(words[ended.stopped], { done: String(ended.done), all: String(ended.all) }));
    await look();
  };
  const remove = async (): Promise<void> => {
    await dropCourse();
    setSaid(words.removed);
    await look();
  };
  if (here === null) return null;
  const text = buttonText(here, said !== "" && said !== words.removed);
  return (
    <>
      <p role="status" className="said">{said === "" ? stateText(here) : said}</p>
      {here.facts === null && here.kept === null ? <p>{words.unknown}</p> : null}
      {progress === null ? null : <Bar progress={progress} />}
      <div className="btns">
        {text === null ? null : <button type="button" className="main" disabled={progress !== null} onClick={() => void keep()}>{text}</button>}
        {here.kept === null ? null : <button type="button" className="quiet" disabled={progress !== null} onClick={() => void remove()}>{words.remove}</button>}
      </div>
    </>
  );
};

/** Keeps the course on this device and removes it again; says so where that cannot be. */
export const KeepCourse = () => {
  if (SITE.isShared) return <p>{words.shared}</p>;
  return canKeepCourse() ? <Keeping /> : <p>{words.cannot}</p>;
};
