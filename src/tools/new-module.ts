import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import { asking, runAsking, WrongAnswer } from "./new/ask.ts";
import { codeFor, moduleQuestions, type ModulePlan, needsOf, objectivesOf, rolesOf } from "./new/module-plan.ts";
import { type FamilyOf, withServed } from "./new/module-objectives.ts";
import { moduleText } from "./new/module-text.ts";
import { slugOf } from "./new/names.ts";
import { placedOnPaths } from "./new/place-on-paths.ts";
import { type Tool, wordsOf } from "./words.ts";

/**
 * Asks six things and writes one module in which every part that must be there is a prompt. The answers may also come
 * as flags (`--title="…"`) or as six lines on the standard input. `--project` names another copy of the project.
 */

const TOOL: Tool = {
  name: "new:module",
  does: "Asks six things and writes one module in which every part that must be there is a prompt. A flag answers its question beforehand.",
  flags: {
    title: { says: "a few words", value: '"Water on the floor"' },
    roles: { says: "who reads it", value: '"resident core, nurse optional"' },
    objectives: { says: "what a reader can do afterwards, verb first", value: '"calculate the bags for a case; select who is told"' },
    needs: { says: "modules that come before it, or none", value: "M07" },
    review: { says: "the day of its review, or none", value: "2027-03-01" },
    reviewer: { says: "a role, or none", value: '"paediatric orthopaedic surgeon"' },
    project: { says: "another copy of the project", value: "../copy" },
  },
};

const shown = (path: string): string => relative(process.cwd(), path).replaceAll("\\", "/");

const curriculumAt = (path: string): Readonly<Record<string, string>> => JSON.parse(readFileSync(path, "utf8")) as Readonly<Record<string, string>>;

/** Families of the bank by module, so that a new module can ask what is there already. */
const bankFamilies = async (project: string): Promise<readonly FamilyOf[]> => {
  const face = join(project, "src/bank/catalogue.ts");
  if (!existsSync(face)) return [];
  const { CATALOGUE } = (await import(face)) as { CATALOGUE: readonly (readonly FamilyOf[])[] };
  return CATALOGUE.flatMap(([newest]) => (newest === undefined ? [] : [newest]));
};

/** Gives a module that is new its place on the paths of the roles for which it is core; says where. */
const placeOnPaths = (project: string, { code, roles }: ModulePlan): string => {
  const file = join(project, "content/paths.json");
  const core = rolesOf(roles).filter(([, weight]) => weight === "core").map(([role]) => role);
  const { text, ids } = placedOnPaths(readFileSync(file, "utf8"), code, core);
  if (ids.length === 0) return "";
  writeFileSync(file, text);
  return `\n${shown(file)} has it at the end of ${ids.join(", ")}; move it to where it belongs.`;
};

const work = async (): Promise<string> => {
  const flags: Readonly<Record<string, string | undefined>> = wordsOf(TOOL).values;
  const project = resolve(flags["project"] ?? join(import.meta.dirname, "../.."));
  const names = join(project, "content/curriculum.json");
  const curriculum = curriculumAt(names);
  const { ask, close } = asking(flags);
  const answers: Record<string, string> = {};
  for (const question of moduleQuestions(Object.keys(curriculum))) answers[question.name] = await ask(question);
  close();
  const { title = "", roles = "", objectives = "", needs = "", review = "", reviewer = "" } = answers;
  const path = join(project, "content/modules", `${slugOf(title)}.mdx`);
  if (existsSync(path)) throw new WrongAnswer(`There is a module of that name already: ${shown(path)}.`);
  const { code, isListed } = codeFor(title, curriculum);
  if (needsOf(needs).includes(code)) throw new WrongAnswer(`${code} is this module itself; it cannot come before itself.`);
  const families = await bankFamilies(project);
  const plan: ModulePlan = { title, code, roles, needs: needsOf(needs), objectives: withServed(objectivesOf(objectives, code), code, families), review, reviewer };
  mkdirSync(join(project, "content/modules"), { recursive: true });
  writeFileSync(path, moduleText(plan, families));
  if (!isListed) writeFileSync(names, `${JSON.stringify({ ...curriculum, [code]: title }, null, 2)}\n`);
  const added = isListed ? "" : `\n${shown(names)} has a line for ${code}.${placeOnPaths(project, plan)}`;
  return `${shown(path)} is module ${code}.${added}\nReplace each … and each prompt; then: npm run check`;
};

await runAsking(work);
