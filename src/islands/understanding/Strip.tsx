import type { Interval } from "../../engine/evidence/wilson.ts";
import { cohortWordsOf } from "../../facts/cohort-words.ts";
import { filled } from "../../facts/words.ts";
import { percentText } from "./say.ts";

const words = cohortWordsOf("en").objectives;
const WIDE = 140;
const HIGH = 18;
const MIDDLE = 9;
const EDGE = 6;

const x = (share: number): number => EDGE + share * (WIDE - 2 * EDGE);

/** A share and its interval on a rule from none to all, ticked at every quarter. */
export const Strip = ({ share, interval }: { readonly share: number; readonly interval: Interval }) => {
  const gaps = { low: percentText(interval.low), high: percentText(interval.high), share: percentText(share) };
  return (
    <svg className="strip-plot" viewBox={`0 0 ${WIDE} ${HIGH}`} width={WIDE} height={HIGH} role="img" aria-label={filled(words.strip, gaps)}>
      <path className="ticks" d={`M${x(0)} 17H${x(1)}${[0, 0.25, 0.5, 0.75, 1].map((at) => `M${x(at)} 17V13`).join("")}`} />
      <path className="reach" d={`M${x(interval.low)} ${MIDDLE}H${x(interval.high)}`} />
      <circle className="found" cx={x(share)} cy={MIDDLE} r="4" />
    </svg>
  );
};
