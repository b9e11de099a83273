import type { BrokenEdge } from "../engine/question/kind-rules.ts";
import { filled, type Words } from "../facts/words.ts";

interface BrokenRulesProps {
  readonly broken: readonly BrokenEdge[];
  readonly words: Words;
}

/** More than a few at once are not read; the rest stands behind a line. */
const AT_ONCE = 4;

const Edge = ({ edge: { first, later, reason, whose, isCritical }, words }: { readonly edge: BrokenEdge; readonly words: Words }) => (
  <li className={isCritical ? "critical" : undefined}>
    {isCritical ? <b>{words.parts.brokenCritical} </b> : null}
    <span>{filled(words.parts.brokenEdge, { first, later })} </span>
    {reason === undefined ? null : <span>{reason} </span>}
    {whose === undefined ? null : <span className="whose">{filled(words.parts.brokenWhose, { whose })}</span>}
  </li>
);

/** The rules between steps that an order broke, each with its reason and whose rule it is. */
export const BrokenRules = ({ broken, words }: BrokenRulesProps) => {
  if (broken.length === 0) return null;
  const rest = broken.slice(AT_ONCE);
  const list = (edges: readonly BrokenEdge[]) => <ul className="broken">{edges.map((edge) => <Edge key={`${edge.first}>${edge.later}`} edge={edge} words={words} />)}</ul>;
  return (
    <>
      <p className="partly">{broken.length === 1 ? words.parts.brokenOne : filled(words.parts.broken, { count: String(broken.length) })}</p>
      {list(broken.slice(0, AT_ONCE))}
      {rest.length === 0 ? null : <details className="more"><summary>{filled(words.parts.brokenMore, { count: String(rest.length) })}</summary>{list(rest)}</details>}
    </>
  );
};
