import type { LocalList } from "../kit/local-list.ts";
import { placesOf } from "../quantity/places.ts";
import { chanceFor } from "../random/chance.ts";
import { type Seed, seedText } from "../random/seed.ts";
import type { Family } from "./family.ts";
import { type CommonWords, type Draw, type GivenSpec, type Language, LANGUAGES } from "./family-head.ts";
import { rememberDraw, signature } from "./behind.ts";
import type { Item, ShownGiven } from "./item.ts";
import type { KindRules } from "./kind-rules.ts";
import { rulesOf } from "./kinds/rules.ts";
import { type Say, sayOf } from "./say.ts";

/** A draw whose slips coincide is taken again from the next numbers of the same generator, at most this often. */
const MOST_REDRAWS = 64;
const LEAST_SLIPS = 2;

/** True where no two of the answer and the slips have the same text. */
const areToldApart = (rules: KindRules<Family, Item>, family: Family, draw: Draw): boolean => {
  const slips = rules.slips(family, draw);
  if (slips.length < LEAST_SLIPS) return false;
  const met = new Set([signature(rules.answer(family, draw))]);
  for (const { response } of slips) met.add(signature(response));
  return met.size === slips.length + 1;
};

/** True where the answer and all slips that apply would be typed differently, at least two slips apply, and nothing is given away. */
const isTellingApart = (family: Family, draw: Draw): boolean => {
  const rules = rulesOf(family);
  if (rules.isGivenAway?.(family, draw)) return false;
  return rules.isTellingApart?.(family, draw, LEAST_SLIPS) ?? areToldApart(rules, family, draw);
};

const labelOf = (label: string | ((say: Say) => string), say: Say): string => (typeof label === "string" ? label : label(say));

const shownGiven = (spec: GivenSpec, draw: Draw, label: string): ShownGiven => {
  const { key, unit, step } = spec;
  const origin = draw.origins?.[key];
  const text = (draw.givens[key] as number).toFixed(placesOf(step));
  const shown: ShownGiven = { key, label, unit, text, from: origin?.from ?? "case" };
  return origin?.entry === undefined ? shown : { ...shown, entry: origin.entry };
};

const shownGivens = (family: Family, say: Say, labels: CommonWords["givens"]): readonly ShownGiven[] => {
  const { draw } = say;
  const shown: ShownGiven[] = [];
  for (const spec of family.givens) {
    if (spec.key in draw.givens) shown.push(shownGiven(spec, draw, labelOf(labels[spec.key] ?? spec.key, say)));
  }
  return shown;
};

const languageOf = (language: string): Language => {
  const known = LANGUAGES.find((one) => one === language);
  if (known === undefined) throw new RangeError(`language must be one of ${LANGUAGES.join(", ")}, got ${language}`);
  return known;
};

const itemOf = (family: Family, draw: Draw, { seed, language, wording }: { seed: string; language: Language; wording: number }): Item => {
  const words = family.words[language];
  const say = sayOf(family, draw);
  const stem = words.stems[wording % words.stems.length];
  const { kind, id, code, module, version, unsafe, objectives } = family;
  const head = {
    kind,
    family: id,
    code,
    module,
    version,
    seed,
    language,
    unsafe,
    objectives,
    title: words.title,
    stem: stem === undefined ? [] : stem(say),
    question: words.question,
    cautions: draw.cautions ?? family.cautions,
    sources: draw.sources ?? family.sources,
    about: { ...draw.about },
    ...(draw.local === undefined ? {} : { local: draw.local }),
    givens: shownGivens(family, say, words.givens),
  };
  return Object.assign(head, rulesOf(family).shown(family, draw, say)) as unknown as Item;
};

interface Asked {
  readonly seed: Seed;
  readonly language?: string;
  /** The local list that the draw reads; the site's own where absent. */
  readonly local?: LocalList | undefined;
}

/** Draws one item of a family: the same family version, seed, language and local list give the same item for ever. */
export const drawItem = (family: Family, { seed, language = "en", local }: Asked): Item => {
  const text = seedText(seed);
  const chance = chanceFor(family.id, family.version, text);
  for (let redraw = 0; redraw <= MOST_REDRAWS; redraw += 1) {
    const draw = family.draw(chance, local);
    if (!isTellingApart(family, draw)) continue;
    rememberDraw(family, draw);
    return itemOf(family, draw, { seed: text, language: languageOf(language), wording: chance.below(60) });
  }
  throw new RangeError(`seed must give slips that differ within ${MOST_REDRAWS} redraws of ${family.id}, got ${text}`);
};
