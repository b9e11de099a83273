import { withEnd, saysUnit } from "../check/unit-ends.ts";
import type { FamilyPlan, PlannedGiven } from "./family-plan.ts";
import { camelOf, slugOf } from "./names.ts";

const MOST_PLACES = 6;
const MOST_WORDS = 3;
const placesOf = (step: number): number => String(step).split(".")[1]?.length ?? 0;

/** Lengths are added; numbers of different units are multiplied, as a dose and a weight are. */
const isProduct = ({ givens }: FamilyPlan): boolean => new Set(givens.map(({ unit }) => unit)).size > 1;

const constantOf = ({ key }: PlannedGiven): string => key.replace(/([a-z0-9])([A-Z])/g, "$1_$2").toUpperCase();

/** The finest digit that the answer of any draw can have, so that nothing is lost in rounding. */
const roundTo = (plan: FamilyPlan): string => {
  const [first] = plan.givens;
  if (first !== undefined && !isProduct(plan) && plan.givens.every(({ step }) => step === first.step)) return String(first.step);
  const places = plan.givens.map(({ step }) => placesOf(step));
  const needed = isProduct(plan) ? places.reduce((sum, each) => sum + each, 0) : Math.max(...places);
  return String(1 / 10 ** Math.min(MOST_PLACES, needed));
};

/** Name of the answer: the first words of its title, with the ending of its unit. */
const askOf = ({ title, askUnit }: FamilyPlan): string => {
  const name = camelOf(slugOf(title).split("-").slice(0, MOST_WORDS).join("-"));
  return saysUnit(name, askUnit) ? name : withEnd(name, askUnit);
};

const valueLine = ({ key }: PlannedGiven): string => `given(givens, "${key}")`;

const allTogether = (plan: FamilyPlan, givens: readonly PlannedGiven[]): string => {
  if (givens.length === 1) return valueLine(givens[0] as PlannedGiven);
  return isProduct(plan) ? givens.map(valueLine).join(" * ") : `sumOnGrid(${givens.map(valueLine).join(", ")})`;
};

const specLine = (given: PlannedGiven): string =>
  `const ${constantOf(given)} = { key: "${given.key}", unit: "${given.unit}", least: ${given.least}, greatest: ${given.greatest}, step: ${given.step} } as const;`;

const stems = ({ givens }: FamilyPlan): readonly string[] => {
  const first = givens[0]?.key ?? "";
  return [
    `        (say) => [\`\${say.about("child")} lies ready at \${say.about("hospital")}.\`],`,
    `        (say) => [\`At \${say.about("hospital")} the sheet for \${say.about("child")} has these numbers on it.\`],`,
    `        (say) => [\`You are asked at \${say.about("hospital")}, beside \${say.about("child")}, and \${say.of("${first}")} is what everybody remembers.\`],`,
  ];
};

const words = (plan: FamilyPlan): readonly string[] => {
  const { givens, title } = plan;
  const ask = askOf(plan);
  const last = givens.at(-1);
  const sign = isProduct(plan) ? " × " : " + ";
  const sum = givens.map(({ key }) => `\${say.bare("${key}")}`).join(sign);
  return [
    `      title: ${JSON.stringify(title)},`,
    "      // Three wordings of the same case or more; the numbers are listed under them by themselves.",
    "      stems: [",
    ...stems(plan),
    "      ],",
    `      question: ${JSON.stringify(`How much is it, to ${roundTo(plan)} in the unit shown?`)},`,
    "      // What stands behind a comma says whose number it is: \"Margin, your own\".",
    `      givens: { ${givens.map(({ key, label }) => `${key}: ${JSON.stringify(label)}`).join(", ")} },`,
    `      asks: { ${ask}: ${JSON.stringify(title)} },`,
    '      says: { none: "No value here", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },',
    "      slips: {",
    `        "last-left-out": { name: "${last?.label.toLowerCase()} left out", because: (say) => [\`\${say.of("${last?.key}")} belong to it, and were left out.\`] },`,
    `        "last-twice": { name: "${last?.label.toLowerCase()} counted twice", because: (say) => [\`\${say.of("${last?.key}")} are in it once, not twice.\`] },`,
    "      },",
    `      working: (say) => [\`${sum} = \${say.number(answerValue(say, "${ask}"), ${placesOf(Number(roundTo(plan)))})}\`],`,
    '      right: () => ["Every number was used, and each of them once."],',
    '      off: () => ["Go through the numbers one by one: what is each of them for?"],',
    `      inverse: (say, { text }) => [\`If it were \${text} instead of \${say.of("${last?.key}")}.\`],`,
  ];
};

/** What is asked, drawn and solved, and what people do instead. */
const sums = (plan: FamilyPlan): readonly string[] => {
  const { givens, id, askUnit } = plan;
  const ask = askOf(plan);
  const last = givens.at(-1) as PlannedGiven;
  const twice = isProduct(plan) ? `2 * ${allTogether(plan, givens)}` : `sumOnGrid(${[...givens, last].map(valueLine).join(", ")})`;
  return [
    `  givens: [${givens.map(constantOf).join(", ")}],`,
    "  // Upper limits and doses are rounded down, needs up; safeSide says on which side nobody is hurt.",
    `  asks: [{ id: "${ask}", unit: "${askUnit}", roundTo: ${roundTo(plan)}, rounding: "nearest", safeSide: "none" }],`,
    "  draw: (chance) => ({",
    `    givens: { ${givens.map((one) => `${one.key}: chance.onGrid(${constantOf(one)})`).join(", ")} },`,
    "    about: { child: chance.pick(CHILDREN), hospital: chance.pick(HOSPITALS) },",
    "  }),",
    `  solve: (givens) => ({ ${ask}: ${camelOf(id)}Of(givens) }),`,
    "  // What people do instead, as formulas; null where one does not apply. Each needs a name and a sentence below.",
    "  slips: [",
    `    { id: "last-left-out", gives: ({ givens }) => ({ ${ask}: ${allTogether(plan, givens.slice(0, -1))} }) },`,
    `    { id: "last-twice", gives: ({ givens }) => ({ ${ask}: ${twice} }) },`,
    "  ],",
    `  inverseOf: "${last.key}",`,
  ];
};

/** The file of a new family of sums. */
export const sumText = (plan: FamilyPlan, head: readonly string[]): string => {
  const { givens, id, code, title } = plan;
  const imports = isProduct(plan) ? [] : ['import { sumOnGrid } from "../../engine/quantity/grid.ts";'];
  return [
    ...imports,
    'import type { SumFamily } from "../../engine/question/family.ts";',
    'import type { Givens } from "../../engine/question/family-head.ts";',
    'import { answerValue, CHILDREN, given, HOSPITALS } from "../m01/common.ts";',
    "",
    "// The numbers that the question states: the key ends in its unit, the step is the precision shown.",
    ...givens.map(specLine),
    "",
    "/** The answer to displayed numbers, and nothing else: grading, working and figure all come from here. */",
    `const ${camelOf(id)}Of = (givens: Givens): number => ${allTogether(plan, givens)};`,
    "",
    `/** ${code}: ${title}. */`,
    `export const ${camelOf(id)}: SumFamily = {`,
    ...head,
    ...sums(plan),
    "  words: {",
    "    en: {",
    ...words(plan),
    "    },",
    "  },",
    "};",
    "",
  ].join("\n");
};
