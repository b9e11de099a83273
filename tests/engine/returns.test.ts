import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { draw, slipsOf } from "../../src/bank/index.ts";
import { deskRow, type Desk, papersOf, resultBy } from "../../src/engine/cohort/desk-row.ts";
import { gatherReturns, readArrival, type Arrival, type Returns } from "../../src/engine/cohort/returns.ts";
import { completionCode, readCompletion, shortList } from "../../src/engine/record/completion-code.ts";
import { handInSum, isHandIn } from "../../src/engine/record/hand-in-form.ts";
import { readHandIns } from "../../src/engine/record/hand-in-read.ts";
import { handInBlock, handInFile, handInParts } from "../../src/engine/record/hand-in-text.ts";
import { readListCode } from "../../src/engine/record/list-code.ts";
import { listId, questionCount, type TeachingList } from "../../src/engine/record/list-form.ts";
import { linkText, readLink } from "../../src/engine/record/list-link.ts";
import { spokenCheck } from "../../src/engine/record/list-sheet.ts";
import { EDITIONS } from "../../src/facts/editions.ts";
import { howMany } from "../support/how-many.ts";
import { ARRIVALS, DEMO_LIST, TRUTH } from "../support/demo-cohort.ts";
import { handInOf, listOf, marker } from "../support/lists.ts";

const deskOf = (list: TeachingList): Desk => ({ list, editions: EDITIONS, marker, edition: "0.1.0" });
const gathered = (arrivals: readonly Arrival[], list: TeachingList): Returns => gatherReturns(arrivals.flatMap(readArrival), { id: listId(list), attempts: list.attempts, questions: questionCount(list) });
const rowsOf = (arrivals: readonly Arrival[], list: TeachingList, desk: Desk = deskOf(list)) => gathered(arrivals, list).people.map((person) => deskRow(person, desk));
const arrival = (text: string, name = "one"): Arrival => ({ name, text });
const list = listOf(["greatest-depth", "how-many"]);
const SEED = 20261201;

/** What a letter of the truth comes to: a slip may be graded a power of ten or a wrong rounding, but never right; and it is unsafe only where the letter says so or where no safe slip exists. */
const LETTER: Readonly<Record<string, (verdict: string) => boolean>> = { "+": (verdict) => verdict === "right", "-": (verdict) => verdict !== "right", "!": (verdict) => verdict !== "right" };

