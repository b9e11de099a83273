import { drawItem } from "../../../engine/question/draw.ts";
import type { Family } from "../../../engine/question/family.ts";
import { type Draw, isSays } from "../../../engine/question/family-head.ts";
import { signature } from "../../../engine/question/behind.ts";
import { rulesOf } from "../../../engine/question/kinds/rules.ts";
import type { Response } from "../../../engine/question/response.ts";
import { isUnitId, sameDimension, type UnitId } from "../../../engine/quantity/units.ts";
import { chanceFor } from "../../../engine/random/chance.ts";
import type { Course, FamilyFacts } from "../course.ts";
import { type FamilyFault, familyFinding } from "../family-finding.ts";
import { recordNamed } from "../json-file.ts";
import type { CourseRule } from "../rule.ts";
import { caseFaults } from "./family-case.ts";
import { hasWrongGrid } from "./family-form.ts";

const rule = "draws";
const HOLE = /undefined|NaN|\[object|\$\{|Infinity/;
/** Draws shown beside a fault, so that an author sees the numbers. */
const MOST_SHOWN = 3;
/** A slip that meets the answer in more than this share of draws is no slip. */
const TOO_OFTEN = 0.5;
/** Two slips that differ in fewer draws than this are one. */
const TOO_FEW_APART = 0.02;

interface Drawn {
  readonly seed: number;
  readonly draw: Draw;
}

interface Seen extends Drawn {
  readonly answer: Response;
  readonly slips: readonly { readonly id: string; readonly response: Response }[];
}

const drawnFrom = (family: Family, seed: number): Drawn => ({ seed, draw: family.draw(chanceFor(family.id, family.version, String(seed))) });

const answered = (family: Family, { seed, draw }: Drawn): Seen => {
  const rules = rulesOf(family);
  return { seed, draw, answer: rules.answer(family, draw), slips: rules.slips(family, draw) };
};

const typed = (response: Response): string => {
  if (response.kind !== "sum") return JSON.stringify(response).slice(0, 60);
  if ("says" in response) return response.says;
  return "text" in response ? response.text : Object.values(response.texts).join(" and ");
};

const shownDraw = ({ seed, draw }: Drawn): string => `seed ${seed} (${Object.entries(draw.givens).map(([key, value]) => `${key} ${value}`).join(", ") || "no givens"})`;

/** Pairs that are typed the same, slip with answer or slip with slip, by their names. */
const meetings = ({ answer, slips }: Seen): readonly string[] => {
  const all = [{ id: "the answer", text: signature(answer) }, ...slips.map(({ id, response }) => ({ id: `slip "${id}"`, text: signature(response) }))];
  return all.flatMap((one, index) => all.slice(index + 1).filter(({ text }) => text === one.text).map((other) => `${other.id} = ${one.id}`));
};

const meetingFaults = (drawn: readonly Seen[]): readonly FamilyFault[] => {
  const met = new Map<string, Seen[]>();
  for (const each of drawn) for (const pair of meetings(each)) met.set(pair, [...(met.get(pair) ?? []), each]);
  return [...met].map(([pair, where]): FamilyFault => {
    const slip = /slip "([^"]+)"/.exec(pair)?.[1] ?? "";
    const examples = where.slice(0, MOST_SHOWN).map((each) => `${shownDraw(each)}: both ${typed(each.slips.find(({ id }) => id === slip)?.response ?? each.answer)}`);
    return {
      near: slip,
      rule,
      level: where.length > drawn.length * (pair.endsWith("the answer") ? TOO_OFTEN : 1 - TOO_FEW_APART) ? "problem" : "note",
      found: `${pair} in ${where.length} of ${drawn.length} draws: ${examples.join("; ")}`,
      expected: "another formula, or null in the draws where the slip changes nothing",
      write: `{ id: "${slip}", gives: ({ givens }) => (givens["…"] === 0 ? null : { … }) },`,
    };
  }).filter(({ level }) => level === "problem" || drawn.length > LEAST_FOR_NOTES);
};

/** Below this number of draws a rare meeting says nothing, and a frequent one is looked at again in as many. */
const LEAST_FOR_NOTES = 100;
const SECOND_LOOK = 200;

const seedsTo = (count: number): readonly number[] => Array.from({ length: count }, (_, seed) => seed);

/** Where few draws look suspicious, more are drawn: what happens by chance in six draws does not happen in two hundred. */
const surelyMeeting = (family: Family, drawn: readonly Drawn[]): readonly FamilyFault[] => {
  const look = (draws: readonly Drawn[]): readonly FamilyFault[] => meetingFaults(draws.map((each) => answered(family, each)));
  const faults = look(drawn);
  return faults.length === 0 || drawn.length > SECOND_LOOK ? faults : look(seedsTo(SECOND_LOOK).map((seed) => drawnFrom(family, seed))).filter(({ level }) => level === "problem");
};

/** A given may be shown in another unit of the same dimension; counts and ratios have no unit in the ledger. */
const isSameKind = (unit: UnitId, ledgerUnit: string): boolean =>
  isUnitId(ledgerUnit) ? sameDimension(unit, ledgerUnit) : ledgerUnit !== "" || ["pieces", "times", "points"].includes(unit);

