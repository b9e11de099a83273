import { useState } from "react";
import { cohortCsv } from "../../engine/cohort/cohort-csv.ts";
import { cohortText } from "../../engine/cohort/cohort-file.ts";
import type { Paper } from "../../engine/cohort/paper.ts";
import { cautionText } from "../../facts/cautions.ts";
import { cohortWordsOf } from "../../facts/cohort-words.ts";
import { SITE } from "../../facts/site.ts";
import { filled } from "../../facts/words.ts";
import { saveFile } from "../save-file.ts";
import { siteHref } from "../site-href.ts";
import { statementsText } from "./statements.ts";
import type { Families } from "./use-families.ts";

const words = cohortWordsOf("en").export;

/** Cautions that go with every copy of results. */
const notes = (): readonly string[] => ["C1", "C6", "C12"].map((id) => `${id} ${cautionText(id)}`);

const baseName = (papers: readonly Paper[]): string => filled(words.fileName, { list: (papers[0]?.list ?? "list").replace(/[^A-Za-z0-9-]/g, "").slice(0, 24) });

/** The papers as files for spreadsheets, for programs and for a record store; each is made here and handed to the browser. */
export const Exports = ({ papers, families }: { readonly papers: readonly Paper[]; readonly families: Families }) => {
  const [said, setSaid] = useState("");
  const save = (ending: string, type: string, text: string): void => {
    const name = `${baseName(papers)}${ending}`;
    saveFile(text, name, type);
    setSaid(filled(words.saved, { name }));
  };
  const csv = (separator: "," | ";"): void => save(".csv", "text/csv", cohortCsv(papers, { notes: notes(), separator }));
  const json = (): void => save(".json", "application/json", cohortText({ edition: SITE.edition, madeAt: new Date().toISOString(), notes: notes(), papers }));
  const xapi = async (): Promise<void> => save("-xapi.json", "application/json", await statementsText(papers, families, (done) => setSaid(filled(words.making, { done: String(done), all: String(papers.length) }))));
  return (
    <section className="no-print">
      <h3 id="take-along">{words.title}</h3>
      <p>{words.lead}</p>
      <div className="btns"><button type="button" className="main" onClick={() => csv(",")}>{words.csv}</button><button type="button" onClick={() => csv(";")}>{words.csvSemicolon}</button></div>
      <p className="note">{words.csvNote}</p>
      <div className="btns"><button type="button" onClick={json}>{words.json}</button><button type="button" onClick={() => void xapi()}>{words.xapi}</button></div>
      <p className="note">{words.jsonNote} <a href={siteHref("/cohort.schema.json")}>{words.schema}</a>. {words.xapiNote}</p>
      <p role="status" className="said">{said}</p>
      <div className="btns"><a className="btn" href={siteHref("/evidence/")}>{words.pack}</a></div>
    </section>
  );
};
