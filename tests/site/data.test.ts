import { describe, expect, it } from "vitest";
import { type DescribedModule, dataBlock, moduleData } from "../../src/components/module-data.ts";
import { SITE } from "../../src/facts/site.ts";
import { siteMap } from "../../src/tools/site-map.ts";
import { exists, pageAt, pages } from "../support/site.ts";

/** Properties that schema.org lists for LearningResource, CreativeWork and Thing, of those used here; read on schema.org/LearningResource. */
const KNOWN = ["@context", "@type", "assesses", "competencyRequired", "educationalLevel", "educationalUse", "learningResourceType", "teaches", "audience", "dateModified", "inLanguage", "isAccessibleForFree", "isPartOf", "license", "timeRequired", "version", "description", "name", "url"];
const NEEDED = ["name", "description", "inLanguage", "license", "learningResourceType", "educationalLevel", "teaches", "assesses", "timeRequired", "audience"];
const BLOCK = /<script[^>]* type="application\/ld\+json"[^>]*>([\s\S]*?)<\/script>/g;

const modules = pages.filter(({ path }) => /^\/modules\/[^/]+\/$/.test(path));
const blocksOn = (html: string): readonly Readonly<Record<string, unknown>>[] => [...html.matchAll(BLOCK)].map(([, text = ""]) => JSON.parse(text) as Readonly<Record<string, unknown>>);

describe("the data block of a module", () => {
  it.each(modules)("of $path names what schema.org asks of a learning resource, and nothing that it does not know", ({ html }) => {
    const [data = {}, ...more] = blocksOn(html);
    expect(more).toEqual([]);
    expect([data["@context"], data["@type"]]).toEqual(["https://schema.org", "LearningResource"]);
    expect(Object.keys(data).filter((key) => !KNOWN.includes(key))).toEqual([]);
    expect(NEEDED.filter((key) => data[key] === undefined || String(data[key]) === "")).toEqual([]);
    // ISO 8601-1:2019, 5.5.2: a duration in minutes alone.
    expect(data["timeRequired"]).toMatch(/^PT\d+M$/);
    expect(html).toContain(`${/\d+/.exec(String(data["timeRequired"]))?.[0]} min`);
    expect(data["license"]).toBe("https://creativecommons.org/licenses/by/4.0/");
    expect(data["url"] === undefined).toBe(SITE.address === "");
    expect(String(data["name"])).toBe(/<h1[^>]*>([^<]+)<\/h1>/.exec(html)?.[1]?.replaceAll("&amp;", "&"));
  });

  it("stands on module pages alone, and no sign in it can end it", () => {
    expect(pages.filter(({ path, html }) => blocksOn(html).length > 0 && !modules.some((one) => one.path === path)).map(({ path }) => path)).toEqual([]);
    expect(dataBlock({ name: "</script><b>" })).toBe('{"name":"\\u003c/script>\\u003cb>"}');
  });

  it("tells the day of a review and the address only where there is one", () => {
    const matter: DescribedModule = { title: "Band", summary: "A band.", minutes: 25, needs: [], roles: { nurse: "core", resident: undefined }, objectives: [{ id: "m10-least", text: "calculate the least depth" }, { id: "m99-x", text: "not asked" }], review: { state: "reviewed", by: "somebody", on: "2027-03-01", due: "2028-03-01" }, language: "en" };
    const data = moduleData(matter, "https://knee.hospital.org/modules/band/");
    expect([data["dateModified"], data["url"], data["assesses"], data["competencyRequired"]]).toEqual(["2027-03-01", "https://knee.hospital.org/modules/band/", ["calculate the least depth"], undefined]);
    expect(data["audience"]).toEqual([{ "@type": "EducationalAudience", educationalRole: "theatre nurse" }]);
    expect(moduleData({ ...matter, review: { state: "none" } }, null)).not.toHaveProperty("dateModified");
  });
});

// sitemaps.org, protocol 0.9: whole addresses, escaped for XML.
describe("the site map", () => {
  const built = [{ name: "index.html", html: "<main data-pagefind-body>" }, { name: "modules/a&b/index.html", html: '<main id="main" data-pagefind-body>' }, { name: "modules/a/answers/index.html", html: "<main>" }, { name: "404.html", html: "<main>" }];

  it("lists whole addresses of the pages that search reads, and no page of answers", () => {
    const map = siteMap("https://knee.hospital.org/course", built) ?? "";
    expect([...map.matchAll(/<loc>([^<]+)<\/loc>/g)].map(([, address]) => address)).toEqual(["https://knee.hospital.org/course/", "https://knee.hospital.org/course/modules/a&amp;b/"]);
    expect(map).toMatch(/^<\?xml version="1\.0" encoding="UTF-8"\?>\n<urlset xmlns="http:\/\/www\.sitemaps\.org\/schemas\/sitemap\/0\.9">/);
  });

  it("is left out where nobody has said where the site lives", () => {
    expect(siteMap("https://workbook.example", built)).toBeNull();
    expect(exists("/sitemap.xml")).toBe(SITE.address !== "");
    expect(pageAt("/").html).toContain("data-pagefind-body");
  });
});
