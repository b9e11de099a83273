import { describe, expect, it } from "vitest";
import pack from "../../package.json" with { type: "json" };
import { answerTo, draw, explain, grade } from "../../src/bank/index.ts";
import { neighboursOf } from "../../src/components/neighbours.ts";
import { publicAddress } from "../../src/components/public-address.ts";
import type { Item } from "../../src/engine/question/item.ts";
import { cautionText } from "../../src/facts/cautions.ts";
import { SITE } from "../../src/facts/site.ts";
import { wordsOf } from "../../src/facts/words.ts";
import { mailHref, pageName, reportText } from "../../src/islands/report-text.ts";
import { C6_MODULES } from "../../src/components/caution-rules.ts";
import { fileAt, pageAt, pages, textIn } from "../support/site.ts";

const words = wordsOf("en");
const modules = pages.filter(({ path }) => /^\/modules\/[^/]+\/$/.test(path));
const answersOf = (path: string): string => pageAt(`${path}answers/`).html;

const unescaped = (text: string): string =>
  text.replaceAll("&quot;", '"').replaceAll("&#39;", "'").replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&amp;", "&");

/** The questions that a page's islands show, as they were written into the page. */
const questionsOn = (html: string): readonly { readonly family: string; readonly version: number; readonly seed: string }[] =>
  [...html.matchAll(/props="([^"]+)"/g)].flatMap(([, props = ""]) => {
    const { item } = JSON.parse(unescaped(props)) as { item?: [number, Record<string, [number, unknown]>] };
    if (item === undefined) return [];
    const { family, version, seed } = item[1];
    return [{ family: String(family?.[1]), version: Number(version?.[1]), seed: String(seed?.[1]) }];
  });

/** What a page shows of an answer, spaces made alike. */
const plain = (text: string): string => text.replace(/\s+/g, " ").trim();
const shown = (html: string): string => plain(textIn(html.replaceAll("&quot;", '"').replaceAll("&amp;", "&")));

const said = (item: Item): readonly string[] => {
  const response = answerTo(item);
  if (item.kind === "sum" && "says" in response) return [item.says[response.says]];
  return explain(item, response).compare.map(({ answer }) => answer);
};

describe("before and after a module", () => {
  const three = ["M10", "M02", "M07"].map((code) => ({ slug: code.toLowerCase(), code, title: code }));

  it("are the modules of the codes before and after, whatever the order of the files", () => {
    expect(neighboursOf(three, "m07")).toEqual({ before: three[1], after: three[0] });
    expect(neighboursOf(three, "m02").before).toBeNull();
    expect(neighboursOf(three, "m10").after).toBeNull();
    expect(() => neighboursOf(three, "m11")).toThrow(RangeError);
  });

  it("stand at the foot of every module page as links to pages that exist", () => {
    expect(modules.length).toBeGreaterThan(0);
    for (const { path, html } of modules) {
      const foot = /<nav class="turn[^>]*>([\s\S]*?)<\/nav>/.exec(html)?.[1] ?? "";
      const links = [...foot.matchAll(/rel="(prev|next)" href="([^"]+)"/g)].map(([, way, address = ""]) => [way, pages.some((page) => page.path === address)]);
      expect([path, links]).toEqual([path, [["prev", true], ["next", true]]]);
    }
  });
});

describe("the page of answers", () => {
  it.each(modules)("of $path answers the very questions that the module shows, in their order", ({ path, html }) => {
    const asked = questionsOn(html);
    const rows = answersOf(path).match(/<li>\s*<p class="l">Question \d[\s\S]*?<\/li>/g) ?? [];
    expect(asked.length).toBeGreaterThan(0);
    expect(rows.length).toBe(asked.length);
    for (const [index, { family, version, seed }] of asked.entries()) {
      const item = draw(family, seed, { version });
      const row = shown(rows[index] ?? "");
      expect(row).toContain(`Question ${index + 1} ${item.code}`);
      expect(row).toContain(seed);
      for (const { text } of item.givens) expect(row).toContain(text);
      for (const answer of said(item)) expect(row).toContain(plain(answer));
      expect(html).toContain(`Question ${index + 1}, drawn for you`);
    }
  });

  it.each(modules)("of $path is linked from its foot, has no script, and search does not read it", ({ path, html }) => {
    expect(html).toContain(`class="answers-link" href="${path}answers/"`);
    expect(answersOf(path)).not.toMatch(/astro-island|data-pagefind-body|<script[^>]*\ssrc=/);
    const code = /<dd class="ref">(M\d\d|DX)</.exec(html)?.[1] ?? "";
    const ofQuestions = questionsOn(html).flatMap(({ family, version, seed }) => draw(family, seed, { version }).cautions).filter((id) => id !== "C8" && id !== "C10");
    const due = new Set(["C2", "C13", ...ofQuestions, ...(C6_MODULES.includes(code) ? ["C6"] : [])]);
    expect([...due].filter((id) => !answersOf(path).includes(`data-caution="${id}"`))).toEqual([]);
  });
});

