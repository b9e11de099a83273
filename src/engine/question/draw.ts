import type { LocalList } from "../kit/local-list.ts";
import { placesOf } from "../quantity/places.ts";
import { chanceFor } from "../random/chance.ts";
import { type Seed, seedText } from "../random/seed.ts";
import type { Family } from "./family.ts";
import { type Draw, type GivenSpec, type Language, LANGUAGES } from "./family-head.ts";
import { signature } from "./behind.ts";
import type { Item, ShownGiven } from "./item.ts";
import { rulesOf } from "./kinds/rules.ts";
import { type Say, sayOf } from "./say.ts";

/** A draw whose slips coincide is taken again from the next numbers of the same generator, at most this often. */
const MOST_REDRAWS = 64;
const LEAST_SLIPS = 2;

/** True where the answer and all slips that apply would be typed differently, at least two slips apply, and nothing is given away. */
const isTellingApart = (family: Family, draw: Draw): boolean => {
  const rules = rulesOf(family);
  if (rules.isGivenAway?.(family, draw)) return false;
  const slips = rules.slips(family, draw);
  if (slips.length < LEAST_SLIPS) return false;
  const met = new Set([signature(rules.answer(family, draw))]);
  for (const { response } of slips) met.add(signature(response));
  return met.size === slips.length + 1;
};

const labelOf = (label: string | ((say: Say) => string), say: Say): string => (typeof label === "string" ? label : label(say));

const shownGiven = (spec: GivenSpec, draw: Draw, label: string): ShownGiven => {
  const origin = draw.origins?.[spec.key];
  return {
    key: spec.key,
    label,
    unit: spec.unit,
    text: (draw.givens[spec.key] as number).toFixed(placesOf(spec.step)),
    from: origin?.from ?? "case",
    ...(origin?.entry === undefined ? {} : { entry: origin.entry }),
  };
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
  const { kind, id, code, module, version, unsafe, objectives, givens } = family;
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
    about: draw.about,
    ...(draw.local === undefined ? {} : { local: draw.local }),
    givens: givens.filter(({ key }) => key in draw.givens).map((spec) => shownGiven(spec, draw, labelOf(words.givens[spec.key] ?? spec.key, say))),
  };
  return { ...head, ...rulesOf(family).shown(family, draw, say) } as unknown as Item;
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
    return itemOf(family, draw, { seed: text, language: languageOf(language), wording: chance.below(60) });
  }
  throw new RangeError(`seed must give slips that differ within ${MOST_REDRAWS} redraws of ${family.id}, got ${text}`);
};
