import type { FamilyPlan } from "./family-plan.ts";
import { camelOf } from "./names.ts";
import { sumText } from "./sum-text.ts";

const quoted = (text: string): string => JSON.stringify(text);

/** Cautions that most questions of a module carry. */
const CAUTIONS_OF: Readonly<Record<string, readonly string[]>> = { M05: ["C15"], M07: ["C15"], M12: ["C4"] };

/** What families of every kind declare, with a remark beside each line that an author will want to change. */
export const headLines = (plan: FamilyPlan): readonly string[] => [
  `  kind: "${plan.kind}",`,
  `  id: "${plan.id}",`,
  `  code: "${plan.code}",`,
  `  module: "${plan.module}",`,
  "  // 0 is a draft. Version 1 holds its questions for ever: set it when a second reader has been through fifty of them.",
  "  version: 0,",
  "  firstWave: false,",
  "  // True where a wrong answer could hurt somebody; then say above or below which side.",
  "  unsafe: false,",
  `  objectives: ["${plan.objective}"],`,
  "  // Ledger entries with their revision, such as \"zone-width.8-10@1\", and the papers behind them.",
  "  reads: [],",
  "  sources: [],",
  "  // C3 beside a measured length, C4 beside a dose, C9 beside an adult value: the check says which is missing.",
  `  cautions: [${(CAUTIONS_OF[plan.module] ?? []).map(quoted).join(", ")}],`,
];

const COMMON_IMPORT = 'import { CHILDREN, HOSPITALS } from "../m01/common.ts";';

const orderText = (plan: FamilyPlan): string => `import type { OrderFamily } from "../../engine/question/family.ts";
${COMMON_IMPORT}

/** The cards that are laid out; leave some out in some draws, so that a learner reads. */
const CARDS = ["look", "say", "set", "look-again"] as const;

/** ${plan.code}: ${plan.title}. */
export const ${camelOf(plan.id)}: OrderFamily = {
${headLines(plan).join("\n")}
  givens: [],
  // One card must come before another; an edge with critical: true hurts somebody when it is broken.
  edges: [
    { before: "look", after: "say" },
    { before: "say", after: "set" },
    { before: "set", after: "look-again" },
  ],
  draw: (chance) => ({ givens: {}, about: { child: chance.pick(CHILDREN), hospital: chance.pick(HOSPITALS) }, shown: chance.shuffled(CARDS) }),
  // A slip is an edge that people break.
  slips: [
    { id: "said-before-looking", breaks: ["look", "say"] },
    { id: "set-before-saying", breaks: ["say", "set"] },
  ],
  words: {
    en: {
      title: ${quoted(plan.title)},
      // Three wordings of the same case or more.
      stems: [
        (say) => [\`\${say.about("child")} lies ready at \${say.about("hospital")}.\`],
        (say) => [\`At \${say.about("hospital")} the sheet has four lines, and nobody has read them yet. The child is \${say.about("child")}.\`],
        (say) => [\`You stand beside \${say.about("child")} at \${say.about("hospital")}, and it is your turn.\`],
      ],
      question: "In which order is it done?",
      givens: {},
      cards: { look: "Look", say: "Say aloud what you see", set: "Set it", "look-again": "Look again" },
      slips: {
        "said-before-looking": { name: "said before looking", because: () => ["What is said first is what was expected. Look, then say."] },
        "set-before-saying": { name: "set before saying", because: () => ["Nobody could object any more. Say it, then set it."] },
      },
      working: () => ["Look, say, set, look again.", "Common practice, no source."],
      right: () => ["Each step can still be stopped by the one before it."],
      off: () => ["Ask of each card what it needs to be done already."],
    },
  },
};
`;

const judgeText = (plan: FamilyPlan): string => `import type { JudgeFamily, Judgement } from "../../engine/question/family.ts";
import type { Draw } from "../../engine/question/family-head.ts";
${COMMON_IMPORT}

/** The cases: what is said, and what is right to do about it. */
const CASES: Readonly<Record<string, { readonly text: string; readonly judgement: Judgement }>> = {
  measured: { text: "The number was measured on this line, in children of this age.", judgement: { picks: "take", reasons: ["same-line"] } },
  sideways: { text: "The number was measured across the line, in children of this age.", judgement: { picks: "leave", reasons: ["other-line"] } },
};

const caseOf = (draw: Pick<Draw, "about">): { readonly text: string; readonly judgement: Judgement } => {
  const found = CASES[draw.about["case"] ?? ""];
  if (found === undefined) throw new RangeError(\`case must be one of \${Object.keys(CASES).join(", ")}, got \${draw.about["case"]}\`);
  return found;
};

/** ${plan.code}: ${plan.title}. */
export const ${camelOf(plan.id)}: JudgeFamily = {
${headLines(plan).join("\n")}
  givens: [],
  options: ["take", "leave", "ask"],
  reasons: ["same-line", "other-line", "habit"],
  draw: (chance) => ({ givens: {}, about: { case: chance.pick(Object.keys(CASES)), child: chance.pick(CHILDREN), hospital: chance.pick(HOSPITALS) } }),
  decide: (draw) => caseOf(draw).judgement,
  // A slip is another decision, or the right one for a wrong reason.
  slips: [
    { id: "the-other-way", gives: (draw) => ({ ...caseOf(draw).judgement, picks: caseOf(draw).judgement.picks === "take" ? "leave" : "take" }) },
    { id: "out-of-habit", gives: (draw) => ({ ...caseOf(draw).judgement, reasons: ["habit"] }) },
  ],
  words: {
    en: {
      title: ${quoted(plan.title)},
      // Three wordings of the same case or more.
      stems: [
        (say) => [\`\${say.about("child")}, at \${say.about("hospital")}.\`, caseOf({ about: { case: say.about("case") } }).text],
        (say) => [caseOf({ about: { case: say.about("case") } }).text, \`It is offered for \${say.about("child")} at \${say.about("hospital")}.\`],
        (say) => [\`A colleague at \${say.about("hospital")} has a number for \${say.about("child")}.\`, caseOf({ about: { case: say.about("case") } }).text],
      ],
      question: "What do you do with it, and why?",
      givens: {},
      options: { take: "Take it", leave: "Leave it", ask: "Ask somebody else first" },
      reasons: { "same-line": "It measures what you are about to do", "other-line": "It measures something else", habit: "It is what is always done" },
      slips: {
        "the-other-way": { name: "the other way round", because: () => ["Ask where it was measured, from what and to what."] },
        "out-of-habit": { name: "out of habit", because: () => ["The decision was right and the reason would not have helped the next time."] },
      },
      working: (say) => [caseOf({ about: { case: say.about("case") } }).text, "A number is for the line on which it was measured."],
      right: () => ["A number is for the line on which it was measured."],
      off: () => ["Ask where it was measured, from what and to what."],
    },
  },
};
`;

/** The file of a new family: it already keeps the laws, and every line that is the author's says so. */
export const familyText = (plan: FamilyPlan): string => {
  if (plan.kind === "order") return orderText(plan);
  return plan.kind === "judge" ? judgeText(plan) : sumText(plan, headLines(plan));
};
