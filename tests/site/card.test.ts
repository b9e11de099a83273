import { describe, expect, it } from "vitest";
import { MOST_COUNTED } from "../../src/engine/kit/local-list.ts";
import { tooLongFor } from "../../src/components/made-card.ts";
import { type CardMadeFrom, trolleyCard } from "../../src/components/trolley-card.ts";
import { cardWordsOf } from "../../src/facts/card-words.ts";
import { cautionNamed, cautionText } from "../../src/facts/cautions.ts";
import { LOCAL_TABLES } from "../../src/facts/local-list.ts";
import { PATHS } from "../../src/facts/paths.ts";
import { SITE } from "../../src/facts/site.ts";
import { DRILL_GRAPH, SET_UP_GRAPH } from "../../src/facts/step-graphs.ts";
import { pageAt, textIn } from "../support/site.ts";

const words = cardWordsOf("en");
const from: CardMadeFrom = { tables: LOCAL_TABLES, setUp: SET_UP_GRAPH, drill: DRILL_GRAPH, words, notes: [] };
const things = LOCAL_TABLES.pack.things;
const withThings = (changed: typeof things): CardMadeFrom => ({ ...from, tables: { ...LOCAL_TABLES, pack: { ...LOCAL_TABLES.pack, things: changed } } });
const lower = (text: string): string => text.toLowerCase();

