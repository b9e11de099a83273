import { recordWordsOf } from "../facts/record-words.ts";
import type { Item } from "../engine/question/item.ts";
import { Glyph } from "./Glyph.tsx";
import type { Graded } from "./grading.ts";
import type { SheetState } from "./use-sheet.ts";
import { Valued } from "./Valued.tsx";
import { verdictText } from "./verdict-text.ts";

const words = recordWordsOf("en").sheet;

/** What the learner said, in the words of the question. */
export const saidIn = (item: Item, graded: Graded | undefined): string => {
  if (graded === undefined) return "";
  if ("says" in graded.response && item.kind === "sum") return item.says[graded.response.says];
  return graded.explanation.compare.map(({ yours, answer }) => yours ?? answer).join("; ");
};

const Row = ({ item, at, graded }: { readonly item: Item; readonly at: number; readonly graded: Graded | undefined }) => {
  const rows = graded?.explanation.compare ?? [];
  const said = saidIn(item, graded);
  const says = graded?.verdict.acceptedSays;
  const right = says !== undefined && item.kind === "sum" ? item.says[says] : rows.map(({ answer }) => answer).join("; ");
  const verdict = graded?.verdict.verdict;
  return (
    <tr>
      <td data-head={words.no} className="n">{at + 1}</td>
      <th scope="row" data-head={words.asked}>{item.title}</th>
      <td data-head={words.said} className="own">{said === "" ? null : <Valued text={said} />}</td>
      <td data-head={words.accepted}>{graded === undefined ? null : <Valued text={right} />}</td>
      <td data-head={words.verdict}>{verdict === undefined ? <><Glyph id="v-left" /> {words.left}</> : <><Glyph id={`v-${verdict}`} /> {verdictText(item.unsafe, verdict)}</>}</td>
      <td data-head={words.slip} className={graded?.explanation.slipName === undefined ? "none" : ""}>{graded?.explanation.slipName ?? words.noSlip}</td>
    </tr>
  );
};

/** Every question of a sheet in one line: what was said, what is right, the verdict and the slip. */
export const ResultTable = ({ state }: { readonly state: SheetState }) => (
  <table className="plain result-table">
    <thead><tr>{[words.no, words.asked, words.said, words.accepted, words.verdict, words.slip].map((head) => <th key={head} scope="col">{head}</th>)}</tr></thead>
    <tbody>{state.items.map((item, at) => <Row key={item.seed} item={item} at={at} graded={state.graded.get(item.seed)} />)}</tbody>
  </table>
);