describe("the returns desk, over an invented cohort whose truth is known", () => {
  const returns = gathered(ARRIVALS, DEMO_LIST);
  const rows = returns.people.map((person) => deskRow(person, deskOf(DEMO_LIST)));
  const rowOf = (learner: string) => rows.find((row) => row.learner === learner);
  const readable = TRUTH.filter(({ trouble }) => trouble !== "damaged");

  it("has all four routes and every trouble in it", () => {
    expect(TRUTH.length).toBe(24);
    expect(new Set(TRUTH.map(({ route }) => route))).toEqual(new Set(["file", "block", "square", "code"]));
    expect(["damaged", "twice", "older", "edited"].map((trouble) => TRUTH.filter((one) => one.trouble === trouble).length)).toEqual([2, 3, 1, 1]);
  });

  it("shows everybody whose hand-in can be read, once, and names the two that cannot", () => {
    expect(rows.map(({ learner }) => learner)).toEqual(readable.map(({ learner }) => learner));
    expect(returns.refused.map(({ learner, fault }) => [learner, fault]).toSorted()).toEqual([["gannet-05", "letters-missing"], ["ibis-14", "not-json"]]);
    expect(returns.refused.find(({ learner }) => learner === "gannet-05")?.missing).toBeGreaterThan(0);
    expect(returns.copies).toBe(3);
  });

  it("finds for each question what the generator knows, and counts right answers and the rule as the truth has them", () => {
    const must = new Set(["greatest-depth"]);
    for (const { learner, word, route, trouble } of readable) {
      const row = rowOf(learner);
      const right = [...word].filter((letter) => letter === "+").length;
      if (route === "code") {
        expect([learner, row?.state, row?.person.codes.map((code) => [code.attempt, code.right]), row?.result]).toEqual([learner, "code-only", [[1, right]], "unknown"]);
        continue;
      }
      const [sheet] = row?.sheets ?? [];
      expect([learner, sheet?.paper.marks.length]).toEqual([learner, word.length]);
      for (const [at, letter] of [...word].entries()) expect([learner, at, LETTER[letter]?.(sheet?.paper.marks[at]?.verdict ?? "")]).toEqual([learner, at, true]);
      expect(sheet?.rule.right).toBe(right);
      const isMustRight = (sheet?.paper.marks ?? []).every(({ family, verdict }) => !must.has(family) || verdict === "right");
      const isSafe = (sheet?.paper.marks ?? []).every(({ unsafe }) => !unsafe);
      const byRule = right * 100 >= 80 * word.length && isMustRight && isSafe ? "passes" : "not-yet";
      expect([learner, row?.result]).toEqual([learner, trouble === "edited" ? "unknown" : byRule]);
    }
    expect(new Set(rows.map(({ result }) => result))).toEqual(new Set(["passes", "not-yet", "unknown"]));
  });

  it("puts the unsafe slips of the truth on the unsafe side, wherever a question has one, and names them", () => {
    let met = 0;
    for (const { learner, word } of readable.filter(({ route }) => route !== "code")) {
      const marks = rowOf(learner)?.sheets[0]?.paper.marks ?? [];
      for (const [at, letter] of [...word].entries()) {
        const mark = marks[at];
        if (letter !== "!" || mark === undefined) continue;
        const hasUnsafe = slipsOf(draw(mark.family, mark.seed, { version: mark.version })).some(({ unsafe }) => unsafe);
        expect([learner, at, mark.unsafe, mark.unsafe && mark.slip !== null]).toEqual([learner, at, hasUnsafe, hasUnsafe]);
        met += hasUnsafe ? 1 : 0;
      }
    }
    expect(met).toBeGreaterThan(5);
  });

  it("names each irregularity: merged copies, the older edition with the mark that differs, the edited file", () => {
    for (const learner of ["bittern-03", "egret-08", "plover-20"]) expect([learner, rowOf(learner)?.person.received.map(({ names }) => names.length)]).toEqual([learner, [2]]);
    const older = rowOf("curlew-27")?.sheets[0];
    expect([older?.otherEdition, older?.claimedOtherwise.length, older?.claimedOtherwise[0]?.slot, rowOf("curlew-27")?.state]).toEqual(["0.0.9", 1, 0, "graded-again"]);
    const edited = rowOf("jackdaw-16");
    expect([edited?.state, edited?.sheets[0]?.isChanged, edited?.sheets[0]?.claimedOtherwise.length]).toEqual(["changed", true, 1]);
    const ordinary = readable.filter(({ trouble, route }) => trouble === "none" && route !== "code").map(({ learner }) => rowOf(learner));
    expect(ordinary.filter((row) => row?.state !== "as-graded")).toEqual([]);
  });

  it("counts the edited file only where the director says so", () => {
    const without = papersOf(rows, { alsoCounted: new Set(), byCorrection: false });
    const with_ = papersOf(rows, { alsoCounted: new Set(["jackdaw-16"]), byCorrection: false });
    expect([without.some(({ learner }) => learner === "jackdaw-16"), with_.length - without.length]).toEqual([false, 1]);
  });

  it("reads the rule over the edited file once it is counted, and over nothing else", () => {
    const changed = rows.filter((row) => resultBy(row, { alsoCounted: new Set(rows.map(({ learner }) => learner)), byCorrection: false }) !== row.result);
    expect(changed.map(({ learner }) => learner)).toEqual(["jackdaw-16"]);
    const [edited] = changed;
    expect(edited === undefined ? null : [resultBy(edited, { alsoCounted: new Set(), byCorrection: false }), resultBy(edited, { alsoCounted: new Set(["jackdaw-16"]), byCorrection: true })]).toEqual(["unknown", "not-yet"]);
  });

  it("comes to the same whatever the order of arrival", () => {
    const again = rowsOf([...ARRIVALS].reverse(), DEMO_LIST);
    expect(again.map(({ learner, state, result, sheets }) => [learner, state, result, sheets.map(({ paper }) => paper)])).toEqual(rows.map(({ learner, state, result, sheets }) => [learner, state, result, sheets.map(({ paper }) => paper)]));
  });
});

