import { memo } from "react";
import type { PlaceComparison } from "../../engine/cohort/places.ts";
import { cohortWordsOf } from "../../facts/cohort-words.ts";
import { filled } from "../../facts/words.ts";
import { intervalText, ofText } from "./say.ts";
import { Strip } from "./Strip.tsx";

const { places: words } = cohortWordsOf("en");

const refusal = (found: PlaceComparison): string | null => {
  if (found.refused === null) return null;
  return found.refused === "under-five" ? filled(words["under-five"], { small: String(found.small), all: String(found.all) }) : words[found.refused];
};

/** Hospitals side by side, or the sentence that says why not. */
export const Hospitals = memo(({ found }: { readonly found: PlaceComparison }) => {
  const why = refusal(found);
  return (
    <section>
      <h3 id="hospitals">{words.title}</h3>
      {why === null ? <p className="note">{words.lead}</p> : <p>{why}</p>}
      {found.places.length === 0 ? null : (
        <table className="plain result-table cohort">
          <thead><tr>{[words.place, words.learners, words.without, words.answers].map((head) => <th key={head} scope="col">{head}</th>)}</tr></thead>
          <tbody>{found.places.map(({ place, learners, withoutUnsafe, interval, answers, right }) => (
            <tr key={place}>
              <th scope="row" data-head={words.place}>{place}</th>
              <td data-head={words.learners} className="v">{learners}</td>
              <td data-head={words.without}><Strip share={withoutUnsafe / learners} interval={interval} /><span className="v">{ofText(withoutUnsafe, learners)}, {intervalText(interval)}</span></td>
              <td data-head={words.answers} className="v">{ofText(right, answers)}</td>
            </tr>
          ))}</tbody>
        </table>
      )}
    </section>
  );
});
