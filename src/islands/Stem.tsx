import { withUnit } from "../engine/quantity/format.ts";
import type { SumItem } from "../engine/question/item.ts";
import { Valued } from "./Valued.tsx";

/** The case and its givens as a ruled list. */
export const Stem = ({ item }: { readonly item: SumItem }) => (
  <>
    {item.stem.map((sentence) => <p className="stem" key={sentence}><Valued text={sentence} /></p>)}
    <dl className="givens">
      {item.givens.map((given) => (
        <div key={given.key}>
          <dt>{given.label}</dt>
          <dd className="v">{withUnit(given.text, given.unit)}</dd>
        </div>
      ))}
    </dl>
  </>
);
