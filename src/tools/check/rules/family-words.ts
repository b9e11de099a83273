import type { Family } from "../../../engine/question/family.ts";
import type { CommonWords } from "../../../engine/question/family-head.ts";
import { type FamilyFault, familyFinding } from "../family-finding.ts";
import { nearest } from "../nearest.ts";
import type { CourseRule } from "../rule.ts";

const rule = "family's words";
const LEAST_STEMS = 3;

type Table = Readonly<Record<string, unknown>>;

/** Words that are wanted by name: where they stand, their names, and what is there. */
interface Wanted {
  readonly where: string;
  readonly names: readonly string[];
  readonly table: Table | undefined;
  readonly sample: string;
}

const SLIP_SAMPLE = '{ name: "margin forgotten", because: (say) => ["…", say.of("marginMm")] }';

const ownWords = (family: Family): readonly Wanted[] => {
  const table = (part: string): Table | undefined => (family.words.en as unknown as Readonly<Record<string, Table | undefined>>)[part];
  const wanted = (where: string, names: readonly string[]): Wanted => ({ where, names, table: table(where), sample: '"…"' });
  if (family.kind === "sum") return [wanted("asks", family.asks.map(({ id }) => id)), wanted("says", ["none", "cannot-be-told", "ask-locally"])];
  if (family.kind === "judge") return [wanted("options", family.options), wanted("reasons", family.reasons)];
  if (family.kind === "name") return [wanted("attributes", family.attributes.map(({ id }) => id)), wanted("options", family.attributes.flatMap(({ options }) => options))];
  if (family.kind === "count") return [wanted("classes", family.classes)];
  if (family.kind === "order") return [wanted("cards", family.edges.flatMap(({ before, after }) => [before, after]))];
  return family.kind === "chain" ? [wanted("steps", family.steps.map(({ id }) => id))] : [];
};

const missingIn = ({ where, names, table, sample }: Wanted): readonly FamilyFault[] =>
  [...new Set(names)].filter((name) => table?.[name] === undefined || table[name] === "").map((name) => ({
    near: name,
    rule,
    found: `no words for "${name}" under ${where}`,
    expected: "words for everything that a learner reads",
    write: `${where}: { "${name}": ${sample} },`,
  }));

/** Words for a slip that is not declared are never shown: mostly a name that was written in two ways. */
const idle = (family: Family): readonly FamilyFault[] => {
  const ids = family.slips.map(({ id }) => id);
  return Object.keys(family.words.en.slips).filter((id) => !ids.includes(id)).map((id) => ({
    near: id,
    rule,
    found: `words for a slip "${id}", which is not declared`,
    expected: `a slip of the family; the nearest is "${nearest(id, ids) ?? ids[0]}"`,
    write: `"${nearest(id, ids) ?? ids[0]}": ${SLIP_SAMPLE},`,
  }));
};

const plain = (words: CommonWords, id: string): readonly FamilyFault[] => {
  const faults: FamilyFault[] = [];
  if (words.title.trim() === "") faults.push({ near: id, rule, found: "no title", expected: "a title of a few words", write: 'title: "Least depth",' });
  if (words.question.trim() === "") faults.push({ near: id, rule, found: "no question", expected: "a question that says how the answer is rounded", write: 'question: "What is the least depth, rounded up to half a millimetre?",' });
  else if (!words.question.trim().endsWith("?") && !/[.]$/.test(words.question.trim())) faults.push({ near: id, rule, found: `a question that ends with "${words.question.trim().slice(-1)}"`, expected: "a question mark, or a full stop behind an instruction", write: `question: "${words.question.trim()}?",` });
  if (words.stems.length < LEAST_STEMS) faults.push({ near: id, rule, found: `${words.stems.length} wordings of the case`, expected: `${LEAST_STEMS} or more, so that a learner reads and does not recognise`, write: 'stems: [(say) => [`…`], (say) => [`…`], (say) => [`…`]],' });
  return faults;
};

const faultsOf = (family: Family): readonly FamilyFault[] => {
  const words = family.words.en;
  const common: readonly Wanted[] = [
    { where: "givens", names: family.givens.map(({ key }) => key), table: words.givens, sample: '"Margin, your own"' },
    { where: "slips", names: family.slips.map(({ id }) => id), table: words.slips, sample: SLIP_SAMPLE },
  ];
  return [...plain(words, family.id), ...[...common, ...ownWords(family)].flatMap(missingIn), ...idle(family)];
};

/** Everything that a learner reads has words: three wordings, labels, a sentence for every slip. */
export const familyWords: CourseRule = (course) =>
  course.families.flatMap((family) => (family.declared === undefined ? [] : faultsOf(family.declared).map((fault) => familyFinding(family, fault))));