describe("a hand-in", () => {
  const handIn = handInOf(list, { learner: "avocet-12", place: "Northmoor", words: ["+-!+", "++"] });

  it("is the same by file, by block and by square codes", () => {
    const whole = { kind: "hand-in", handIn, sum: handInSum(handIn), isChanged: false };
    expect(isHandIn(handIn)).toBe(true);
    expect(readHandIns(handInFile(handIn))).toEqual([{ ...whole, route: "file" }]);
    expect(readHandIns(handInBlock(handIn))).toEqual([{ ...whole, route: "block" }]);
    const parts = handInParts(handIn);
    expect(parts.length).toBeGreaterThan(1);
    const joined = gathered(parts.map((text) => arrival(text)).reverse(), list);
    expect([joined.people[0]?.received[0]?.handIn, joined.refused]).toEqual([handIn, []]);
  });

  it("survives wrapping, quoting twice, indenting, soft hyphens and two blocks in one mail", () => {
    const block = handInBlock(handIn);
    const wrapped = block.replace(/(.{31})/g, "$1\r\n");
    const quoted = wrapped.split("\n").map((line) => `> > | ${line}`).join("\n");
    const soft = `\u00A0\u00AD${block.replaceAll("\n", "\u200B\n\t ")}`;
    const asPage = block.split("\n").map((line) => `&gt;&nbsp;${line}`).join("\n");
    for (const text of [wrapped, quoted, soft, asPage, block.replaceAll("\n", " ")]) expect(readHandIns(`Dear all,\n\n${text}\n-- \nsignature`)).toEqual(readHandIns(block));
    expect(readHandIns(`${block}\n\n${quoted}`)).toHaveLength(2);
  });

  /** A hand-in of a place whose half-width signs are spelled with hyphens, two and three side by side. */
  const dashed = (place: string) => handInBlock({ ...handIn, place });
  const places = ["Northmoor", "sﾀsﾀsﾀ sﾀ", "s！s！s！ s！s！"];

  it("survives a mail program that puts dashes for hyphens, and is the same hand-in", () => {
    const dashes = ["–", "—", "‑", "‐", "−"];
    for (const place of places) {
      const block = dashed(place);
      const whole = readHandIns(block);
      expect(whole.map(({ kind }) => kind)).toEqual(["hand-in"]);
      for (const dash of dashes) expect([dash, readHandIns(block.replaceAll("-", dash))]).toEqual([dash, whole]);
      // Two hyphens side by side become one long dash, three an em dash.
      for (const dash of ["–", "—"]) expect([dash, readHandIns(block.replaceAll("--", dash))]).toEqual([dash, whole]);
      expect(readHandIns(block.replaceAll("---", "—").replaceAll("--", "–"))).toEqual(whole);
      // Dashes that somebody put around the block, and none of its own.
      expect(readHandIns(`Here it is —\n${block.split("\n").map((line) => `– ${line}`).join("\n")}\n— sent on the way`)).toEqual(whole);
    }
    expect([/--/, /---/].map((joined) => places.some((place) => joined.test(dashed(place))))).toEqual([true, true]);
  });

  it(`with dashes anywhere is read as itself or not at all, and never as two things (seed ${SEED})`, () => {
    const put = fc.constantFrom("–", "—", "‑", "−", "~", "=", "_", "");
    fc.assert(fc.property(fc.constantFrom(...places), fc.array(fc.tuple(fc.nat(), put), { minLength: 1, maxLength: 8 }), (place, changes) => {
      const block = dashed(place);
      const changed = changes.reduce((text, [at, dash]) => { const from = at % text.length; return `${text.slice(0, from)}${dash}${text.slice(from + 1)}`; }, block);
      const found = readHandIns(changed);
      expect(found).toHaveLength(1);
      if (found[0]?.kind === "hand-in") expect(found).toEqual(readHandIns(block));
    }), { seed: SEED, numRuns: howMany(2000, 300) });
  });

  it("says what is missing of a block with dashes as it does of one with hyphens", () => {
    const lines = dashed(places[2] ?? "").split("\n");
    const cut = [...lines.slice(0, 3), ...lines.slice(5)].join("\n");
    expect(readHandIns(cut.replaceAll("-", "–"))).toEqual(readHandIns(cut));
    expect(readHandIns(cut)).toMatchObject([{ fault: "letters-missing", missing: 2, learner: "avocet-12" }]);
  });

  it("says how much is missing, and from whom, where a block or a print is not whole", () => {
    const lines = handInBlock(handIn).split("\n");
    const without = (from: number, count: number): string => [...lines.slice(0, from), ...lines.slice(from + count)].join("\n");
    const found = (text: string) => readHandIns(text)[0];
    expect(found(without(3, 3))).toMatchObject({ kind: "unread", fault: "letters-missing", missing: 3, learner: "avocet-12" });
    expect(found(lines.slice(0, -1).join("\n"))).toMatchObject({ fault: "cut-off", learner: "avocet-12" });
    expect(found(lines.with(3, `${lines[3]}XX`).join("\n"))).toMatchObject({ fault: "letters-added" });
    expect(found(lines.with(3, [...(lines[3] ?? "")].reverse().join("")).join("\n"))).toMatchObject({ fault: "sum" });
    expect(found(lines.with(0, (lines[0] ?? "").replace("HAND-IN 1", "HAND-IN 2")).join("\n"))).toMatchObject({ fault: "newer" });
    expect(gathered(handInParts(handIn).slice(1).map((text) => arrival(text)), list).refused[0]).toMatchObject({ fault: "part-missing", missing: 1, route: "square" });
    expect([found(""), found("hello"), found('{"a":1}'), found("x".repeat(1_000_001))].map((one) => (one?.kind === "unread" ? one.fault : one))).toEqual(["nothing", "nothing", "other-file", "too-long"]);
  });

  it("of another list, of an attempt too many or of a place that the sheet lacks is refused by name", () => {
    const other = handInOf(listOf(["how-many"]), { learner: "bittern-03", words: ["++"] });
    const many = handInOf(list, { learner: "curlew-27", words: ["+", "+", "+", "+"] });
    const far = { ...handIn, sheets: [{ attempt: 1, answers: (handIn.sheets[0]?.answers ?? []).map((answer) => ({ ...answer, slot: answer.slot + 40 })) }] };
    expect(gathered([other, many, far].map((one) => arrival(handInFile(one))), list).refused.map(({ fault }) => fault)).toEqual(["other-list", "attempt", "slot"]);
  });

  it("that goes on with a sheet replaces the earlier one; one that answers otherwise is named, and the first counts", () => {
    const early = handInOf(list, { learner: "avocet-12", words: ["+-"], at: "2026-11-20T08:00:00Z" });
    const later = handInOf(list, { learner: "avocet-12", words: ["+-++"], at: "2026-11-21T08:00:00Z" });
    const mended = handInOf(list, { learner: "avocet-12", words: ["++++"], at: "2026-11-22T08:00:00Z" });
    const [row] = rowsOf([mended, later, early].map((one) => arrival(handInFile(one))), list);
    expect([row?.person.conflicts, row?.sheets[0]?.paper.marks.map(({ verdict }) => verdict === "right"), row?.person.received.length]).toEqual([[1], [true, false, true, true], 3]);
  });

  it("that came whole is taken, whatever changed copy comes beside it, before or after", () => {
    const whole = handInFile(handInOf(list, { learner: "avocet-12", words: ["+-++"] }));
    const lied = whole.replace(/"verdict": "(?!right)[a-z-]+"/, '"verdict": "right"');
    for (const order of [[whole, lied], [lied, whole]]) {
      const [row] = rowsOf(order.map((text) => arrival(text)), list);
      expect([row?.state, row?.result, row?.person.received.map(({ isChanged }) => isChanged).toSorted(), row?.person.conflicts]).toEqual(["as-graded", "not-yet", [false, true], []]);
    }
  });

  it("after the due day is marked late, and the last attempt decides", () => {
    const [row] = rowsOf([arrival(handInFile(handInOf(list, { learner: "avocet-12", words: ["----", "++++"], at: "2026-12-05T08:00:00Z" })))], list);
    expect([row?.result, row?.sheets.map(({ isLate }) => isLate), row?.sheets.map(({ rule }) => rule.passes)]).toEqual(["passes", [true, true], [false, true]]);
  });

  it("of a supervised list counts with the word that was read aloud, and not with another", () => {
    const supervised = listOf(["greatest-depth", "how-many"], { spoken: spokenCheck(list.nonce, "HERON 42") });
    const row = (spoken: string | null) => rowsOf([arrival(handInFile(handInOf(supervised, { learner: "avocet-12", spoken, words: ["++++"] })))], supervised)[0];
    expect([row("heron 42")?.result, row("heron 43")?.state, row("heron 43")?.sheets.length, row("heron 43")?.result]).toEqual(["passes", "spoken-wrong", 0, "unknown"]);
  });

  it("whose questions came from another local list is not marked, and says which", () => {
    const packed = listOf(["pack-check"]);
    const made = handInOf(packed, { learner: "avocet-12", words: ["++"] });
    const elsewhere = { ...made, sheets: made.sheets.map((sheet) => ({ ...sheet, answers: sheet.answers.map((answer) => ({ ...answer, local: "ab12" })) })) };
    const [row] = rowsOf([arrival(handInFile(elsewhere))], packed);
    expect([row?.sheets[0]?.unmarked, row?.result]).toEqual([[0, 1], "unknown"]);
  });
});

