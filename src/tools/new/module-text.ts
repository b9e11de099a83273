import { CAUTION_PLACES } from "../check/caution-places.ts";
import type { FamilyOf } from "./module-objectives.ts";
import { isNone, type ModulePlan, rolesOf } from "./module-plan.ts";

const DRAFT_MINUTES = 20;

const cautionsOf = (code: string, by: "author" | "layout"): readonly string[] =>
  CAUTION_PLACES.filter((place) => place.by === by && (place.modules === "all" || place.modules.includes(code))).map(({ caution }) => caution);

const reviewLines = ({ review, reviewer }: ModulePlan): string => {
  const by = isNone(reviewer) ? "nobody yet" : reviewer;
  const day = isNone(review) ? "no day yet" : review;
  return [
    `# To be read by ${by}; ${day}. Nobody has read it, and the page says so. Afterwards write:`,
    `#   review: { state: reviewed, by: ${isNone(reviewer) ? "paediatric orthopaedic surgeon" : reviewer}, on: 2026-01-31, due: ${isNone(review) ? "2027-01-31" : review} }`,
    "review:",
    "  state: none",
  ].join("\n");
};

const matter = (plan: ModulePlan): string =>
  [
    "---",
    `title: ${plan.title}`,
    `code: ${plan.code}`,
    "# One or two sentences that make a reader want the first page. No number with a unit here.",
    `summary: ${plan.title}, and why it matters in a small knee.`,
    `needs: [${plan.needs.join(", ")}]`,
    "roles:",
    ...rolesOf(plan.roles).map(([role, weight]) => `  ${role}: ${weight}`),
    "# Reading aloud once takes about this long; set it when the text stands.",
    `minutes: ${DRAFT_MINUTES}`,
    "objectives:",
    ...plan.objectives.flatMap(({ id, verb, text }) => [`  - id: ${id}`, `    verb: ${verb}`, `    text: ${text}`]),
    reviewLines(plan),
    "language: en",
    "---",
  ].join("\n");

const cautionTags = (code: string): readonly string[] => {
  const written = cautionsOf(code, "author");
  const placed = cautionsOf(code, "layout");
  const head = `{/* Cautions ${placed.join(", ")} come with the layout. ${written.length > 0 ? `${written.join(" and ")} must stand in this module: leave them where they are, or move them to what they are about.` : "If you quote a simulated share, add <Caution id=\"C14\" />."} */}`;
  return [head, ...written.map((id) => `<Caution id="${id}" />`)];
};

const section = (title: string, prompt: string, lines: readonly string[] = []): readonly string[] => [`## ${title}`, `{/* ${prompt} */}`, "…", ...lines];

const objectiveSections = (plan: ModulePlan, families: readonly FamilyOf[]): readonly string[] =>
  plan.objectives.flatMap(({ id, text }, index) => {
    const family = families.find(({ objectives }) => objectives.includes(id));
    const prompt = "First the reason, then the rule, then what happens where it fails. A published number stands as <Num of=\"…\" />, a number of your own case as <Ours value=\"…\" unit=\"mm\" />.";
    const ask = family === undefined ? `{/* A question, once a family serves ${id}: <Ask family="…" /> */}` : `<Ask family="${family.id}" />`;
    return section(`${text.charAt(0).toUpperCase()}${text.slice(1)}`, prompt, [index === 0 ? "{/* A figure, if one helps: <Figure of=\"bundle-line\" sex=\"boys\" entry={4} /> */}" : "", ask].filter((line) => line !== ""));
  });

/** The file of a new module: every part that must be there, each with a prompt, and nothing that the check would name. */
export const moduleText = (plan: ModulePlan, families: readonly FamilyOf[]): string => {
  const [lead, ...cautions] = cautionTags(plan.code);
  return `${[
    matter(plan),
    "{/* Somebody invented, on a day, with something to decide. The reader should want to know what you would do. */}",
    "…",
    lead,
    ...cautions,
    ...objectiveSections(plan, families),
    ...section("What is not known", "Which numbers were looked for and not found, and what that means on the day."),
    "<Pause>Something to say aloud, or to look up at one's own hospital, before reading on.</Pause>",
    ...section("Say it in one breath", "The whole module in two sentences that can be said at the table."),
  ].join("\n\n")}\n`;
};
