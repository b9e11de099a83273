import { cautionsSchema } from "../../../schemas/caution.ts";
import { curriculumSchema, siteSchema } from "../../../schemas/site.ts";
import { sourceSchema, sourcesSchema } from "../../../schemas/source.ts";
import { jsonFaults } from "../json-form.ts";
import { nearest } from "../nearest.ts";
import type { CourseRule } from "../rule.ts";
import { type DataFile, schemaFindings } from "../schema-findings.ts";

const asText = (text: string): string => JSON.stringify(text);

/** A digital object identifier without the address or the word that is often copied along with it. */
const bareDoi = (written: unknown): string | null => {
  const doi = /10\.\d{4,}\/[^\s"]+/.exec(decodeURIComponent(String(written)))?.[0].replace(/[.,;]+$/, "");
  return doi === undefined ? null : asText(doi);
};

const asId = (written: unknown): string | null => {
  const id = String(written).trim().toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "");
  return id === "" ? null : asText(id);
};

const withScheme = (written: unknown): string | null => (/^[\w-]+(\.[\w-]+)+(\/\S*)?$/.test(String(written)) ? asText(`https://${String(written)}`) : null);

const typeMeant = (written: unknown): string | null => {
  const types = sourceSchema.shape.type.options;
  const meant = types.find((type) => type.startsWith(String(written).toLowerCase())) ?? nearest(String(written), types);
  return meant === null ? null : asText(meant);
};

const numberAsText = (written: unknown): string | null => (typeof written === "number" ? asText(String(written)) : null);

const SOURCE_REPAIRS: Readonly<Record<string, (written: unknown) => string | null>> = {
  id: asId,
  DOI: bareDoi,
  URL: withScheme,
  type: typeMeant,
  volume: numberAsText,
  issue: numberAsText,
  page: numberAsText,
};

const SOURCES: DataFile = {
  rule: "source",
  schema: sourcesSchema,
  whole: "a source",
  help: {
    id: ["the key of the work: first author and year in small letters", '"id": "author-2020"'],
    type: ["a kind of work, such as article-journal, book, chapter, report or webpage", '"type": "article-journal"'],
    title: ["the title of the work, as text", '"title": "…"'],
    author: ["a list of people, each with family and given name", '"author": [{ "family": "…", "given": "…" }]'],
    issued: ["the day, month or year in lists", '"issued": { "date-parts": [[2020]] }'],
    DOI: ['the identifier alone, as it begins with "10."', '"DOI": "10.1000/example"'],
    URL: ["a whole address that begins with https://", '"URL": "https://example.org/work"'],
    volume: ["text, also where it is a number", '"volume": "12"'],
    issue: ["text, also where it is a number", '"issue": "3"'],
    page: ["text, also where it is a number", '"page": "101-109"'],
  },
  alsoFields: ["container-title", "publisher", "note", "date-parts", "family", "given", "literal"],
  repair: (field, written) => SOURCE_REPAIRS[field]?.(written) ?? null,
};

const CAUTIONS: DataFile = {
  rule: "caution",
  schema: cautionsSchema,
  whole: "a caution",
  help: {
    id: ['"C" and a number', '"id": "C1"'],
    text: ["the text of the caution; a caution without words protects nobody", '"text": "…"'],
    unreviewed: ["the text for a page that nobody has reviewed", '"unreviewed": "…"'],
    places: ["a list of the places where it must stand", '"places": ["head of every module"]'],
  },
  repair: (field, written) => (field === "id" && /^c\d{1,2}$/i.test(String(written).trim()) ? asText(String(written).trim().toUpperCase()) : null),
};

const editionMeant = (written: unknown): string | null => {
  const [major, minor = "0", patch = "0"] = /\d+(?:\.\d+)*/.exec(String(written))?.[0].split(".") ?? [];
  return major === undefined ? null : asText([major, minor, patch].join("."));
};

const SITE_REPAIRS: Readonly<Record<string, (written: unknown) => string | null>> = {
  edition: editionMeant,
  reportTo: (written) => (written === null ? '""' : null),
  isShared: (written) => (/^(true|false)$/i.test(String(written)) ? String(written).toLowerCase() : null),
};

const SITE: DataFile = {
  rule: "site",
  schema: siteSchema,
  whole: "content/site.json",
  help: {
    name: ["the name of the site, as text", '"name": "Small Knee Workbook"'],
    edition: ["three numbers with points, the version of the package", '"edition": "0.1.0"'],
    address: ['a whole address without a question mark or a sign, or ""', '"address": "https://knee.hospital.org/course/"'],
    reportTo: ['a whole e-mail address, or words such as a room and a telephone, or ""', '"reportTo": ""'],
    isShared: ["true or false, without quotes", '"isShared": false'],
  },
  repair: (field, written) => SITE_REPAIRS[field]?.(written) ?? null,
};

/** Sources, cautions, the site's own settings and the names of the modules hold to their schemas; interface strings can be read. */
export const dataFiles: CourseRule = (course) => [
  ...schemaFindings(course.sources, SOURCES),
  ...schemaFindings(course.cautions, CAUTIONS),
  ...schemaFindings(course.site, SITE),
  ...schemaFindings(course.curriculum, { rule: "curriculum", schema: curriculumSchema, whole: "content/curriculum.json", help: { code: ['a code, "M01" to "M14" or "DX", with the name of its module', '"M10": "Needle path and depth"'] }, repair: () => null }),
  ...course.words.flatMap((file) => jsonFaults(file, "interface words")),
];