describe("a correction", () => {
  const desk = deskOf(list);
  /** A family whose newest version takes every answer that the locked one calls off. */
  const lenient: Desk = { ...desk, marker: { ...marker, gradeNewest: (item, response) => ({ ...marker.grade(item, response), verdict: "right", score: 1 }) } };
  const text = handInFile(handInOf(list, { learner: "avocet-12", words: ["+-++"] }));

  it("shows which marks change and whether the result does, and counts by the list's edition unless told otherwise", () => {
    const [row] = rowsOf([arrival(text)], list, lenient);
    expect([row?.sheets[0]?.changedByCorrection.map(({ slot, to }) => [slot, to]), row?.result, row?.correctedResult, row?.state]).toEqual([[[1, "right"]], "not-yet", "passes", "graded-again"]);
    const rows = row === undefined ? [] : [row];
    const verdicts = (byCorrection: boolean) => papersOf(rows, { alsoCounted: new Set(), byCorrection })[0]?.marks.map(({ verdict }) => verdict === "right");
    expect([verdicts(false), verdicts(true)]).toEqual([[true, false, true, true], [true, true, true, true]]);
    expect(rowsOf([arrival(text)], list)[0]?.sheets[0]?.corrected).toBeNull();
  });
});

describe("a completion code", () => {
  const code = completionCode({ list: shortList(listId(list)), attempt: 2, right: 7, unsafe: 1 }, "avocet-12");

  it("has twelve signs and fits its learner code alone", () => {
    expect(code.replaceAll("-", "")).toHaveLength(12);
    expect(readCompletion(code.toLowerCase(), "avocet-12")).toEqual({ list: shortList(listId(list)), attempt: 2, right: 7, unsafe: 1 });
    expect(readCompletion(code, "bittern-03")).toEqual({ fault: "content" });
    expect(readHandIns(`avocet-12 ${code}\nbittern-03, ${code}`).map(({ kind }) => kind)).toEqual(["code", "unread"]);
  });

  it("is read below its learner code, with dashes for hyphens, and for several attempts under one another", () => {
    const second = completionCode({ list: shortList(listId(list)), attempt: 3, right: 8, unsafe: 0 }, "avocet-12");
    const codes = (text: string) => readHandIns(text).map((found) => (found.kind === "code" ? [found.learner, found.code.attempt] : [found.kind]));
    const read = [["avocet-12", 2]];
    for (const text of [`avocet-12\n${code}`, `Dear all,\r\n\r\navocet-12\r\n\r\n  ${code.toLowerCase()}\r\nregards`, `avocet-12:\n${code.replaceAll("-", " ")}`, `avocet–12\n${code.replaceAll("-", "–")}`, `avocet‑12 ${code.replaceAll("-", "—")}`]) expect([text, codes(text)]).toEqual([text, read]);
    expect(codes(`avocet-12\n${code}\n${second}`)).toEqual([["avocet-12", 2], ["avocet-12", 3]]);
  });

  it("is never read as two things, nor for somebody whom it was not made for", () => {
    const kinds = (text: string) => readHandIns(text).map((found) => [found.kind, "learner" in found ? found.learner : null]);
    for (const text of [`avocet-12 ${code}\n${code}`, `bittern-03\navocet-12 ${code}`, `avocet-12\n${code}\nbittern-03`]) expect([text, kinds(text)]).toEqual([text, [["code", "avocet-12"]]]);
    expect(kinds(`bittern-03\n${code}\navocet-12`)).toEqual([["unread", "bittern-03"]]);
    for (const text of [`${code}\navocet-12`, `${code}\n${code}`, "avocet-12\nsee you there"]) expect([text, kinds(text)]).toEqual([text, [["unread", null]]]);
  });
});

