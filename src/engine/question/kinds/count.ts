import { toNumber } from "../../quantity/decimal.ts";
import { parseQuantity } from "../../quantity/parse.ts";
import type { CountFamily } from "../family.ts";
import type { Draw } from "../family-head.ts";
import type { CountItem } from "../item.ts";
import { type KindRules, type Marked, missingPart, OTHER_KIND, partly, plainDraw } from "../kind-rules.ts";
import type { CountResponse } from "../response.ts";
import { perDraw } from "../per-draw.ts";

type ByClass = Readonly<Record<string, number>>;

const asResponse = (byClass: ByClass): CountResponse => ({ kind: "count", byClass: Object.fromEntries(Object.entries(byClass).map(([id, value]) => [id, String(value)])) });

const truthOf = perDraw((family: CountFamily, draw: Draw) => family.truth(draw));

const applying = perDraw((family: CountFamily, draw: Draw): readonly { readonly id: string; readonly given: ByClass }[] =>
  family.slips.flatMap(({ id, gives }) => {
    const given = gives(draw);
    return given === null ? [] : [{ id, given }];
  }));

const unreadable = (ask: string, reason: Marked["reason"]): Marked => ({
  verdict: "not-recognised", score: 0, ...(reason ? { reason } : {}),
  parts: [{ ask, verdict: "not-recognised", ...(reason ? { reason } : {}) }],
});

/** Typed numbers by class, or why they cannot be read. */
const read = (family: CountFamily, byClass: Readonly<Record<string, string>>): { readonly values: ByClass } | { readonly marked: Marked } => {
  const values: Record<string, number> = {};
  for (const id of family.classes) {
    const text = byClass[id] ?? "";
    if (text.trim() === "") return { marked: missingPart(id) };
    const reading = parseQuantity(text, "pieces");
    if (!("value" in reading)) return { marked: unreadable(id, reading.reason) };
    values[id] = toNumber(reading.value);
  }
  return { values };
};

const slipIn = (family: CountFamily, draw: Draw, values: ByClass): string | undefined => {
  const truth = truthOf(family, draw);
  return applying(family, draw).find(({ given }) => family.classes.some((id) => given[id] !== truth[id] && given[id] === values[id]))?.id;
};

/** Counts: what is missing or too much in each class; a class that is short and called whole is unsafe. */
export const countRules: KindRules<CountFamily, CountItem> = {
  drawOf: plainDraw,
  answer: (family, draw) => asResponse(truthOf(family, draw)),
  slips: (family, draw) => applying(family, draw).map(({ id, given }) => ({ id, response: asResponse(given) })),
  mark: (family, draw, response) => {
    if (response.kind !== "count" || !Object.keys(response.byClass).every((id) => family.classes.includes(id))) return OTHER_KIND;
    const reading = read(family, response.byClass);
    if ("marked" in reading) return reading.marked;
    const truth = truthOf(family, draw);
    const right = family.classes.filter((id) => reading.values[id] === truth[id]).length;
    const score = right / family.classes.length;
    if (score === 1) return { verdict: "right", score, parts: [] };
    const isUnsafe = family.unsafe && family.classes.some((id) => (truth[id] ?? 0) < 0 && (reading.values[id] ?? 0) > (truth[id] ?? 0));
    const slip = slipIn(family, draw, reading.values);
    return { verdict: partly(isUnsafe), score, parts: [], ...(slip === undefined ? {} : { slip }) };
  },
  shown: (family) => ({ classes: family.classes.map((id) => ({ id, text: family.words.en.classes[id] ?? id })) }),
  compare: (family, item, { response }) => {
    const truth = family.truth(plainDraw(item));
    return item.classes.map(({ id, text }) => {
      const answer = String(truth[id] ?? 0).replace("-", "−");
      const yours = response.kind === "count" ? { yours: (response.byClass[id] ?? "").replace("-", "−") } : {};
      return { ask: id, label: text, ...yours, answer, accepted: answer };
    });
  },
};
