import { memo } from "react";
import type { ObjectiveFigures } from "../../engine/cohort/by-objective.ts";
import { cohortWordsOf } from "../../facts/cohort-words.ts";
import { Glyph } from "../Glyph.tsx";
import type { Names } from "./names.ts";
import { intervalText, ofText } from "./say.ts";
import { Strip } from "./Strip.tsx";

const { objectives: words, number } = cohortWordsOf("en");

interface RowProps {
  readonly at: number;
  readonly figures: ObjectiveFigures;
  readonly names: Names;
}

const Unsafe = ({ figures: { unsafe, learners } }: Pick<RowProps, "figures">) =>
  unsafe === 0 ? words.nobody : <span className="stop v"><Glyph id="v-unsafe-side" /> {ofText(unsafe, learners)}</span>;

const Row = ({ at, figures, names }: RowProps) => {
  const { objective, module, learners, allRight, interval, commonestSlip } = figures;
  return (
    <tr>
      <td data-head={number} className="n">{at}</td>
      <th scope="row" data-head={words.objective}>{names.objective(objective)} <span className="ref">{module}</span></th>
      <td data-head={words.unsafe}><Unsafe figures={figures} /></td>
      <td data-head={words.right} className="v">{ofText(allRight, learners)}</td>
      <td data-head={words.interval}>{interval === null ? words.noInterval : <><Strip share={allRight / learners} interval={interval} /><span className="v">{intervalText(interval)}</span></>}</td>
      <td data-head={words.slip}>{commonestSlip === null ? words.noSlip : <>{names.slip(commonestSlip.family, commonestSlip.slip)}, <span className="v">{ofText(commonestSlip.learners, commonestSlip.met)}</span></>}</td>
    </tr>
  );
};

/** How the cohort stands on every objective, unsafe first. */
export const ByObjective = memo(({ figures, names }: { readonly figures: readonly ObjectiveFigures[]; readonly names: Names }) => (
  <section>
    <h3 id="by-objective">{words.title}</h3>
    <p className="note">{words.lead}</p>
    <table className="plain result-table cohort">
      <thead><tr>{[number, words.objective, words.unsafe, words.right, words.interval, words.slip].map((head) => <th key={head} scope="col">{head}</th>)}</tr></thead>
      <tbody>{figures.map((one, index) => <Row key={one.objective} at={index + 1} figures={one} names={names} />)}</tbody>
    </table>
  </section>
));
