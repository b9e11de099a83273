import { isTeachingList, MOST_QUESTIONS, type Route, type TeachingList } from "../../engine/record/list-form.ts";
import { type ListPreset, listCode, listOfPreset } from "../../engine/record/list-code.ts";
import { lockOf, spokenCheck } from "../../engine/record/list-sheet.ts";
import { dayName } from "../../engine/record/list-code.ts";
import { NEWEST } from "../../facts/editions.ts";
import { type CourseModule, objectivesOf } from "../course.ts";
import { newSeed } from "../new-seed.ts";

/** What stands on the compose page before it becomes a list. */
export interface Draft {
  /** Number of the ready-made list that it was begun from; null for an empty one. */
  readonly preset: number | null;
  readonly objectives: ReadonlySet<string>;
  /** Families of a ready-made list, in its order; null where the objectives say which. */
  readonly families: readonly string[] | null;
  readonly each: number;
  readonly sheet: "own" | "same";
  readonly isSupervised: boolean;
  readonly title: string;
  readonly attempts: number;
  readonly opensOn: string;
  readonly dueOn: string;
  readonly keepUntil: string;
  readonly rightPercent: number;
  readonly mustBy: "none" | "unsafe" | "ticked";
  readonly ticked: ReadonlySet<string>;
  readonly noUnsafe: boolean;
  readonly back: readonly Route[];
  readonly backTo: string;
}

/** What the page knows of the course. */
export interface ComposeCourse {
  readonly modules: readonly CourseModule[];
  readonly unsafe: ReadonlySet<string>;
}

export type DraftFault = "title" | "picks" | "days" | "back" | "rest";

/** A list that is made, with what is given out beside its link. */
export interface MadeList {
  readonly list: TeachingList;
  readonly code: string | null;
  readonly spoken: string | null;
}

const WEEKS_OPEN_DAYS = 21;
const KEPT_DAYS = 365;

/** An empty page, with three weeks to work and a year to keep. */
export const emptyDraft = (todayDay: number): Draft => ({
  preset: null, objectives: new Set(), families: null, each: 1, sheet: "own", isSupervised: false, title: "", attempts: 3,
  opensOn: dayName(todayDay), dueOn: dayName(todayDay + WEEKS_OPEN_DAYS), keepUntil: dayName(todayDay + WEEKS_OPEN_DAYS + KEPT_DAYS),
  rightPercent: 80, mustBy: "unsafe", ticked: new Set(), noUnsafe: true, back: ["file", "block"], backTo: "",
});

/** A ready-made list as it comes, with the days of the page. */
export const draftOf = (preset: ListPreset, before: Draft): Draft => ({
  ...before, preset: preset.number, objectives: new Set(), families: preset.families, each: preset.each, sheet: preset.sheet, isSupervised: false, title: preset.title, attempts: preset.attempts,
  rightPercent: preset.rightPercent, mustBy: "ticked", ticked: new Set(preset.must), noUnsafe: preset.noUnsafe, back: preset.back, backTo: "",
});

const placeOf = (family: string): number => NEWEST.families.findIndex(({ id }) => id === family);

/** Families of a draft in the order of the course; questions of several steps wait for their parts and stay out of lists. */
export const familiesOf = ({ families, objectives }: Draft, { modules }: ComposeCourse): readonly string[] => {
  if (families !== null) return families;
  const chains = new Set(modules.flatMap((module) => module.chains.map(({ family }) => family)));
  const chosen = objectivesOf(modules).filter(({ id }) => objectives.has(id)).flatMap((objective) => objective.families);
  return [...new Set(chosen)].filter((family) => !chains.has(family) && placeOf(family) >= 0);
};

/** Families that must be right. */
export const mustOfDraft = (draft: Draft, course: ComposeCourse): readonly string[] => {
  const families = familiesOf(draft, course);
  if (draft.mustBy === "none") return [];
  return families.filter((family) => (draft.mustBy === "unsafe" ? course.unsafe : draft.ticked).has(family));
};

export const draftQuestions = (draft: Draft, course: ComposeCourse): number => familiesOf(draft, course).length * draft.each;

const faultOf = (draft: Draft, questions: number): DraftFault | null => {
  if (draft.title.trim() === "") return "title";
  if (questions < 1 || questions > MOST_QUESTIONS) return "picks";
  if (!(draft.opensOn <= draft.dueOn && draft.dueOn <= draft.keepUntil)) return "days";
  return draft.back.length === 0 ? "back" : null;
};

const SPOKEN_SIGNS = "ACDEFGHJKMNPQRTUVWXY34679";
const NONCE_DIGITS = 16;
const CODE_NONCE_DIGITS = 5;

/** A word of six signs to read aloud, without signs that sound or look alike. */
const newSpoken = (): string => {
  const digits = newSeed().match(/.{4}/g) ?? [];
  const signs = digits.slice(0, 6).map((four) => SPOKEN_SIGNS[Number.parseInt(four, 16) % SPOKEN_SIGNS.length] ?? "A").join("");
  return `${signs.slice(0, 3)} ${signs.slice(3)}`;
};

/** The ready-made list that a draft still is; null where something but its days was changed. */
const presetOf = (draft: Draft, presets: readonly ListPreset[]): ListPreset | null => {
  const preset = presets.find(({ number }) => number === draft.preset);
  if (preset === undefined || draft.isSupervised) return null;
  const { opensOn, dueOn, keepUntil } = draft;
  const untouched = draftOf(preset, { ...draft, opensOn, dueOn, keepUntil });
  const flat = (one: Draft): string => JSON.stringify({ ...one, objectives: [...one.objectives], ticked: [...one.ticked].toSorted(), back: one.back.toSorted() });
  return flat(untouched) === flat(draft) ? preset : null;
};

/** Makes the list of a draft, with digits of its own; or says what is missing. */
export const makeList = (draft: Draft, course: ComposeCourse, presets: readonly ListPreset[]): MadeList | { readonly fault: DraftFault } => {
  const fault = faultOf(draft, draftQuestions(draft, course));
  if (fault !== null) return { fault };
  const preset = presetOf(draft, presets);
  const { opensOn, dueOn, keepUntil } = draft;
  const nonce = newSeed().slice(0, preset === null ? NONCE_DIGITS : CODE_NONCE_DIGITS);
  if (preset !== null) {
    const list = listOfPreset(preset, { opensOn, dueOn, keepUntil, nonce }, NEWEST);
    return list === null ? { fault: "rest" } : { list, code: listCode(preset, { opensOn, dueOn, keepUntil, nonce }, NEWEST.edition), spoken: null };
  }
  const spoken = draft.isSupervised ? newSpoken() : null;
  const picks = familiesOf(draft, course).map((family) => [placeOf(family), draft.each] as const);
  const list = {
    form: "list/1", title: draft.title.trim(), edition: NEWEST.edition, lock: lockOf(picks, NEWEST), picks, sheet: draft.sheet, attempts: draft.attempts,
    opensOn, dueOn, keepUntil, rule: { rightPercent: draft.rightPercent, must: mustOfDraft(draft, course).map(placeOf), noUnsafe: draft.noUnsafe },
    back: draft.back, backTo: draft.backTo.trim(), spoken: spoken === null ? null : spokenCheck(nonce, spoken), nonce,
  };
  return isTeachingList(list) ? { list, code: null, spoken } : { fault: "rest" };
};