describe("whatever a stranger sends", () => {
  const handIn = handInOf(list, { learner: "avocet-12", words: ["+-!+"] });
  const seeds = [handInFile(handIn), handInBlock(handIn), handInParts(handIn).join("\n"), linkText(list), `avocet-12 ${completionCode({ list: 1, attempt: 1, right: 1, unsafe: 0 }, "avocet-12")}`, '<img src=x onerror="alert(1)">', "=cmd|' /C calc'!A0", "__proto__", '{"__proto__":{"a":1}}'];
  const bitten = fc.tuple(fc.constantFrom(...seeds), fc.nat(), fc.nat(40), fc.string({ unit: "binary", maxLength: 40 })).map(([text, at, cut, put]) => {
    const place = at % (text.length + 1);
    return text.slice(0, place) + put + text.slice(place + cut);
  });
  const anything = fc.oneof(bitten, bitten, fc.string({ unit: "binary", maxLength: 300 }), fc.json());

  it("is read by 10,000 draws without a throw, a hang or a loss, and whole things beside it are still read", { timeout: 120_000 }, () => {
    const whole = readArrival(arrival(handInFile(handIn), "whole"));
    let slowest = 0;
    fc.assert(fc.property(anything, (text) => {
      const start = performance.now();
      const link = readLink(text);
      if (!("fault" in link)) expect(link).toEqual(list);
      const code = readListCode(text, [], EDITIONS);
      expect("fault" in code).toBe(true);
      const found = readArrival(arrival(text, "odd"));
      expect(found.length).toBeGreaterThan(0);
      const { people, refused, copies } = gatherReturns([...whole, ...found], { id: listId(list), attempts: 3, questions: 4 });
      // What was whole before is whole still, and all that came is somewhere: with a learner, refused by name, or merged.
      expect(people.find(({ learner }) => learner === "avocet-12")?.received.some(({ sum }) => sum === handInSum(handIn))).toBe(true);
      expect(people.flatMap(({ received, codes }) => [...received, ...codes]).length + refused.length + copies).toBeGreaterThan(1);
      slowest = Math.max(slowest, performance.now() - start);
    }), { numRuns: howMany(10_000, 1_000) });
    expect(slowest).toBeLessThan(1000);
    expect(Object.hasOwn(Object.prototype, "a")).toBe(false);
  });

  it("costs no more than its length: a million signs of the worst kinds are read within seconds", () => {
    const start = performance.now();
    for (const piece of ["BEGIN HAND-IN 1:aaa:999999:", "KH1:", "> > ", "{", "a a-", '"learner" : "', ":END HAND-IN", "avocet-12 0000 "]) readHandIns(piece.repeat(Math.floor(999_999 / piece.length)));
    expect(performance.now() - start).toBeLessThan(10_000);
  });
});
