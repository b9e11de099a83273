import type { Draw, Language } from "../../engine/question/family-head.ts";
import type { TrayFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { earlier, later, signedMinutes, STARTS } from "./cuff-clock.ts";
import { CHILDREN, given, HOSPITALS } from "./theatre-words.ts";

const GAP = { key: "gapMin", unit: "min", least: 5, greatest: 10, step: 1 } as const;
const WINDOW = { key: "windowMin", unit: "min", least: 45, greatest: 60, step: 15 } as const;
const ROWS = 5;
const GREATEST_CUT_MIN = 15;

/** One line of the record. */
interface Row {
  readonly child: string;
  readonly startAt: string;
  readonly endAt: string;
  readonly cuffAt: string;
  readonly cutAt: string;
}

type Kind = "sound" | "tight" | "after-cuff" | "too-close" | "too-early";

const written = ({ child, startAt, endAt, cuffAt, cutAt }: Row): string => [child, startAt, endAt, cuffAt, cutAt].join(" ");
const rowOf = (text: string): Row => {
  const [child = "", startAt = "00:00", endAt = "00:00", cuffAt = "00:00", cutAt = "00:00"] = text.split(" ");
  return { child, startAt, endAt, cuffAt, cutAt };
};
const rowsOf = ({ about, shown = [] }: Draw): readonly (Row & { readonly id: string })[] => shown.map((id) => ({ id, ...rowOf(about[id] ?? "") }));

const beforeCuff = ({ endAt, cuffAt }: Row): number => signedMinutes(endAt, cuffAt);
const beforeSkin = ({ startAt, cutAt }: Row): number => signedMinutes(startAt, cutAt);

/** What a row is by the two rules of the sheet: finished in time before the cuff, begun not too long before the skin. */
const kindOf = (row: Row, { givens }: Draw): Kind => {
  const gapMin = given(givens, "gapMin");
  if (beforeCuff(row) <= 0) return "after-cuff";
  if (beforeCuff(row) < gapMin) return "too-close";
  if (beforeSkin(row) > given(givens, "windowMin")) return "too-early";
  return beforeCuff(row) === gapMin ? "tight" : "sound";
};

const isFault = (kind: Kind): boolean => kind !== "sound" && kind !== "tight";
const idsWhere = (draw: Draw, holds: (kind: Kind) => boolean): readonly string[] => rowsOf(draw).filter((row) => holds(kindOf(row, draw))).map(({ id }) => id);

/** What a learner finds who does not see one kind of fault; `null` where there is none to miss. */
const blindTo = (kind: Kind) => (draw: Draw): readonly string[] | null => (idsWhere(draw, (one) => one === kind).length === 0 ? null : idsWhere(draw, (one) => isFault(one) && one !== kind));
const tooStrict = (draw: Draw): readonly string[] | null => (idsWhere(draw, (one) => one === "tight").length === 0 ? null : idsWhere(draw, (one) => isFault(one) || one === "tight"));

/** Minutes from the end of the dose to the cuff, and how long the dose ran, for a row of a kind. */
const minutesFor = (chance: Chance, kind: Kind, { gapMin, windowMin, cutMin }: { gapMin: number; windowMin: number; cutMin: number }): readonly [beforeCuffMin: number, runMin: number] => {
  const runMin = 3 + chance.below(4);
  if (kind === "after-cuff") return [-(1 + chance.below(cutMin - 2)), runMin];
  if (kind === "too-close") { const close = 1 + chance.below(gapMin - 1); return [close, gapMin - close + 1 + chance.below(4)]; }
  if (kind === "too-early") return [windowMin - cutMin - runMin + 2 + chance.below(15), runMin];
  return [kind === "tight" ? gapMin : gapMin + 1 + chance.below(8), runMin];
};

const drawList = (chance: Chance): Draw => {
  const [gapMin, windowMin] = [chance.onGrid(GAP), chance.onGrid(WINDOW)];
  const special = chance.shuffled<Kind>(["after-cuff", "too-close", "too-early", "tight"]).slice(0, 2 + chance.below(2));
  const kinds = [...special, ...Array.from({ length: ROWS - special.length }, () => "sound" as const)];
  const children = chance.shuffled(CHILDREN);
  const starts = chance.shuffled(STARTS.slice(0, -2)).slice(0, ROWS).sort();
  const rows = chance.shuffled(kinds).map((kind, place): Row => {
    const cuffAt = later(starts[place] ?? "08:20", chance.below(12));
    const cutMin = 6 + chance.below(GREATEST_CUT_MIN - 6);
    const [beforeCuffMin, runMin] = minutesFor(chance, kind, { gapMin, windowMin, cutMin });
    const endAt = beforeCuffMin >= 0 ? earlier(cuffAt, beforeCuffMin) : later(cuffAt, -beforeCuffMin);
    return { child: children[place] ?? "Finn", startAt: earlier(endAt, runMin), endAt, cuffAt, cutAt: later(cuffAt, cutMin) };
  });
  return {
    givens: { gapMin, windowMin },
    about: { hospital: chance.pick(HOSPITALS), ...Object.fromEntries(rows.map((row, place) => [`row-${place + 1}`, written(row)])) },
    shown: rows.map((_, place) => `row-${place + 1}`),
    origins: { gapMin: { from: "local" }, windowMin: { from: "local" } },
  };
};

const IDS = Array.from({ length: ROWS }, (_, place) => `row-${place + 1}`);
const drawOf = (say: Say): Draw => ({ givens: { gapMin: say.value("gapMin"), windowMin: say.value("windowMin") }, about: Object.fromEntries(IDS.map((id) => [id, say.about(id)])), shown: IDS });
const names = (say: Say, kind: Kind): string => rowsOf(drawOf(say)).filter((row) => kindOf(row, drawOf(say)) === kind).map(({ child }) => child).join(", ");
const rule = (say: Say): string => `The sheet of ${say.about("hospital")} hospital has two rules for the antibiotic: all of it is in at least so many minutes before the cuff goes up, and it is begun at most so many minutes before the skin is cut.`;

const VERDICTS: Readonly<Record<Kind, (row: Row, say: Say) => string>> = {
  "after-cuff": ({ child, endAt, cuffAt }) => `${child}: finished at ${endAt}, cuff up at ${cuffAt}. Not in before the cuff.`,
  "too-close": (row, say) => `${row.child}: finished only ${beforeCuff(row)} min before the cuff; ${say.bare("gapMin")} are asked for.`,
  "too-early": (row, say) => `${row.child}: begun ${beforeSkin(row)} min before the skin; at most ${say.bare("windowMin")} are allowed.`,
  tight: (row, say) => `${row.child}: finished exactly ${say.bare("gapMin")} min before the cuff. At least means that this is enough.`,
  sound: ({ child }) => `${child}: both rules kept.`,
};

const words: TrayFamily["words"][Language] = {
  title: "Dose before cuff",
  stems: [
    (say) => [rule(say), "At the end of the day the anaesthetic records of two theatres show these times. Mark every child in whom a rule was broken."],
    (say) => [`You read through today’s records of two theatres. ${rule(say)} Look at each child.`],
    (say) => [`${rule(say)} Five children in two theatres had a cuff today. Their times were copied from the records.`],
  ],
  question: "In which of these children was a rule of the sheet broken?",
  givens: { gapMin: (say) => `All of the dose in before the cuff, at least, sheet of ${say.about("hospital")} hospital`, windowMin: (say) => `Begun before the skin, at most, sheet of ${say.about("hospital")} hospital` },
  thing: (say, id) => { const { child, startAt, endAt, cuffAt, cutAt } = rowOf(say.about(id)); return `${child}: dose ${startAt} to ${endAt}, cuff up ${cuffAt}, skin ${cutAt}`; },
  nothing: "No rule was broken",
  slips: {
    "before-the-skin-is-enough": { name: "counted to the skin cut", because: (say) => [`${names(say, "after-cuff")}: the dose came before the skin but not before the cuff. Once the cuff is up, it cannot reach the field.`] },
    "begun-for-finished": { name: "begun taken for finished", because: (say) => [`${names(say, "too-close")}: it was begun early enough, but the sheet counts from when all of it is in.`] },
    "window-left-out": { name: "second rule left out", because: (say) => [`${names(say, "too-early")}: early is not always good. Begun more than ${say.of("windowMin")} before the skin, it has partly gone when the skin is cut.`] },
    "at-least-read-as-more-than": { name: "at least read as more than", because: (say) => [`${names(say, "tight")}: exactly ${say.of("gapMin")} before the cuff. “At least” includes that.`] },
  },
  working: (say) => rowsOf(drawOf(say)).map((row) => VERDICTS[kindOf(row, drawOf(say))](row, say)),
  right: () => ["Two intervals for each child: from the end of the dose to the cuff, and from its start to the skin. A dose after the cuff cannot reach the field."],
  off: () => ["Go through each line twice: end of the dose to the cuff, then start of the dose to the skin."],
  moves: (say) => [`The ${say.of("gapMin")} run from the end of the dose to the cuff; the ${say.of("windowMin")} from the start of the dose to the skin. A cuff that goes up a few minutes later mends the first and may break the second.`],
  turns: () => ["When every line keeps both intervals. The sheet of another hospital may draw the line elsewhere."],
};

/** 05g: children of one day whose antibiotic came too late for the cuff or too early for the skin. */
export const doseCuff: TrayFamily = {
  kind: "tray",
  id: "dose-cuff",
  code: "05g",
  module: "M05",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m05-dose-cuff"],
  reads: ["before-skin.uk-sheet@1", "before-skin.who@1"],
  sources: [{ source: "who-checklist", entry: "before-skin.who@1" }, { source: "uk-sheet", entry: "before-skin.uk-sheet@1" }],
  cautions: ["C4", "C15"],
  givens: [GAP, WINDOW],
  draw: drawList,
  faults: (draw) => idsWhere(draw, isFault),
  critical: (draw) => idsWhere(draw, (kind) => kind === "after-cuff"),
  slips: [
    { id: "before-the-skin-is-enough", gives: blindTo("after-cuff") },
    { id: "begun-for-finished", gives: blindTo("too-close") },
    { id: "window-left-out", gives: blindTo("too-early") },
    { id: "at-least-read-as-more-than", gives: tooStrict },
  ],
  words: { en: words },
};
