import { toNumber } from "../../quantity/decimal.ts";
import { withUnit } from "../../quantity/format.ts";
import { parseQuantity } from "../../quantity/parse.ts";
import type { LineFamily, PlacedLine } from "../family.ts";
import type { LineItem } from "../item.ts";
import { type KindRules, type Marked, OTHER_KIND, partly, plainDraw } from "../kind-rules.ts";
import type { LineResponse } from "../response.ts";

const asResponse = ({ angleDeg, depthMm }: PlacedLine): LineResponse => ({ kind: "line", angleDeg: String(angleDeg), depthMm: String(depthMm) });

const read = (response: LineResponse): PlacedLine | Marked => {
  const angle = parseQuantity(response.angleDeg, "deg");
  if (!("value" in angle)) return { verdict: "not-recognised", reason: angle.reason, score: 0, parts: [{ ask: "angleDeg", verdict: "not-recognised", reason: angle.reason }] };
  const depth = parseQuantity(response.depthMm, "mm");
  if (!("value" in depth)) return { verdict: "not-recognised", reason: depth.reason, score: 0, parts: [{ ask: "depthMm", verdict: "not-recognised", reason: depth.reason }] };
  return { angleDeg: toNumber(angle.value), depthMm: toNumber(depth.value) };
};

const textOf = ({ angleDeg, depthMm }: { readonly angleDeg: string; readonly depthMm: string }): string => `${withUnit(angleDeg, "deg")}, ${withUnit(depthMm, "mm")}`;

const gridText = ({ least, greatest, step }: { readonly least: number; readonly greatest: number; readonly step: number }) => ({ least: String(least), greatest: String(greatest), step: String(step) });

/** Lines: an angle and a depth in the model; too near to a structure or beyond the window is unsafe. */
export const lineRules: KindRules<LineFamily, LineItem> = {
  drawOf: plainDraw,
  answer: (family, draw) => asResponse(family.answer(draw)),
  slips: (family, draw) => family.slips.flatMap(({ id, gives }) => {
    const given = gives(draw);
    return given === null ? [] : [{ id, response: asResponse(given) }];
  }),
  mark: (family, draw, response) => {
    if (response.kind !== "line") return OTHER_KIND;
    const line = read(response);
    if ("verdict" in line) return line;
    const { isRight, isUnsafe, score, slip } = family.check(draw, line);
    if (isRight) return { verdict: "right", score: 1, parts: [] };
    return { verdict: partly(family.unsafe && isUnsafe), score, parts: [], ...(slip === undefined ? {} : { slip }) };
  },
  shown: (family) => ({ angle: gridText(family.angle), depth: gridText(family.depth) }),
  compare: (family, item, { response }) => {
    const answer = textOf(asResponse(family.answer(plainDraw(item))));
    const yours = response.kind === "line" ? { yours: textOf(response) } : {};
    return [{ ask: "line", label: "line", ...yours, answer, accepted: answer }];
  },
};
