import { describe, expect, it } from "vitest";
import { compute, families } from "../../src/bank/index.ts";
import { EVIDENCE } from "../../src/components/evidence-pages.ts";
import { cautionText } from "../../src/facts/cautions.ts";
import { PANELS } from "../../src/facts/panels.ts";
import { PATHS } from "../../src/facts/paths.ts";
import { fileAt, pageAt, pages, textIn } from "../support/site.ts";

const own = pages.filter(({ path }) => path.startsWith("/evidence/"));
const without = own.filter(({ path }) => path !== "/evidence/completion/");
const rowsOf = (html: string): readonly string[] => html.match(/<tr>[\s\S]*?<\/tr>/g) ?? [];
const cellsOf = (row: string): readonly string[] => [...row.matchAll(/<t[dh][^>]*>([\s\S]*?)<\/t[dh]>/g)].map(([, cell = ""]) => textIn(cell).trim());

describe("the evidence pack", () => {
  it("answers each question on a page that stands, and says what it does not show", () => {
    const { html } = pageAt("/evidence/");
    for (const { path, title } of EVIDENCE) {
      expect(html).toContain(`href="${path}"`);
      expect(textIn(pageAt(path).html)).toContain(title);
    }
    for (const id of ["C1", "C6", "C12"]) expect(html).toContain(cautionText(id));
    expect(own.length).toBe(EVIDENCE.length);
  });

  it("asks for no script, but where a learner's data are read in the browser", () => {
    expect(without.length).toBe(7);
    expect(without.filter(({ html }) => /astro-island|<script[^>]*\ssrc=/.test(html)).map(({ path }) => path)).toEqual([]);
    expect(pageAt("/evidence/completion/").html).toContain("<noscript>");
  });

  it("holds no learner and no programme's name: every line is to be filled", () => {
    for (const path of ["/evidence/privacy/", "/evidence/conflicts/"]) {
      const lines = [...pageAt(path).html.matchAll(/<dl class="to-fill">([\s\S]*?)<\/dl>/g)].flatMap(([, list = ""]) => [...list.matchAll(/<dd>([\s\S]*?)<\/dd>/g)].map(([, line]) => line));
      expect(lines.length).toBeGreaterThan(1);
      expect(new Set(lines)).toEqual(new Set([""]));
    }
  });

  it("is found on the director's path", () => {
    const steps = PATHS.find(({ id }) => id === "director")?.sittings.flatMap((sitting) => sitting.steps.map((step) => ("page" in step ? step.page : "")));
    expect(steps).toEqual(expect.arrayContaining(["/evidence/", "/evidence/completion/"]));
  });
});

describe("objectives and sources", () => {
  const { html } = pageAt("/evidence/objectives/");

  it("name every question with its works, and no question twice under one objective", () => {
    const missing = families.filter(({ id, code, sources }) => {
      const row = rowsOf(html).find((one) => one.includes(`href="/practice/${id}/"`)) ?? "";
      return !row.includes(`>${code}<`) || sources.some(({ source }) => !row.includes(`/sources/#${source}"`)) || (sources.length === 0) !== row.includes(">none<");
    });
    expect(missing.map(({ id }) => id)).toEqual([]);
    const links = [...html.matchAll(/href="\/practice\/([^"/]+)\/"/g)].map(([, id]) => id);
    expect(links.length).toBe(families.reduce((sum, { objectives }) => sum + objectives.length, 0));
  });

  it("show that nobody has reviewed, where nobody has", () => {
    expect(textIn(html)).toContain("Not yet reviewed by a clinician.");
  });
});

describe("contact time", () => {
  const rows = rowsOf(pageAt("/evidence/time/").html).map(cellsOf).filter((cells) => cells.length === 6 && /^(M\d\d|DX) /.test(cells[0] ?? ""));

  it("is what the formula gives for the numbers printed beside it", () => {
    expect(rows).toHaveLength(15);
    for (const [module = "", words, questions, difficulty, formula] of rows) {
      const found = compute("contact-time", { words: Number(words), questions: Number(questions), difficulty: Number(difficulty) });
      expect([module, formula]).toEqual([module, "contactMin" in found ? Number(found["contactMin"]).toFixed(1) : ""]);
    }
  });

  it("agrees with the minutes at the head of each module to a minute and a half", () => {
    // The author rounds, and words are counted to the nearest ten.
    expect(rows.filter(([, , , , formula, minutes]) => Math.abs(Number(formula) - Number(minutes)) > 1.5).map(([module, , , , formula, minutes]) => `${module}: the formula gives ${formula}, its head says ${minutes}`)).toEqual([]);
  });

  it("adds up on every path as the path's own page says", () => {
    const printed = rowsOf(pageAt("/evidence/time/").html).map(cellsOf).filter((cells) => cells.length === 4);
    for (const path of PATHS) {
      const [, , , together = ""] = printed.find(([name]) => name === `${path.who}: ${path.title.toLowerCase()}`) ?? [];
      expect(together).not.toBe("");
      expect(textIn(pageAt(`/paths/${path.id}/`).html)).toContain(`, ${together}`);
    }
  });
});

describe("the published form of a saved cohort", () => {
  it("is a schema that names its form and every field of a paper", () => {
    const schema = JSON.parse(fileAt("/cohort.schema.json").toString()) as { $id: string; properties: { papers: { items: { required: readonly string[] } } } };
    expect(schema.$id).toBe("small-knee-workbook/cohort/1");
    expect([...schema.properties.papers.items.required].sort()).toEqual(["attempt", "handedInAt", "learner", "list", "marks", "place"]);
  });
});

describe("how the standard is set", () => {
  it("invents no panel: it shows those that met, and says so where none has", () => {
    const text = textIn(pageAt("/evidence/standard/").html);
    expect(text.includes("until a panel has met there is no cut score")).toBe(PANELS.length === 0);
    for (const { sheet, on } of PANELS) expect(text).toContain(`${sheet}, ${on}`);
  });

  it("lists every question with an unsafe side as one that may have to be right", () => {
    const { html } = pageAt("/evidence/standard/");
    // Two questions may share a code, as the two steps of 10o do; on paper the title alone tells them apart.
    expect(html).toMatch(/>10o<\/a> [A-Z][^<]+; <a[^>]*>10o<\/a> [A-Z]/);
    const listed = new Set([...html.slice(html.indexOf('id="candidates"')).matchAll(/href="\/practice\/([^"/]+)\/"/g)].map(([, id]) => id));
    expect(listed).toEqual(new Set(families.filter(({ unsafe }) => unsafe).map(({ id }) => id)));
  });
});