describe("a link preview", () => {
  it.each(pages)("of $path has title, description, kind and name of the site", ({ html }) => {
    const of = (name: string): string => unescaped(new RegExp(`<meta property="og:${name}" content="([^"]+)"`).exec(html)?.[1] ?? "");
    expect(of("title")).toBe(unescaped(/<title>([^<]+)<\/title>/.exec(html)?.[1] ?? "none"));
    expect(of("description")).toBe(unescaped(/<meta name="description" content="([^"]+)"/.exec(html)?.[1] ?? "none"));
    expect([of("type"), of("site_name")]).toEqual(["website", SITE.name]);
    // Without a known address there is no picture: a relative one would lead nowhere.
    const picture = of("image");
    expect(picture === "" || picture.startsWith("https://")).toBe(true);
  });

  it("of the module for afterwards carries C16, for a family may meet that link", () => {
    expect(unescaped(/<meta property="og:description" content="([^"]+)"/.exec(pageAt("/modules/afterwards/").html)?.[1] ?? "")).toContain(cautionText("C16"));
  });

  // RFC 2606, Reserved Top Level DNS Names, section 2: ".example" is kept for examples.
  it("takes a whole address where the site has one, and none where only the placeholder is set", () => {
    expect(publicAddress(new URL("https://knee.hospital.org"), "/course/answered.png")).toBe("https://knee.hospital.org/course/answered.png");
    expect(publicAddress(new URL("https://workbook.example"), "/answered.png")).toBeNull();
    expect(publicAddress(undefined, "/answered.png")).toBeNull();
    expect(fileAt("answered.png").subarray(1, 4).toString()).toBe("PNG");
  });
});

describe("the report of a fault", () => {
  const item = draw("greatest-depth", 7);
  const response = { kind: "sum", text: "12" } as const;
  const graded = { response, verdict: grade(item, response), explanation: explain(item, response) };
  const page = { protocol: "https:", origin: "https://knee.hospital.org", pathname: "/modules/needle-path-and-depth/", title: "Needle path and depth" };
  const text = reportText(item, graded, { site: SITE, page, words });

  it("holds what another person needs to see the same question and verdict again", () => {
    const [, family = "", version = "", seed = ""] = /Question: 10c ([a-z-]+), version (\d+), language en\nSeed: (\S+)\n/.exec(text) ?? [];
    expect(draw(family, seed, { version: Number(version) })).toEqual(item);
    const answer = JSON.parse(/Answer given: (.+)/.exec(text)?.[1] ?? "null") as typeof response;
    expect(text).toContain(`Verdict: ${grade(item, answer).verdict}`);
    expect(text).toContain(`${SITE.name}, edition ${pack.version}`);
    expect(text).toContain("Page: https://knee.hospital.org/modules/needle-path-and-depth/");
    expect(text).not.toMatch(/\{\w+\}/);
  });

  it("does not give away the folder of a page that was opened from one", () => {
    expect(pageName({ ...page, protocol: "file:", origin: "null", pathname: "/home/somebody/knee/index.html" })).toBe("Needle path and depth");
  });

  it("opens a letter only where an e-mail address is set, with the text unchanged", () => {
    expect(mailHref("", text)).toBeNull();
    expect(mailHref("Room 4, extension 211", text)).toBeNull();
    expect(mailHref("a@b.org?bcc=c@d.org", text)).toBeNull();
    const letter = new URL(mailHref("faults@hospital.org", text) ?? "");
    expect(letter.pathname).toBe("faults@hospital.org");
    expect(letter.searchParams.get("body")).toBe(text);
  });
});
