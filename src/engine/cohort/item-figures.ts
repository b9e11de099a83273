import { type Interval, wilson } from "../evidence/wilson.ts";
import { alphaWithoutEach, covariancesOf } from "./alpha.ts";
import { type Figure, givenOr, LEAST_FOR_ITEMS, LEAST_PERSONS, refused, type Refusal } from "./figure.ts";
import { firstAnswers, groupedBy, isRight } from "./first-marks.ts";
import { type FixedForm, fixedForm } from "./fixed-form.ts";
import { itemRest } from "./item-rest.ts";
import type { Paper } from "./paper.ts";
import { isConstant, itemScores, sum } from "./score-matrix.ts";

/** How one item behaved. Shares and their intervals are counts and stand from five persons on; the rest asks for more. */
export interface ItemFigures {
  /** Place on the sheet; null where there is no fixed sheet, and the answers to a family are taken together. */
  readonly slot: number | null;
  readonly family: string;
  readonly version: number;
  readonly answered: number;
  readonly right: number;
  /** Difficulty: the share of right answers. */
  readonly difficulty: Figure;
  readonly interval: Interval | null;
  /** Correlation with the total of the other items. */
  readonly discrimination: Figure;
  /** Reliability of the sheet without this item. */
  readonly reliabilityWithout: Figure;
}

interface Counted {
  readonly family: string;
  readonly version: number;
  readonly answered: number;
  readonly right: number;
}

const shareOf = ({ family, version, answered, right }: Counted) => {
  const isShown = answered >= LEAST_PERSONS;
  return {
    family,
    version,
    answered,
    right,
    difficulty: isShown ? givenOr(right / answered, "nobody") : refused(answered === 0 ? "nobody" : "under-five"),
    interval: isShown ? wilson({ events: right, total: answered }) : null,
  };
};

/** Why the figures of a fixed sheet may not be computed, if so. */
export const refusalOf = (form: FixedForm | null): Refusal | null => {
  if (form === null) return "no-fixed-form";
  return form.learners.length < LEAST_FOR_ITEMS ? "under-thirty" : null;
};

const restReason = ({ rights }: FixedForm, item: number): Refusal => (isConstant(itemScores(rights, item)) ? "item-alike" : "rest-alike");

const onForm = (form: FixedForm): readonly ItemFigures[] => {
  const refusal = refusalOf(form);
  const rest = refusal === null ? itemRest(form.rights) : [];
  const without = refusal === null ? alphaWithoutEach(covariancesOf(form.rights)) : [];
  const tooShort: Refusal = form.items.length < 3 ? "one-item" : "totals-alike";
  return form.items.map(({ slot, family, version }, item) => ({
    slot,
    ...shareOf({ family, version, answered: form.rights.length, right: sum(itemScores(form.rights, item)) }),
    discrimination: refusal === null ? givenOr(rest[item] ?? null, restReason(form, item)) : refused(refusal),
    reliabilityWithout: refusal === null ? givenOr(without[item] ?? null, tooShort) : refused(refusal),
  }));
};

/** By family, each learner's first answer to it: what is left to say where no two learners had the same sheet. */
const byFamily = (papers: readonly Paper[]): readonly ItemFigures[] =>
  [...groupedBy(firstAnswers(papers), ({ mark }) => `${mark.family} ${mark.version}`).values()].flatMap((answers) => {
    const firsts = [...groupedBy(answers, ({ learner }) => learner).values()].flatMap(([first]) => (first === undefined ? [] : [first.mark]));
    const [mark] = firsts;
    if (mark === undefined) return [];
    const { family, version } = mark;
    const counted = { family, version, answered: firsts.length, right: firsts.filter(isRight).length };
    return [{ slot: null, ...shareOf(counted), discrimination: refused("no-fixed-form"), reliabilityWithout: refused("no-fixed-form") }];
  });

/** Figures of every item; of a fixed sheet by place, otherwise by family. */
export const itemFigures = (papers: readonly Paper[]): readonly ItemFigures[] => {
  const form = fixedForm(papers);
  return form === null ? byFamily(papers) : onForm(form);
};
