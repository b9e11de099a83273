import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { C6_MODULES } from "../../src/components/caution-rules.ts";
import { cautionText } from "../../src/facts/cautions.ts";
import { draw, families as bank } from "../../src/bank/index.ts";
import { LEDGER } from "../../src/facts/ledger.ts";
import { exists, fileAt, gzipBytes, pageAt, pages, textIn } from "../support/site.ts";

const listed = new Set(bank.map(({ id }) => id));
/** Which file of src/figures/pictures draws the questions of a family, as the registry has it. */
const registry = new Map([...readFileSync(new URL("../../src/figures/picture-of-item.ts", import.meta.url), "utf8").matchAll(/^ {2}"?([\w-]+)"?: async .*?pictures\/([\w-]+)\.ts/gm)].map(([, family = "", file = ""]) => [family, file]));
const pictureFile = (family: string): string => {
  const { kind, givens } = draw(family, 1);
  if (kind === "line" || (kind === "mark" && !registry.has(family))) return "knee";
  if (family === "zone-angle") return "zone";
  if (family === "in-view") return "cone";
  return registry.get(family) ?? (givens.some(({ key }) => key === "junctionToBundleMm") ? "line" : "");
};
const pictureFiles = new Set([...registry.values(), "knee", "zone", "line", "cone"]);
const familyOf = (ask: string): string => /data-family="([^"]+)"/.exec(ask)?.[1] ?? "";
const hasQuestions = (html: string): boolean => html.includes("astro-island");

/** Module pages, and how many families each asks. */
const modules = pages.filter(({ path }) => /^\/modules\/[^/]+\/$/.test(path));

describe("every page", () => {
  it("is one of the pages we know of, so that the checks below see them all", () => {
    expect(pages.map(({ path }) => path)).toEqual(expect.arrayContaining(["/", "/404.html", "/modules/", "/numbers/", "/numbers/bundle-line/", "/sources/", "/search/", "/intended-use/", "/modules/needle-path-and-depth/"]));
  });

  it.each(pages)("$path has language, title, description with C1, one main heading and levels in order", ({ html }) => {
    expect(html).toMatch(/<html lang="en-GB"/);
    expect(html).toMatch(/<title>[^<]+<\/title>/);
    expect(/<meta name="description" content="([^"]+)"/.exec(html)?.[1]).toContain(cautionText("C1"));
    const levels = [...html.matchAll(/<h([1-6])[ >]/g)].map((match) => Number(match[1]));
    expect(levels.filter((level) => level === 1).length).toBe(1);
    expect(levels.filter((level, index) => index > 0 && level > (levels[index - 1] ?? 1) + 1)).toEqual([]);
  });

  it.each(pages)("$path carries C1 and C16 in its footer", ({ html }) => {
    const foot = html.slice(html.indexOf("<footer"));
    expect(foot).toContain('data-caution="C1"');
    expect(foot).toContain('data-caution="C16"');
    expect(textIn(foot)).toContain(cautionText("C16"));
  });

  it.each(pages)("$path has ids that occur once, and links that lead somewhere", ({ path, html }) => {
    const ids = [...html.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1] ?? "");
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    const links = [...html.matchAll(/<a [^>]*href="([^"]+)"/g)].map((match) => match[1] ?? "").filter((link) => !link.startsWith("https://doi.org/"));
    const dead = links.filter((link) => {
      const [address = "", anchor] = link.split("#");
      const here = address === "" ? path : address;
      const target = exists(here) || here === "/404.html" ? pageAt(here).html : null;
      return target === null || (anchor !== undefined && !target.includes(`id="${anchor}"`));
    });
    expect([path, dead]).toEqual([path, []]);
  });

  it.each(pages)("$path asks nothing of another origin and writes no style into its markup", ({ html }) => {
    const loaded = [...html.matchAll(/\s(?:src|component-url|renderer-url|before-hydration-url)="([^"]+)"/g), ...html.matchAll(/<link [^>]*href="([^"]+)"/g)].map((match) => match[1] ?? "");
    expect(loaded.filter((address) => !address.startsWith("/"))).toEqual([]);
    expect(html).not.toMatch(/\sstyle="/);
    expect(html).not.toMatch(/<[^>]+\son\w+="/);
  });

  it.each(pages)("$path has a policy without unsafe-inline, and only small inline scripts", ({ html }) => {
    const policy = /http-equiv="content-security-policy" content="([^"]+)"/i.exec(html)?.[1] ?? "";
    expect(policy).toContain("default-src &#39;self&#39;".replaceAll("&#39;", policy.includes("&#39;") ? "&#39;" : "'"));
    expect(policy).not.toMatch(/unsafe-inline|(?<!wasm-)unsafe-eval|https?:/);
    // A data block is not run (HTML, 4.12.1: a type that is none of JavaScript); what is run is small.
    const inline = [...html.matchAll(/<script(?![^>]*\s(?:src=|type="application\/ld\+json"))[^>]*>([\s\S]*?)<\/script>/g)].map((match) => match[1] ?? "");
    expect(inline.reduce((sum, script) => sum + script.length, 0)).toBeLessThanOrEqual(5 * 1024);
  });

  it.each(pages)("$path weighs less than its budget", ({ path, html }) => {
    // 30 KB with questions, 10 KB without; the ledger, the works cited, the dimensions of the model knee and the gallery are long and may weigh what a page with questions does.
    const isLong = hasQuestions(html) || /^\/(numbers|sources|model-knee|gallery|evidence\/objectives)\//.test(path);
    expect(gzipBytes(html)).toBeLessThan((isLong ? 30 : 10) * 1024);
  });
});

