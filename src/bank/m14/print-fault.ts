import { wilson } from "../../engine/evidence/wilson.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { TrayFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { jointPressure } from "../../facts/joint-pressure.ts";
import { alike } from "../m01/common.ts";
import { drawCase } from "./later-words.ts";

const MAJOR_PIN = "complications-major.child@1";
const PER_CENT = 100;
const SHIFT_PERCENT = [0.7, 1.4, 2.1, 3.2] as const;
/** What the abstract of the published series prints, beside its own counts. */
const PUBLISHED = { events: 21, total: 1015, printed: "1.4" } as const;

/** The lines of an abstract: each holds numbers that must agree with one another. */
const LINES = ["groups", "failed", "healed", "interval", "spread", "published"] as const;
type Line = (typeof LINES)[number];

const PARTS = {
  groups: ["boys", "girls", "total"],
  failed: ["events", "total", "percent"],
  healed: ["events", "total", "percent"],
  interval: ["percent", "low", "high"],
  spread: ["least", "mean", "greatest"],
  published: ["events", "total", "percent"],
} as const satisfies Readonly<Record<Line, readonly string[]>>;

const valuesOf = (about: Draw["about"], line: Line): Readonly<Record<string, string>> => {
  const texts = (about[line] ?? "").split("|");
  return Object.fromEntries(PARTS[line].map((part, index) => [part, texts[index] ?? ""]));
};
const number = (values: Readonly<Record<string, string>>, part: string): number => Number(values[part]);

/** A printed share agrees where its count gives the same digits; half a unit of the last digit is rounding. */
const isShareWrong = (values: Readonly<Record<string, string>>): boolean => {
  const printed = values["percent"] ?? "";
  const places = printed.includes(".") ? printed.length - printed.indexOf(".") - 1 : 0;
  const share = (PER_CENT * number(values, "events")) / number(values, "total");
  return Math.abs(share - Number(printed)) > 0.5 / 10 ** places + 1 / 10 ** (places + 3);
};
const isOutside = (values: Readonly<Record<string, string>>, [least, middle, greatest]: readonly [string, string, string]): boolean =>
  number(values, middle) < number(values, least) || number(values, middle) > number(values, greatest);

const IS_WRONG: Readonly<Record<Line, (values: Readonly<Record<string, string>>) => boolean>> = {
  groups: (values) => number(values, "boys") + number(values, "girls") !== number(values, "total"),
  failed: isShareWrong,
  healed: isShareWrong,
  interval: (values) => isOutside(values, ["low", "percent", "high"]),
  spread: (values) => isOutside(values, ["least", "mean", "greatest"]),
  published: isShareWrong,
};

const shownLines = (draw: Draw): readonly Line[] => LINES.filter((line) => draw.shown?.includes(line));
const faultsIn = (draw: Draw): readonly string[] => shownLines(draw).filter((line) => IS_WRONG[line](valuesOf(draw.about, line)));
/** Lines whose share is rounded to whole per cents: odd to look at, and right. */
const coarseIn = (draw: Draw): readonly string[] => (["failed", "healed"] as const).filter((line) => draw.shown?.includes(line) && !(draw.about[line] ?? "").includes(".") && !faultsIn(draw).includes(line));

const share = (events: number, total: number): number => (PER_CENT * events) / total;
const shareText = (chance: Chance, { events, total, isWrong }: { readonly events: number; readonly total: number; readonly isWrong: boolean }): string => {
  const shift = isWrong ? chance.pick(SHIFT_PERCENT) * (chance.happens(1, 2) ? 1 : -1) : 0;
  const exact = share(events, total);
  const printed = exact + shift < 0 ? exact - shift : exact + shift;
  return printed.toFixed(!isWrong && chance.happens(1, 2) ? 0 : 1);
};

/** A study that agrees with itself, and the lines of it that are then made to disagree. */
const drawLines = (chance: Chance, wrong: readonly Line[]): Readonly<Record<Line, string>> => {
  const boys = 30 + chance.below(60);
  const girls = 25 + chance.below(60);
  const total = boys + girls;
  const events = 4 + chance.below(20);
  const healed = total - events;
  const isWrong = (line: Line): boolean => wrong.includes(line);
  const stiff = 4 + chance.below(15);
  const [low, high] = Object.values(wilson({ events: stiff, total })).map((end) => PER_CENT * end) as [number, number];
  const stiffPercent = isWrong("interval") ? high + 1 + chance.below(5) : share(stiff, total);
  const least = 6 + chance.below(4);
  const mean = isWrong("spread") ? 19 + chance.below(3) : 11 + chance.below(4);
  return {
    groups: [boys, girls, isWrong("groups") ? total + 2 + chance.below(9) : total].join("|"),
    failed: [events, total, shareText(chance, { events, total, isWrong: isWrong("failed") })].join("|"),
    healed: [healed, total, shareText(chance, { events: healed, total, isWrong: isWrong("healed") })].join("|"),
    interval: [stiffPercent, low, high].map((value) => value.toFixed(1)).join("|"),
    spread: [least, `${mean}.${chance.below(10)}`, 18].join("|"),
    published: [PUBLISHED.events, PUBLISHED.total, isWrong("published") ? PUBLISHED.printed : jointPressure(MAJOR_PIN).value.value].join("|"),
  };
};

const drawn = (chance: Chance): Draw => {
  const lines = chance.shuffled(LINES).slice(0, 5);
  const wrong = chance.shuffled(lines).slice(0, 1 + chance.below(2));
  const texts = drawLines(chance, wrong);
  return { givens: {}, about: { ...drawCase(chance), ...Object.fromEntries(lines.map((line) => [line, texts[line]])) }, shown: lines };
};

