import { type ChangeEvent, useState } from "react";
import { type CohortReading, readCohort } from "../../engine/cohort/cohort-file.ts";
import type { Paper } from "../../engine/cohort/paper.ts";
import { cohortWordsOf } from "../../facts/cohort-words.ts";
import { filled } from "../../facts/words.ts";
import type { CourseModule } from "../course.ts";
import { Understanding } from "./Understanding.tsx";

const words = cohortWordsOf("en").desk;
const MOST_BYTES = 60_000_000;
const MOST_PLACES = 12;

const papersText = (count: number): string => (count === 1 ? words.onePaper : filled(words.manyPapers, { count: String(count) }));

const saidOf = (reading: CohortReading): string => {
  if (reading.fault !== null) return words[reading.fault];
  const { papers, aside } = reading;
  const read = filled(words.read, { papers: papersText(papers.length) });
  const places = aside.slice(0, MOST_PLACES).join(", ") + (aside.length > MOST_PLACES ? " …" : "");
  return aside.length === 0 ? read : `${read} ${filled(words.aside, { count: String(aside.length), places })}`;
};

/** Opens a file that a returns desk saved: read here, shown here, and kept nowhere. */
export const CohortDesk = ({ modules }: { readonly modules: readonly CourseModule[] }) => {
  const [papers, setPapers] = useState<readonly Paper[]>([]);
  const [said, setSaid] = useState("");
  const open = async (event: ChangeEvent<HTMLInputElement>): Promise<void> => {
    const file = event.currentTarget.files?.[0];
    event.currentTarget.value = "";
    if (file === undefined) return;
    if (file.size > MOST_BYTES) {
      setSaid(words["too-big"]);
      return;
    }
    const reading = readCohort(await file.text());
    setSaid(saidOf(reading));
    if (reading.fault === null) setPapers(reading.papers);
  };
  return (
    <>
      <p className="opens no-print">{words.lead}</p>
      <div className="btns"><label className="btn file">{words.open}<input type="file" accept=".json,application/json" onChange={(event) => void open(event)} /></label></div>
      <p role="status" className="cohort-said no-print">{said}</p>
      {papers.length === 0 ? null : <Understanding papers={papers} modules={modules} />}
    </>
  );
};
