import { toNumber } from "../../quantity/decimal.ts";
import { withUnit } from "../../quantity/format.ts";
import { parseQuantity } from "../../quantity/parse.ts";
import { asAsked } from "../../quantity/round.ts";
import type { Ends, RangeFamily } from "../family.ts";
import type { Draw } from "../family-head.ts";
import type { RangeItem } from "../item.ts";
import { type KindRules, type Marked, OTHER_KIND, partly, plainDraw } from "../kind-rules.ts";
import type { RangeResponse } from "../response.ts";
import { perDraw } from "../per-draw.ts";

const asResponse = ({ roundTo }: RangeFamily, { from, to }: Ends): RangeResponse =>
  ({ kind: "range", from: asAsked(from, roundTo, "nearest"), to: asAsked(to, roundTo, "nearest") });

const applying = perDraw((family: RangeFamily, draw: Draw) =>
  family.slips.flatMap(({ id, gives }) => {
    const given = gives(draw);
    return given === null ? [] : [{ id, response: asResponse(family, given) }];
  }));

const read = (family: RangeFamily, text: string, ask: string): number | Marked => {
  const reading = parseQuantity(text, family.unit);
  if ("value" in reading) return toNumber(reading.value);
  const { reason } = reading;
  return { verdict: "not-recognised", reason, score: 0, parts: [{ ask, verdict: "not-recognised", reason }] };
};

/** Share of the true range that the typed one holds, over the length of both together: a range that is far too wide says little. */
const overlap = (typed: Ends, truth: Ends): number => {
  const common = Math.min(typed.to, truth.to) - Math.max(typed.from, truth.from);
  const whole = Math.max(typed.to, truth.to) - Math.min(typed.from, truth.from);
  return whole <= 0 ? 0 : Math.max(0, common) / whole;
};

/** Ranges: both ends to half a step; where harm lies above, a top end below the true one is unsafe. */
export const rangeRules: KindRules<RangeFamily, RangeItem> = {
  drawOf: plainDraw,
  answer: (family, draw) => asResponse(family, family.solve(draw.givens, draw.about)),
  slips: applying,
  mark: (family, draw, response) => {
    if (response.kind !== "range") return OTHER_KIND;
    const from = read(family, response.from, "from");
    if (typeof from !== "number") return from;
    const to = read(family, response.to, "to");
    if (typeof to !== "number") return to;
    const truth = family.solve(draw.givens, draw.about);
    const half = family.roundTo / 2 + family.roundTo / GRAIN;
    const isRight = Math.abs(from - truth.from) <= half && Math.abs(to - truth.to) <= half;
    if (isRight) return { verdict: "right", score: 1, parts: [] };
    return { verdict: partly(family.unsafe && to < truth.to - half), score: Math.min(0.99, overlap({ from, to }, truth)), parts: [] };
  },
  shown: (family) => ({ unit: family.unit, roundTo: String(family.roundTo) }),
  compare: (family, item, { response }) => {
    const truth = asResponse(family, family.solve(plainDraw(item).givens, item.about));
    const text = ({ from, to }: RangeResponse): string => `${from} to ${withUnit(to, family.unit)}`;
    const yours = response.kind === "range" ? { yours: text(response) } : {};
    return [{ ask: "range", label: "range", ...yours, answer: text(truth), accepted: text(truth) }];
  },
};

/** Ends that a double puts a hair beyond half a step still count. */
const GRAIN = 1_000_000;