const SHARES = ["failed", "healed", "published"] as const;
const INSIDE = ["interval", "spread"] as const;
const ROUNDED = ["failed", "healed"] as const;
const passedIds = (lines: readonly Line[]): readonly string[] => lines.map((line) => `${line}-passed`);
const roundedIds = ROUNDED.map((line) => `${line}-rounding-flagged`);
/** One faulty line passed; each is named, also where another was found. */
const passed = (draw: Draw, line: Line): readonly string[] | null => (faultsIn(draw).includes(line) ? faultsIn(draw).filter((one) => one !== line) : null);
const flagged = (draw: Draw, line: Line | undefined): readonly string[] | null => (line !== undefined && coarseIn(draw).includes(line) ? [...faultsIn(draw), line] : null);

const read = (say: Say, line: Line): Readonly<Record<string, string>> => valuesOf({ [line]: say.about(line) }, line);
const SENTENCES: Readonly<Record<Line, (values: Readonly<Record<string, string>>) => string>> = {
  groups: (values) => `${values["boys"]} boys and ${values["girls"]} girls were followed, ${values["total"]} in all.`,
  failed: (values) => `${values["events"]} of ${values["total"]} repairs failed (${values["percent"]} per cent).`,
  healed: (values) => `${values["events"]} of ${values["total"]} had no further operation (${values["percent"]} per cent).`,
  interval: (values) => `Stiffness was recorded in ${values["percent"]} per cent (95 per cent interval ${values["low"]} to ${values["high"]}).`,
  spread: (values) => `Mean age at operation was ${values["mean"]} years (range ${values["least"]} to ${values["greatest"]}).`,
  published: (values) => `In an earlier series of children ${values["events"]} of ${values["total"]} had a major complication (${values["percent"]} per cent).`,
};
const checkOf = (say: Say, line: Line): string => {
  const values = read(say, line);
  if ("events" in values) return `100 × ${values["events"]} ÷ ${values["total"]} = ${share(number(values, "events"), number(values, "total")).toFixed(2)} per cent`;
  if (line === "groups") return `${values["boys"]} + ${values["girls"]} = ${number(values, "boys") + number(values, "girls")}`;
  return line === "interval" ? `${values["percent"]} must lie between ${values["low"]} and ${values["high"]}` : `${values["mean"]} must lie between ${values["least"]} and ${values["greatest"]}`;
};
const linesHeld = (say: Say): readonly Line[] => LINES.filter((line) => say.hasAbout(line) && say.about(line) !== "");

/** 14k: the number in an abstract that cannot be right. */
export const printFault: TrayFamily = {
  kind: "tray",
  id: "print-fault",
  code: "14k",
  module: "M14",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m14-fault"],
  reads: [MAJOR_PIN],
  sources: [{ source: "ped-1002", entry: MAJOR_PIN }],
  cautions: ["C2", "C16"],
  givens: [],
  draw: drawn,
  faults: faultsIn,
  slips: [
    ...LINES.map((line) => ({ id: `${line}-passed`, gives: (draw: Draw) => passed(draw, line) })),
    ...roundedIds.map((id, at) => ({ id, gives: (draw: Draw) => flagged(draw, ROUNDED[at]) })),
    { id: "everything-flagged", gives: (draw) => [...(draw.shown ?? [])] },
  ],
  words: {
    en: {
      title: "The number that cannot be right",
      stems: [
        (say) => [`Before a result is quoted at ${say.about("hospital")}, its lines are reckoned again. The abstract is in the manner of a published one; the study is invented, except where an earlier series is named.`],
        () => ["Five lines of an abstract lie before you. The study is invented, except where an earlier series is named. Printed numbers are not wrong often, but they are wrong now and then, and nobody notices who does not reckon."],
        (say) => [`Somebody at ${say.about("hospital")} wants to copy these lines into a handbook for families. The study is invented, except where an earlier series is named.`],
      ],
      question: "Which lines hold a number that cannot be right?",
      givens: {},
      thing: (say, id) => SENTENCES[id as Line](read(say, id as Line)),
      nothing: "All lines agree with themselves",
      slips: {
        ...alike(passedIds(SHARES), { name: "a share passed", because: () => ["A line gives the count, the total and the share, and they do not agree. Divide; it takes ten seconds. A published abstract once printed 21 of 1015 as 1.4 per cent."] }),
        "groups-passed": { name: "a sum passed", because: () => ["The groups do not add up to the total. Somebody was counted twice, or not at all."] },
        ...alike(passedIds(INSIDE), { name: "a value outside its own ends", because: () => ["A mean lies inside its range, and a rate inside its interval. One of the three numbers is wrong."] }),
        ...alike(roundedIds, { name: "rounding taken for a fault", because: () => ["A share printed in whole per cents is less fine, not wrong. It is a fault only where another whole number would have been nearer."] }),
        "everything-flagged": { name: "everything flagged", because: () => ["Distrust is not reckoning. Most lines agree with themselves; say which does not, and why."] },
      },
      working: (say) => linesHeld(say).map((line) => checkOf(say, line)),
      right: () => ["Each line was reckoned again from what stands in it. What cannot be right was named, and rounding was let be."],
      off: () => ["Reckon every line from its own numbers: shares from counts, sums from groups, means and rates inside their ends."],
      moves: () => ["A fault may lie in any of the numbers of its line. Reckoning shows that they disagree, not which of them is wrong."],
      turns: () => ["A line is sound where its numbers agree up to the rounding of the last printed digit."],
    },
  },
};
