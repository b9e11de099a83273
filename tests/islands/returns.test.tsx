import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { type Desk, deskRow } from "../../src/engine/cohort/desk-row.ts";
import { gatherReturns, readArrival } from "../../src/engine/cohort/returns.ts";
import { handInBlock, handInFile } from "../../src/engine/record/hand-in-text.ts";
import { listId, questionCount } from "../../src/engine/record/list-form.ts";
import { spokenCheck } from "../../src/engine/record/list-sheet.ts";
import { EDITIONS } from "../../src/facts/editions.ts";
import { Corrections } from "../../src/islands/returns/Corrections.tsx";
import { markerFor } from "../../src/islands/returns/marker.ts";
import { ReturnsTable } from "../../src/islands/returns/ReturnsTable.tsx";
import { handInOf, listOf, marker } from "../support/lists.ts";

const list = listOf(["greatest-depth", "how-many"], { spoken: spokenCheck("0123456789abcdef", "HERON 42") });
const desk: Desk = { list, editions: EDITIONS, marker, edition: "0.1.0" };
/** A bank in which a newer version of every family takes what the locked one calls off. */
const corrected: Desk = { ...desk, marker: { ...marker, gradeNewest: (item, response) => ({ ...marker.grade(item, response), verdict: "right", score: 1 }) } };
const made = (learner: string, word: string, spoken = "heron 42", place: string | null = "Northmoor") => handInOf(list, { learner, place, spoken, words: [word] });
const broken = handInBlock(made("dunlin-19", "++++")).split("\n").toSpliced(3, 2).join("\n");
const texts = [handInFile(made("avocet-12", "++++")), handInFile(made("bittern-03", "++-+")), handInFile(made("curlew-27", "++++", "heron 43")), broken, handInFile(made("egret-08", "+", "heron 42", "<img src=x onerror=alert(1)>"))];
const returns = gatherReturns(texts.flatMap((text, index) => readArrival({ name: `<b>${index}</b>.json`, text })), { id: listId(list), attempts: 3, questions: questionCount(list) });
const rowsBy = (by: Desk) => returns.people.map((person) => deskRow(person, by));
const table = (by: Desk, byCorrection = false): string => renderToStaticMarkup(<ReturnsTable rows={rowsBy(by)} returns={returns} isSupervised byCorrection={byCorrection} alsoCounted={new Set()} onCount={() => undefined} />);
const rowOf = (markup: string, learner: string): string => (markup.match(/<tr[\s\S]*?<\/tr>/g) ?? []).find((row) => row.includes(`>${learner}<`)) ?? "";

describe("the table of what came back", () => {
  it("has a row and a sentence for everybody: well, unsafe, another word, damaged", () => {
    const markup = table(desk);
    expect(rowOf(markup, "avocet-12")).toContain("4 of 4 right");
    expect(rowOf(markup, "avocet-12")).toContain("the word read aloud fits");
    expect(rowOf(markup, "avocet-12")).toContain("<b>passes</b>");
    expect(rowOf(markup, "curlew-27")).toContain("is not the word of this list");
    expect(rowOf(markup, "curlew-27")).toContain("<b>unknown</b>");
    expect(rowOf(markup, "dunlin-19")).toContain("lacks lines (2 of them)");
  });

  it("says beside a damaged hand-in that something else of the same learner came, and only there", () => {
    const both = gatherReturns([handInFile(made("dunlin-19", "++++")), broken, broken.replaceAll("dunlin-19", "heron-41")].flatMap((text, index) => readArrival({ name: `${index}.txt`, text })), { id: listId(list), attempts: 3, questions: questionCount(list) });
    const markup = renderToStaticMarkup(<ReturnsTable rows={both.people.map((person) => deskRow(person, desk))} returns={both} isSupervised byCorrection={false} alsoCounted={new Set()} onCount={() => undefined} />);
    expect((markup.match(/<tr[\s\S]*?<\/tr>/g) ?? []).slice(1).map((row) => [/>(dunlin-19|heron-41)</.exec(row)?.[1], row.includes("Something else of this learner code was read")])).toEqual([["dunlin-19", false], ["dunlin-19", true], ["heron-41", false]]);
  });

  it("shows what strangers wrote as text and never as markup", () => {
    const markup = table(desk);
    expect(markup).toContain("&lt;img src=x onerror=alert(1)&gt;");
    expect(markup).toContain("&lt;b&gt;3&lt;/b&gt;.json");
    expect(markup).not.toContain("<img");
  });
});

describe("a correction on the desk", () => {
  it("is said for each learner whom it touches, with the result before and after, and asks which marks count", () => {
    const row = rowOf(table(corrected), "bittern-03");
    expect(row).toMatch(/A correction changes question 3, from “[^”]+” to “Right”\./);
    expect(row).toContain("from “not yet” to “passes”");
    expect(row).toContain("<b>not yet</b>");
    expect(rowOf(table(corrected, true), "bittern-03")).toContain("<b>passes</b>");
    const choice = renderToStaticMarkup(<Corrections rows={rowsBy(corrected)} byCorrection={false} onChoose={() => undefined} />);
    expect(choice).toContain("Learners who get another mark on some question: 1. Results that change: bittern-03.");
    expect(choice.match(/type="radio"/g)).toHaveLength(2);
    expect(renderToStaticMarkup(<Corrections rows={rowsBy(desk)} byCorrection={false} onChoose={() => undefined} />)).toBe("");
  });
});

describe("the marker of the page", () => {
  it("draws and grades like the bank, and has nothing newer while the locked versions are the newest", async () => {
    const onPage = await markerFor(list);
    const [row] = rowsBy({ ...desk, marker: onPage });
    expect(row).toEqual(rowsBy(desk)[0]);
    expect(row?.sheets[0]?.corrected).toBeNull();
  });
});
