import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { CATALOGUE } from "../bank/catalogue.ts";
import { readCourse } from "./check/course.ts";
import { blueprint, holesIn, type PlannedFamily, staleIn } from "./blueprint/plan.ts";
import { blueprintText } from "./blueprint/table.ts";

/** Prints objectives, questions and roles with what is missing. `--strict` fails where there is a hole or a review past its day. */

const content = resolve(import.meta.dirname, "../../content");

const main = (): void => {
  const { values, positionals } = parseArgs({ allowPositionals: true, options: { strict: { type: "boolean" }, today: { type: "string" } } });
  const folder = resolve(positionals[0] ?? content);
  const families: readonly PlannedFamily[] = CATALOGUE.flatMap(([newest]) => (newest === undefined ? [] : [newest]));
  const today = values.today ?? new Date().toISOString().slice(0, 10);
  const course = readCourse({ folder, shownAs: "content", engineFolder: content, engineShownAs: "content", families: [], today, draws: 0 });
  const rows = blueprint(course, families);
  console.log(blueprintText(rows));
  if (values.strict === true && holesIn(rows).length + staleIn(rows).length > 0) process.exitCode = 1;
};

main();
