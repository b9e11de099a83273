import type { JudgeFamily, Judgement } from "../family.ts";
import type { Draw } from "../family-head.ts";
import type { JudgeItem } from "../item.ts";
import { type KindRules, missingPart, OTHER_KIND, partly, plainDraw } from "../kind-rules.ts";
import type { JudgeResponse } from "../response.ts";
import { perDraw } from "../per-draw.ts";

const HALF = 0.5;

const asResponse = ({ picks, reasons }: Judgement): JudgeResponse => ({ kind: "judge", picks, reasons: [...reasons] });

const isSame = (first: readonly string[], second: readonly string[]): boolean =>
  first.length === second.length && first.every((reason) => second.includes(reason));

/** Share of reasons named rightly: common ones over all that were named or should have been. */
const overlap = (first: readonly string[], second: readonly string[]): number => {
  const all = new Set([...first, ...second]);
  return all.size === 0 ? 1 : first.filter((reason) => second.includes(reason)).length / all.size;
};

const decided = perDraw((family: JudgeFamily, draw: Draw) => family.decide(draw));

const applying = perDraw((family: JudgeFamily, draw: Draw) =>
  family.slips.flatMap(({ id, gives }) => {
    const given = gives(draw);
    return given === null ? [] : [{ id, given }];
  }));

/** A slip that shows in the decision, or, where the decision is right, in a reason that does not hold. */
const slipIn = (family: JudgeFamily, draw: Draw, response: JudgeResponse): string | undefined => {
  const right = decided(family, draw);
  const slips = applying(family, draw);
  const byPick = slips.find(({ given }) => given.picks !== right.picks && given.picks === response.picks);
  const byReason = slips.find(({ given }) => given.reasons.some((reason) => !right.reasons.includes(reason) && response.reasons.includes(reason)));
  return (byPick ?? byReason)?.id;
};

const textOf = (item: JudgeItem, { picks, reasons }: Judgement): string => {
  const option = item.options.find(({ id }) => id === picks)?.text ?? picks;
  return [option, ...reasons.map((reason) => item.reasons.find(({ id }) => id === reason)?.text ?? reason)].join(" · ");
};

/** Judgements: the decision counts half, the reasons the other half. */
export const judgeRules: KindRules<JudgeFamily, JudgeItem> = {
  drawOf: plainDraw,
  answer: (family, draw) => asResponse(decided(family, draw)),
  slips: (family, draw) => applying(family, draw).map(({ id, given }) => ({ id, response: asResponse(given) })),
  mark: (family, draw, response) => {
    if (response.kind !== "judge") return OTHER_KIND;
    if (response.picks === "") return missingPart("picks");
    if (!family.options.includes(response.picks) || !response.reasons.every((reason) => family.reasons.includes(reason))) return OTHER_KIND;
    const right = decided(family, draw);
    const isDecided = response.picks === right.picks;
    if (isDecided && isSame(response.reasons, right.reasons)) return { verdict: "right", score: 1, parts: [] };
    const isUnsafe = family.unsafe && !isDecided && (family.unsafeOptions?.(draw) ?? []).includes(response.picks);
    const slip = slipIn(family, draw, response);
    const score = isDecided ? HALF + HALF * overlap(response.reasons, right.reasons) : 0;
    return { verdict: partly(isUnsafe), score, parts: [], ...(slip === undefined ? {} : { slip }) };
  },
  shown: (family) => {
    const words = family.words.en;
    return {
      options: family.options.map((id) => ({ id, text: words.options[id] ?? id })),
      reasons: family.reasons.map((id) => ({ id, text: words.reasons[id] ?? id })),
    };
  },
  compare: (family, item, { response }) => {
    const answer = textOf(item, family.decide(plainDraw(item)));
    const yours = response.kind === "judge" ? { yours: textOf(item, response) } : {};
    return [{ ask: "picks", label: "judgement", ...yours, answer, accepted: answer }];
  },
};
