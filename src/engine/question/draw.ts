import { chanceFor } from "../random/chance.ts";
import { type Seed, seedText } from "../random/seed.ts";
import { type Draw, type GivenSpec, type Language, LANGUAGES, type SumFamily } from "./family.ts";
import type { ShownGiven, SumItem } from "./item.ts";
import { placesOf, type Say, sayFor } from "./say.ts";
import { signature, typedAs } from "./solve.ts";

/** A draw whose slips coincide is taken again from the next numbers of the same generator, at most this often. */
const MOST_REDRAWS = 64;
const LEAST_SLIPS = 2;

/** True where the answer and all slips that apply would be typed differently, and at least two slips apply. */
const isTellingApart = (family: SumFamily, draw: Draw): boolean => {
  const seen = new Set([signature(typedAs(family, family.solve(draw.givens)))]);
  let slips = 0;
  for (const slip of family.slips) {
    const gives = slip.gives(draw);
    if (gives === null) continue;
    const typed = signature(typedAs(family, gives));
    if (seen.has(typed)) return false;
    seen.add(typed);
    slips += 1;
  }
  return slips >= LEAST_SLIPS;
};

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

const labelOf = (label: string | ((say: Say) => string), say: Say): string => (typeof label === "string" ? label : label(say));

const itemOf = (family: SumFamily, draw: Draw, { seed, language, wording }: { seed: string; language: Language; wording: number }): SumItem => {
  const words = family.words[language];
  const say = sayFor(family.givens, draw, family.solve(draw.givens));
  const stem = words.stems[wording % words.stems.length];
  const { id, code, module, version, unsafe, objectives, cautions, sources, asks } = family;
  return {
    kind: "sum",
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
    cautions,
    sources,
    about: draw.about,
    givens: family.givens.filter(({ key }) => key in draw.givens).map((spec) => shownGiven(spec, draw, labelOf(words.givens[spec.key] ?? spec.key, say))),
    asks: asks.map((ask) => ({ ...ask, roundTo: String(ask.roundTo), label: words.asks[ask.id] ?? ask.id })),
    says: words.says,
  };
};

/** Draws one item of a family: the same family version, seed and language give the same item for ever. */
export const drawItem = (family: SumFamily, { seed, language = "en" }: { seed: Seed; language?: string }): SumItem => {
  const text = seedText(seed);
  const chance = chanceFor(family.id, family.version, text);
  for (let redraw = 0; redraw <= MOST_REDRAWS; redraw += 1) {
    const draw = family.draw(chance);
    if (!isTellingApart(family, draw)) continue;
    return itemOf(family, draw, { seed: text, language: languageOf(language), wording: chance.below(60) });
  }
  throw new RangeError(`seed must give slips that differ within ${MOST_REDRAWS} redraws of ${family.id}, got ${text}`);
};