describe("the trolley card", () => {
  const card = trolleyCard(from);

  it("keeps every edge of its graphs, and prints each of their steps that has a line", () => {
    for (const [graph, lines, texts] of [[SET_UP_GRAPH, card.groups.flatMap((group) => group.lines), words.steps], [DRILL_GRAPH, card.drill, words.drill]] as const) {
      const printed = lines.map(({ text }) => Object.keys(texts).find((id) => text.startsWith(texts[id]?.split("{")[0] ?? "none")) ?? "unknown");
      expect(new Set(printed)).toEqual(new Set(Object.keys(texts)));
      const broken = graph.edges.filter(({ before, after }) => printed.includes(before) && printed.includes(after) && printed.indexOf(before) > printed.indexOf(after));
      expect(broken).toEqual([]);
      // A line for a step that the graph does not have would never be printed, and nobody would miss it.
      expect(Object.keys(texts).filter((id) => !graph.cards.includes(id))).toEqual([]);
    }
  });

  it("says of every line whose it is, and marks what can hurt somebody", () => {
    const lines = [...card.groups.flatMap((group) => group.lines), ...card.drill];
    expect(lines.filter(({ sources }) => sources.length === 0 || sources.some((source) => words.signs[source] === undefined))).toEqual([]);
    expect(lines.filter(({ isCritical }) => isCritical).length).toBeGreaterThan(5);
    expect(lines.some(({ isCritical }) => !isCritical)).toBe(true);
  });

  it("changes with the local list, and its version with it", () => {
    const swabs = { thing: "saline syringe", more: "saline syringes", pieces: 3, class: "instruments", shape: "box", stock: "SM-9" };
    const longer = trolleyCard(withThings([...things, swabs]));
    expect(longer.counts.find(({ thing }) => thing === "Saline syringes")?.comes).toBe("3");
    expect(longer.version).not.toBe(card.version);
    const [first, ...rest] = things;
    expect(trolleyCard(withThings(rest)).counts.some(({ thing }) => lower(thing).startsWith(first?.thing ?? "none"))).toBe(false);
    const none = trolleyCard(withThings(things.map(({ keep: _, ...thing }) => thing)));
    expect(none.groups.flatMap((group) => group.lines).some(({ text }) => text.startsWith("Set aside"))).toBe(false);
    const noCaps = trolleyCard({ ...from, tables: { ...LOCAL_TABLES, counts: { ...LOCAL_TABLES.counts, capsAndLids: "not counted" } } });
    expect([card, noCaps].map(({ counts }) => counts.some(({ thing }) => /cap/i.test(thing)))).toEqual([true, false]);
  });

  it("has a line for needles that come in packets, also where the pack holds needles of its own", () => {
    // The needles of sutures are counted like any other (a usual rule of count policies; common practice, no source).
    const needles = things.filter((one) => one.class === "needles");
    expect(needles.length).toBeGreaterThan(0);
    expect(card.counts.find(({ thing }) => thing === "Other needles")?.comes).toBe("by 2");
    const without = trolleyCard(withThings(things.filter((one) => one.class !== "needles")));
    expect(without.counts.find(({ thing }) => thing === "Needles")?.comes).toBe("by 2");
    const names = card.counts.map(({ thing }) => thing);
    expect(new Set(names).size).toBe(names.length);
  });

  it("keeps its version while nothing changes that it prints, and takes another with the state of review", () => {
    expect(trolleyCard(withThings(things.map((thing) => ({ ...thing, stock: `${thing.stock}9` })))).version).toBe(card.version);
    expect(trolleyCard({ ...from, notes: [{ id: "C13", text: "Last reviewed on 2027-03-01" }] }).version).not.toBe(card.version);
    expect(card.version).toMatch(/^[0-9A-HJKMNP-TV-Z]{3}-[0-9A-HJKMNP-TV-Z]{3}$/);
  });

  it.each([["/card/", "a4"], ["/card/a5/", "a5"]] as const)("stands at %s with every counted thing, its cautions, its state of review and a place for the local policy", (path, paper) => {
    const html = /<article class="card[\s\S]*?<\/article>/.exec(pageAt(path).html)?.[0] ?? "";
    const text = textIn(html);
    for (const { thing, more, pieces } of things.filter((one) => one.class !== "not counted")) expect(lower(text)).toContain(pieces > 1 ? more : thing);
    for (const id of ["C1", "C2", "C5", "C7"]) expect(text).toContain(cautionText(id));
    expect(text).toContain(cautionNamed("C13").unreviewed);
    expect(text).toContain(words.policy);
    expect(text).toContain(SITE.edition === "" ? "" : `Version ${/data-version="([^"]+)"/.exec(html)?.[1]}`);
    expect(card.counts.length).toBeLessThanOrEqual(MOST_COUNTED[paper]);
  });

  it("says how many lines a paper holds where the list has more", () => {
    const longer = trolleyCard(withThings(Array.from({ length: 13 }, (_, at) => ({ thing: `hook ${at}`, more: `hooks ${at}`, pieces: 1, class: "instruments", shape: "probe", stock: `SM-${at}` }))));
    expect([tooLongFor(card, "a4"), tooLongFor(card, "a5"), tooLongFor(longer, "a4"), tooLongFor(longer, "a5")]).toEqual([null, null, null, { rows: "17", most: "12" }]);
  });

  it("has the same version on both papers and on the list of what hangs where", () => {
    const versions = ["/card/", "/card/a5/"].map((path) => /data-version="([^"]+)"/.exec(pageAt(path).html)?.[1]);
    expect(versions[0]).toBe(versions[1]);
    expect(textIn(pageAt("/card/where/").html)).toContain(`The newest card has the version ${versions[0]}`);
  });
});

describe("a poster", () => {
  it.each(PATHS.map(({ id, who, title }) => ({ id, who, title })))("of $id names the path and its readers, and says how to get there", ({ id, who, title }) => {
    const html = /<article class="card poster[\s\S]*?<\/article>/.exec(pageAt(`/poster/${id}/`).html)?.[0] ?? "";
    expect(textIn(html)).toContain(who);
    expect(textIn(html)).toContain(title);
    expect(textIn(html)).toContain(cautionText("C1"));
    // Without an address a square would lead nowhere, so there is a line to write on instead.
    const hasAddress = SITE.address !== "";
    expect([html.includes('class="square"'), html.includes('class="write-on"')]).toEqual([hasAddress, !hasAddress]);
  });
});
