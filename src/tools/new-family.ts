import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import { asking, runAsking, WrongAnswer } from "./new/ask.ts";
import { bankCatalogueWith, bankLoadWith, catalogueWith, type Listed, loadWith } from "./new/family-lists.ts";
import { askUnitOf, type FamilyKind, type FamilyPlan, familyQuestions, givensOf, nextCode } from "./new/family-plan.ts";
import { objectiveFor, objectivesListed } from "./new/objective-for.ts";
import { familyText } from "./new/family-text.ts";
import { type Tool, wordsOf } from "./words.ts";

/**
 * Asks six things and writes one family that already keeps the laws, and lists it. The answers may also come as flags
 * (`--id=…`) or as lines on the standard input. `--objective` names its objective, `--project` another copy of the project.
 */

const TOOL: Tool = {
  name: "new:family",
  does: "Asks six things and writes one family of questions that already keeps the laws, and lists it. A flag answers its question beforehand.",
  flags: {
    id: { says: "its name, in small letters and hyphens", value: "thread-left" },
    module: { says: "the code of its module", value: "M11" },
    kind: { says: "sum, order or judge", value: "sum" },
    title: { says: "a few words", value: '"Thread left"' },
    givens: { says: "the numbers that it states", value: '"thread mm 600 to 900 by 50; stitches pieces 2 to 4 by 1"' },
    ask: { says: "the unit of the answer", value: "mm" },
    objective: { says: "the objective that it serves; else the first of its module without a question", value: "m11-number" },
    project: { says: "another copy of the project", value: "../copy" },
  },
};

const shown = (path: string): string => relative(process.cwd(), path).replaceAll("\\", "/");
const readIf = (path: string): string | null => (existsSync(path) ? readFileSync(path, "utf8") : null);

interface Known {
  readonly id: string;
  readonly code: string;
  readonly module: string;
  readonly objectives: readonly string[];
}

const knownFamilies = async (project: string): Promise<readonly Known[]> => {
  const { CATALOGUE } = (await import(join(project, "src/bank/catalogue.ts"))) as { CATALOGUE: readonly (readonly Known[])[] };
  return CATALOGUE.flat();
};

/** Lists the family where the bank looks for it; these are the only other files that are touched. */
const list = (project: string, family: Listed): readonly string[] => {
  const bank = join(project, "src/bank");
  const folder = join(bank, family.module.toLowerCase());
  const changes: readonly (readonly [path: string, text: string])[] = [
    [join(folder, "catalogue.ts"), catalogueWith(readIf(join(folder, "catalogue.ts")), family)],
    [join(folder, "load.ts"), loadWith(readIf(join(folder, "load.ts")), family)],
    [join(bank, "catalogue.ts"), bankCatalogueWith(readFileSync(join(bank, "catalogue.ts"), "utf8"), family.module)],
    [join(bank, "load.ts"), bankLoadWith(readFileSync(join(bank, "load.ts"), "utf8"), family.module)],
  ];
  const changed = changes.filter(([path, text]) => readIf(path) !== text);
  for (const [path, text] of changed) writeFileSync(path, text);
  return changed.map(([path]) => path);
};

const answersTo = async (flags: Readonly<Record<string, string | undefined>>, taken: Parameters<typeof familyQuestions>[0]): Promise<Readonly<Record<string, string>>> => {
  const { ask, close } = asking(flags);
  const { always, ofSums } = familyQuestions(taken);
  const answers: Record<string, string> = {};
  for (const question of always) answers[question.name] = await ask(question);
  if (answers["kind"]?.toLowerCase() === "sum") for (const question of ofSums) answers[question.name] = await ask(question);
  close();
  return answers;
};

const work = async (): Promise<string> => {
  const flags: Readonly<Record<string, string | undefined>> = wordsOf(TOOL).values;
  const project = resolve(flags["project"] ?? join(import.meta.dirname, "../.."));
  const known = await knownFamilies(project);
  const modules = Object.keys(JSON.parse(readFileSync(join(project, "content/curriculum.json"), "utf8")) as object);
  const { id = "", module: written = "", kind = "", title = "", givens = "", ask = "" } = await answersTo(flags, { ids: known.map((family) => family.id), modules });
  const module = written.toUpperCase();
  const code = nextCode(module, known.filter((family) => family.module === module).map((family) => family.code));
  if (code === null) throw new WrongAnswer(`Module ${module} has a family for every letter; give one of them up first.`);
  const read = givensOf(givens);
  const plan: FamilyPlan = { id, code, module, kind: kind.toLowerCase() as FamilyKind, title, objective: flags["objective"] ?? objectiveFor(objectivesListed(project, module), { id, module }, known), givens: typeof read === "string" ? [] : read, askUnit: askUnitOf(ask) };
  const path = join(project, "src/bank", module.toLowerCase(), `${id}.ts`);
  if (existsSync(path)) throw new WrongAnswer(`There is a file ${shown(path)} already.`);
  mkdirSync(join(path, ".."), { recursive: true });
  writeFileSync(path, familyText(plan));
  const listed = list(project, plan);
  return `${shown(path)} is family ${code}, for the objective ${plan.objective}.\nIt is listed in ${listed.map(shown).join(", ")}.\nWrite its formula, its slips and its sentences; then: npm run check -- --family=${id}`;
};

await runAsking(work);
