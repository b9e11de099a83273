import type { NameFamily } from "../family.ts";
import type { Draw } from "../family-head.ts";
import type { NameItem } from "../item.ts";
import { type KindRules, missingPart, OTHER_KIND, partly, plainDraw } from "../kind-rules.ts";
import type { NameResponse } from "../response.ts";
import { perDraw } from "../per-draw.ts";

type Picks = Readonly<Record<string, string>>;

const truthOf = perDraw((family: NameFamily, draw: Draw) => family.truth(draw));

const applying = perDraw((family: NameFamily, draw: Draw): readonly { readonly id: string; readonly given: Picks }[] =>
  family.slips.flatMap(({ id, gives }) => {
    const given = gives(draw);
    return given === null ? [] : [{ id, given }];
  }));

/** A slip that shows in one attribute: the learner's wrong pick is the one that the slip gives. */
const slipIn = (family: NameFamily, draw: Draw, picks: Picks): string | undefined => {
  const truth = truthOf(family, draw);
  return applying(family, draw).find(({ given }) => Object.keys(truth).some((id) => given[id] !== truth[id] && given[id] === picks[id]))?.id;
};

const isKnown = (family: NameFamily, picks: Picks): boolean =>
  Object.entries(picks).every(([id, option]) => option === "" || family.attributes.find((one) => one.id === id)?.options.includes(option));

const optionText = (item: NameItem, id: string, option: string | undefined): string =>
  item.attributes.find((one) => one.id === id)?.options.find((one) => one.id === option)?.text ?? option ?? "";

/** Names: one pick for each attribute, each counted apart. */
export const nameRules: KindRules<NameFamily, NameItem> = {
  drawOf: plainDraw,
  answer: (family, draw) => ({ kind: "name", picks: { ...truthOf(family, draw) } }),
  slips: (family, draw) => applying(family, draw).map(({ id, given }) => ({ id, response: { kind: "name", picks: given } as NameResponse })),
  mark: (family, draw, response) => {
    if (response.kind !== "name" || !isKnown(family, response.picks)) return OTHER_KIND;
    const { picks } = response;
    const open = family.attributes.find(({ id }) => (picks[id] ?? "") === "");
    if (open) return missingPart(open.id);
    const truth = truthOf(family, draw);
    const right = family.attributes.filter(({ id }) => picks[id] === truth[id]).length;
    const score = right / family.attributes.length;
    if (score === 1) return { verdict: "right", score, parts: [] };
    const slip = slipIn(family, draw, picks);
    return { verdict: partly(family.unsafe && (family.isUnsafe?.(draw, picks) ?? false)), score, parts: [], ...(slip === undefined ? {} : { slip }) };
  },
  shown: (family) => {
    const words = family.words.en;
    return {
      attributes: family.attributes.map(({ id, options }) => ({
        id,
        text: words.attributes[id] ?? id,
        options: options.map((option) => ({ id: option, text: words.options[option] ?? option })),
      })),
    };
  },
  compare: (family, item, { response }) => {
    const truth = family.truth(plainDraw(item));
    return item.attributes.map(({ id, text }) => {
      const answer = optionText(item, id, truth[id]);
      const yours = response.kind === "name" ? { yours: optionText(item, id, response.picks[id]) } : {};
      return { ask: id, label: text, ...yours, answer, accepted: answer };
    });
  },
};