const givenFaults = (family: Family, drawn: readonly Drawn[], course: Course): readonly FamilyFault[] =>
  family.givens.flatMap(({ key, unit, least, greatest, step }): readonly FamilyFault[] => {
    const outside = drawn.find(({ draw }) => (draw.givens[key] ?? least) < least || (draw.givens[key] ?? greatest) > greatest);
    const between = drawn.find(({ draw }) => {
      const steps = (draw.givens[key] ?? least) / step;
      return Math.abs(steps - Math.round(steps)) > 1 / 1000;
    });
    const entry = drawn.map(({ draw }) => draw.origins?.[key]?.entry).find((pin) => pin !== undefined) ?? "";
    const { record } = recordNamed(course.records, entry);
    const faults: FamilyFault[] = [];
    if (outside !== undefined) faults.push({ near: key, rule, found: `${key} outside ${least} to ${greatest} in ${shownDraw(outside)}`, expected: "every given inside its own bounds", write: `${key}: chance.onGrid({ least: ${least}, greatest: ${greatest}, step: ${step} }),` });
    else if (between !== undefined) faults.push({ near: key, rule, found: `${key} between its steps of ${step} in ${shownDraw(between)}`, expected: "the digits that are shown, so that the sum can be done with them", write: `${key}: chance.onGrid({ least: ${least}, greatest: ${greatest}, step: ${step} }),` });
    if (record !== undefined && !isSameKind(unit, record.unit)) faults.push({ near: key, rule, found: `${key} in ${unit} from "${entry}", which is in ${record.unit || "no unit"}`, expected: "the unit of the ledger", write: `unit: "${record.unit}"` });
    return faults;
  });

/** Answers that are no number, or lie outside what the family calls plausible. */
const answerFaults = (family: Family, drawn: readonly Drawn[]): readonly FamilyFault[] => {
  if (family.kind !== "sum") return [];
  return family.asks.flatMap(({ id }): readonly FamilyFault[] => {
    const bounds = family.plausible?.[id] ?? { least: -Infinity, greatest: Infinity };
    const wrong = drawn.flatMap((each) => {
      const solution = family.solve(each.draw.givens, each.draw.about);
      const value = isSays(solution) ? bounds.least : (solution[id] ?? Number.NaN);
      return isSays(solution) || (Number.isFinite(value) && value >= bounds.least && value <= bounds.greatest) ? [] : [{ each, value }];
    });
    const [first] = wrong;
    if (first === undefined) return [];
    const isNumber = Number.isFinite(first.value);
    const stated = `${bounds.least} to ${bounds.greatest}`;
    return [{
      near: id,
      rule,
      found: `${id} is ${first.value} in ${wrong.length} of ${drawn.length} draws: ${wrong.slice(0, MOST_SHOWN).map(({ each }) => shownDraw(each)).join("; ")}`,
      expected: isNumber ? `an answer inside its stated bounds, ${stated}` : "a number in every draw",
      write: isNumber ? `plausible: { ${id}: { least: ${Math.min(...wrong.map(({ value }) => value), bounds.least)}, greatest: ${Math.max(...wrong.map(({ value }) => value), bounds.greatest)} } },` : `solve: (givens) => ({ ${id}: sumOnGrid(…) }),`,
    }];
  });
};

const holeFaults = (family: Family, seeds: readonly number[]): readonly FamilyFault[] => {
  for (const seed of seeds) {
    const sentences = drawItem(family, { seed }).stem;
    const hole = sentences.find((sentence) => HOLE.test(sentence) || sentence.trim() === "");
    if (hole !== undefined) return [{ near: family.id, rule, found: `a sentence with a hole in it, seed ${seed}: ${hole || "(empty)"}`, expected: "words from say.about and say.of that the draw holds", write: '(say) => [say.about("child"), say.about("age")],' }];
  }
  return [];
};

const faultsOf = (family: Family, course: Course): readonly FamilyFault[] => {
  const seeds = seedsTo(course.draws);
  try {
    const drawn = seeds.map((seed) => drawnFrom(family, seed));
    const values = [...givenFaults(family, drawn, course), ...answerFaults(family, drawn)];
    if (values.length > 0) return values;
    const faults = surelyMeeting(family, drawn);
    return faults.some(({ level }) => level !== "note") ? faults : [...faults, ...holeFaults(family, seeds), ...caseFaults(family, drawn.slice(0, SECOND_LOOK).map((each) => answered(family, each)), drawn.length > LEAST_FOR_NOTES)];
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    return [{ near: family.id, rule, found: `a draw that fails: ${message}`, expected: "every seed to give a question; look at the keys that draw and solve use", write: "draw: (chance) => ({ givens: { … }, about: { … } })," }];
  }
};

/** The draws of a family: slips that differ from the answer, givens and answers inside their bounds, sentences without holes. */
export const familyDraws: CourseRule = (course) =>
  course.families.flatMap((family: FamilyFacts) => (family.declared === undefined || course.draws === 0 || hasWrongGrid(family.declared) ? [] : faultsOf(family.declared, course).map((fault) => familyFinding(family, fault))));
