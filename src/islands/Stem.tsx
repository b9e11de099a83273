import { withUnit } from "../engine/quantity/format.ts";
import type { Item } from "../engine/question/item.ts";
import { Valued } from "./Valued.tsx";

/** The case and its givens as a ruled list. */
export const Stem = ({ item }: { readonly item: Item }) => (
  <>
    {item.stem.map((sentence) => <p className="stem" key={sentence}><Valued text={sentence} /></p>)}
    {item.givens.length === 0 ? null : <dl className="givens">
      {item.givens.map((given) => (
        <div key={given.key}>
          <dt>{given.label}</dt>
          <dd className="v">{withUnit(given.text, given.unit)}</dd>
        </div>
      ))}
    </dl>}
  </>
);
