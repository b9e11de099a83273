import { chanceFrom } from "../../src/engine/random/chance.ts";
import { sha256Words } from "../../src/engine/random/sha256.ts";
import { xoshiro128 } from "../../src/engine/random/xoshiro.ts";
import { completionCode, shortList } from "../../src/engine/record/completion-code.ts";
import type { HandIn } from "../../src/engine/record/hand-in-form.ts";
import { handInBlock, handInFile, handInParts } from "../../src/engine/record/hand-in-text.ts";
import { listId, questionCount, type Route } from "../../src/engine/record/list-form.ts";
import type { Arrival } from "../../src/engine/cohort/returns.ts";
import { handInOf, listOf } from "./lists.ts";

/** An invented cohort: 24 learners at five invented hospitals with set abilities, whose hand-ins come by four routes, some of them in trouble. The generator knows the truth; the desk has to find it. */

export const DEMO_LIST = listOf(["greatest-depth", "least-depth", "how-many", "cuff-width", "reconcile", "capped-dose"], { title: "Northmoor, winter list" });

const BIRDS = ["avocet-12", "bittern-03", "curlew-27", "dunlin-19", "egret-08", "fulmar-31", "gannet-05", "heron-41", "ibis-14", "jackdaw-16", "kestrel-22", "lapwing-38", "merlin-25", "nightjar-07", "osprey-11", "plover-20", "quail-33", "redwing-07", "siskin-33", "tern-07", "urial-02", "veery-18", "wigeon-14", "wren-40"];
const PLACES = ["Northmoor", "Saltmarsh", "Highfell", "Longford Bay", "Eastbeck"];
const ROUTES: readonly Route[] = ["file", "block", "square", "code"];

export interface Truth {
  readonly learner: string;
  readonly route: Route;
  readonly word: string;
  readonly trouble: "none" | "damaged" | "twice" | "older" | "edited";
}

const TROUBLE: Readonly<Record<string, Truth["trouble"]>> = { "gannet-05": "damaged", "ibis-14": "damaged", "bittern-03": "twice", "egret-08": "twice", "plover-20": "twice", "curlew-27": "older", "jackdaw-16": "edited" };

const routeOf = (learner: string, index: number): Route => {
  if (learner === "jackdaw-16" || learner === "ibis-14") return "file";
  return learner === "gannet-05" ? "block" : (ROUTES[index % 20 === 3 || index % 20 === 19 ? 3 : index % 3] ?? "file");
};

const chance = chanceFrom(xoshiro128(sha256Words("demo cohort of the returns desk")));

/** A letter for each question: the abler, the more often right; who is off is on the unsafe side one time in three. */
const wordOf = (ability: number): string => Array.from({ length: questionCount(DEMO_LIST) }, () => {
  if (chance.below(100) < ability) return "+";
  return chance.below(3) === 0 ? "!" : "-";
}).join("");

export const TRUTH: readonly Truth[] = BIRDS.map((learner, index) => ({ learner, route: routeOf(learner, index), word: wordOf(45 + ((index * 29) % 56)), trouble: TROUBLE[learner] ?? "none" }));

export const handInFor = ({ learner, word, trouble }: Truth): HandIn => {
  const handIn = handInOf(DEMO_LIST, { learner, place: PLACES[BIRDS.indexOf(learner) % PLACES.length] ?? null, words: [word], edition: trouble === "older" ? "0.0.9" : "0.1.0" });
  if (trouble !== "older") return handIn;
  // The older edition called the first answer right, or off where it was right.
  const [sheet] = handIn.sheets;
  return { ...handIn, sheets: sheet === undefined ? [] : [{ ...sheet, answers: sheet.answers.map((answer, at) => (at === 0 ? { ...answer, verdict: answer.verdict === "right" ? "safe-side" : "right" } : answer)) }] };
};

const quoted = (text: string): string => `On Tuesday somebody wrote:\n${text.split("\n").map((line) => `> ${line.slice(0, 40)}\n> ${line.slice(40)}`).join("\n")}\n\nRegards`;

const textsOf = (truth: Truth): readonly string[] => {
  const handIn = handInFor(truth);
  if (truth.route === "code") {
    const marks = handIn.sheets[0]?.answers ?? [];
    const code = completionCode({ list: shortList(listId(DEMO_LIST)), attempt: 1, right: marks.filter(({ verdict }) => verdict === "right").length, unsafe: marks.filter(({ verdict }) => verdict === "unsafe-side").length }, truth.learner);
    return [`${truth.learner} ${code}`];
  }
  if (truth.route === "square") return handInParts(handIn);
  if (truth.route === "block") return [quoted(handInBlock(handIn))];
  return [handInFile(handIn)];
};

const lostLines = (text: string): string => {
  const lines = text.split("\n");
  return [...lines.slice(0, 9), ...lines.slice(15)].join("\n");
};

const troubled = (truth: Truth, texts: readonly string[]): readonly string[] => {
  if (truth.trouble === "twice") return [...texts, ...(truth.route === "file" ? [handInBlock(handInFor(truth))] : texts)];
  if (truth.trouble === "damaged") return texts.map((text) => (truth.route === "block" ? lostLines(text) : text.slice(0, text.length - 200)));
  // Somebody opens the file and writes "right" where the page had said otherwise.
  return truth.trouble === "edited" ? texts.map((text) => text.replace(/"verdict": "(?!right)[a-z-]+"/, '"verdict": "right"')) : texts;
};

/** Everything as it lands on the desk, in no order. */
export const ARRIVALS: readonly Arrival[] = chance.shuffled(TRUTH.flatMap((truth) => troubled(truth, textsOf(truth)).map((text, index): Arrival => ({ name: `${truth.learner}-${index + 1}.txt`, text }))));