describe("the policy as a header", () => {
  it("allows what every page allows and no more than the pages do", () => {
    const header = fileAt("policy.txt").toString();
    expect(header).not.toMatch(/unsafe-inline|(?<!wasm-)unsafe-eval|https?:/);
    const hashes = pages.flatMap(({ html }) => (/http-equiv="content-security-policy" content="([^"]+)"/i.exec(html)?.[1] ?? "").match(/sha256-[A-Za-z0-9+/=]+/g) ?? []);
    expect(new Set(header.match(/sha256-[A-Za-z0-9+/=]+/g))).toEqual(new Set(hashes));
  });
});

describe("script", () => {
  it("is not requested by a page without islands", () => {
    const plain = pages.filter(({ html }) => !hasQuestions(html));
    expect(plain.length).toBeGreaterThan(3);
    expect(plain.filter(({ html }) => /<script[^>]*\ssrc=|modulepreload/.test(html)).map(({ path }) => path)).toEqual([]);
  });

  it("of a module page weighs at most 120 KB after use, all families of the page included", () => {
    for (const { path, html } of modules.filter((page) => hasQuestions(page.html))) {
      const start = [...html.matchAll(/(?:component|renderer)-url="([^"]+)"/g)].map((match) => match[1] ?? "");
      const families = new Set([...html.matchAll(/data-family="([^"]+)"/g)].map((match) => match[1] ?? ""));
      const seen = new Set<string>();
      // A family is fetched when a question of it is worked on; those of other pages never are.
      // So is a picture, and the map of the knee.
      const own = new Set([...families].map(pictureFile));
      const isOfAnotherPage = (file: string): boolean => {
        const [name = ""] = file.split(".");
        if (name === "MapPart") return !own.has("knee");
        if (families.has(name) || own.has(name)) return false;
        return listed.has(name) || pictureFiles.has(name);
      };
      const visit = (address: string): void => {
        if (seen.has(address)) return;
        seen.add(address);
        const text = fileAt(address).toString();
        for (const [, next = ""] of text.matchAll(/(?:from|import)\s*\(?\s*["'`]\.\/([\w.-]+\.js)["'`]/g)) if (!isOfAnotherPage(next)) visit(`/_astro/${next}`);
      };
      for (const address of start) visit(address);
      const bytes = [...seen].reduce((sum, address) => sum + gzipBytes(fileAt(address)), 0);
      expect(seen.size).toBeGreaterThan(4);
      expect([path, Math.round(bytes / 1024)]).toEqual([path, expect.toSatisfy((kilobytes: number) => kilobytes <= 120 + 3 * families.size)]);
    }
  });
});

describe("words of the glossary", () => {
  it.each(modules)("are marked in $path, each once", ({ html }) => {
    const ids = [...html.matchAll(/<button type="button" class="term" popovertarget="term-\d+-([\w-]+)">/g)].map(([, id = ""]) => id);
    expect(ids.length).toBeGreaterThan(0);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    expect(ids.filter((id) => !pageAt("/glossary/").html.includes(`<div id="${id}"`))).toEqual([]);
  });
});

describe("cautions", () => {
  it("stand at the head of every module: C2 and C13, and C6 where people do or assist", () => {
    for (const { html } of modules) {
      const head = html.slice(0, html.indexOf("<h2"));
      const code = /<dd class="ref">(M\d\d|DX)</.exec(html)?.[1] ?? "";
      expect(head).toContain('data-caution="C2"');
      expect(head).toContain('data-caution="C13"');
      expect(code).not.toBe("");
      expect([code, html.slice(0, html.indexOf('id="able"')).includes('data-caution="C6"')]).toEqual([code, C6_MODULES.includes(code)]);
    }
  });

  it("C3 stands in every section that shows a measured millimetre, and C9 in every one that shows an adult value", () => {
    const html = pageAt("/modules/needle-path-and-depth/").html;
    const parts = html.split(/(?=<h2[ >])/);
    const need = parts.filter((part) => part.includes('class="refmark"'));
    expect(need.length).toBeGreaterThan(2);
    const measured = need.filter((part) => /Schachne/.test(part));
    expect(measured.filter((part) => !part.includes('data-caution="C3"'))).toEqual([]);
    const adult = need.filter((part) => /McCulloch/.test(part));
    expect(adult.length).toBeGreaterThan(0);
    expect(adult.filter((part) => !part.includes('data-caution="C9"'))).toEqual([]);
  });

  it("C8 is in every figure, in its words and in its picture", () => {
    const figures = pages.flatMap(({ html }) => [...html.matchAll(/<div role="img" aria-label="([^"]+)"[^>]*>([\s\S]*?)<\/div>/g)]);
    expect(figures.length).toBeGreaterThan(1);
    for (const [, words = "", drawing = ""] of figures) {
      if (drawing.includes("fig rule")) continue;
      expect(words).toContain(cautionText("C8"));
      expect(drawing.match(/class="c8"/g)?.length).toBeGreaterThanOrEqual(2);
    }
  });

  it("stand under every question as its family places them", () => {
    const asks = [...pageAt("/modules/needle-path-and-depth/").html.matchAll(/<section class="ask"[\s\S]*?<\/section>/g)].map((match) => match[0]);
    expect(asks.length).toBeGreaterThanOrEqual(10);
    // C8 stands inside every picture, which comes with the answer.
    const missing = asks.flatMap((ask) => draw(familyOf(ask), 0).cautions.filter((id) => id !== "C8" && !ask.includes(`data-caution="${id}"`)).map((id) => [familyOf(ask), id]));
    expect(missing).toEqual([]);
    for (const family of ["least-depth", "window"]) expect(asks.find((ask) => ask.includes(`data-family="${family}"`))).toContain('data-caution="C9"');
  });
});

describe("a question without a script", () => {
  const html = pageAt("/modules/needle-path-and-depth/").html;
  const asks = [...html.matchAll(/<section class="ask"[\s\S]*?<\/section>/g)].map((match) => match[0]);

  it("stands in the page with its givens, and with a worked example of another seed", () => {
    for (const ask of asks) {
      const [shown = "", hidden = ""] = ask.split("<noscript>");
      expect(hidden).toContain('class="working"');
      if (draw(familyOf(ask), 0).givens.length === 0) continue;
      expect(shown).toContain('class="givens"');
      const numbers = (part: string) => [...part.matchAll(/<dd class="v">([^<]+)</g)].map((match) => match[1]).join();
      expect(numbers(hidden)).not.toBe(numbers(shown));
    }
  });

  it("does not carry its answer", () => {
    for (const ask of asks) {
      const props = /props="([^"]+)"/.exec(ask)?.[1] ?? "";
      expect(props).not.toMatch(/accepted|working|slips/);
    }
  });

  it("is left out of the search index, as are values and figures", () => {
    expect(html).toMatch(/<main[^>]*data-pagefind-body/);
    for (const tag of html.match(/<section class="ask"[^>]*>/g) ?? []) expect(tag).toContain("data-pagefind-ignore");
    for (const tag of html.match(/<figure[^>]*>/g) ?? []) expect(tag).toContain("data-pagefind-ignore");
  });
});

describe("the ledger pages", () => {
  const topics = pages.filter(({ path }) => /^\/numbers\/.+\/$/.test(path));
  const rows = topics.flatMap(({ html }) => html.match(/<li id="[a-z0-9-]+\.[a-z0-9-]+"[\s\S]*?<\/li>/g) ?? []);

  it("show every entry of the ledger", () => {
    expect(rows.length).toBe(LEDGER.flatMap(({ entries }) => entries).length);
    expect(rows.length).toBeGreaterThan(300);
  });

  it("show each with its source or the words that it has none", () => {
    const silent = rows.filter((row) => !/\/sources\/#|not found|computed from|assumed|common practice|from memory|decided locally/.test(row));
    expect(silent).toEqual([]);
  });

  it("mark every value from memory, every adult value, and where a value is used", () => {
    expect(rows.filter((row) => row.includes("from memory")).every((row) => row.includes("to be verified"))).toBe(true);
    expect(rows.filter((row) => row.includes("C9 adult value")).length).toBe(LEDGER.flatMap(({ entries }) => entries).filter(({ population }) => population.adult).length);
    expect(rows.find((row) => row.includes('id="junction-to-bundle.boys"'))).toMatch(/Questions: (\d\d[a-z], )*10a, 10b, 10c, 10d[\s\S]*Shown in[\s\S]*Checked in/);
  });
});
