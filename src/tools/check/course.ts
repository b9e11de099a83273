import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Family } from "../../engine/question/family.ts";
import type { SourceText } from "./finding.ts";
import { type JsonFile, type LedgerRecord, readJson, recordsIn } from "./json-file.ts";
import { type FileKind, type MdxFile, readMdx } from "./mdx-file.ts";

/** What the check needs to know of a question family. */
export interface FamilyFacts {
  readonly id: string;
  readonly code: string;
  readonly module: string;
  readonly objectives: readonly string[];
  readonly reads?: readonly string[];
  readonly sources?: readonly { readonly source: string; readonly entry?: string }[];
  readonly cautions?: readonly string[];
  /** The family itself, where its sentences and draws are looked at too. */
  readonly declared?: Family;
  /** False where the module's `load.ts` does not name it, so that no page can fetch it. */
  readonly isLoaded?: boolean;
  /** The family's own file, where it is known. */
  readonly source?: SourceText;
}

/** All that one run checks. */
export interface Course {
  readonly files: readonly MdxFile[];
  readonly ledger: readonly JsonFile[];
  readonly records: readonly LedgerRecord[];
  readonly sources: JsonFile;
  readonly cautions: JsonFile;
  readonly glossary: JsonFile;
  readonly paths: JsonFile;
  readonly corrections: JsonFile;
  readonly presets: JsonFile;
  readonly panels: JsonFile;
  readonly askLocally: JsonFile;
  readonly words: readonly JsonFile[];
  readonly site: JsonFile;
  readonly curriculum: JsonFile;
  /** The tables of the local list. */
  readonly local: readonly JsonFile[];
  readonly graphs: readonly JsonFile[];
  /** Every revision of the ledger on one line, as it was when it was first held. */
  readonly held: JsonFile;
  readonly families: readonly FamilyFacts[];
  /** Today, as year, month and day. */
  readonly today: string;
  /** How many draws of each family are looked at. */
  readonly draws: number;
}

export interface CourseFolder {
  /** The content folder to check. */
  readonly folder: string;
  /** How the folder is called in messages. */
  readonly shownAs: string;
  /** Where ledger, sources and cautions stand if the folder brings none: another course has prose of its own only. */
  readonly engineFolder: string;
  readonly engineShownAs: string;
  readonly families: readonly FamilyFacts[];
  readonly today: string;
  readonly draws: number;
}

/** Name of the file that holds every revision of the ledger. */
export const HELD_NUMBERS = "held-numbers.json";

const MDX_FOLDERS: Readonly<Record<string, FileKind>> = { modules: "module", glossary: "glossary", changes: "change" };

const namesIn = (folder: string, ending: string): readonly string[] =>
  existsSync(folder)
    ? readdirSync(folder, { recursive: true, encoding: "utf8" })
        .map((name) => name.replaceAll("\\", "/"))
        .filter((name) => name.endsWith(ending))
        .sort()
    : [];

const mdxFiles = (from: CourseFolder): readonly MdxFile[] =>
  Object.entries(MDX_FOLDERS).flatMap(([part, kind]) =>
    namesIn(join(from.folder, part), ".mdx").map((name) => {
      const text = readFileSync(join(from.folder, part, name), "utf8");
      return readMdx({ file: `${from.shownAs}/${part}/${name}`, text }, kind, name.replace(/\.mdx$/, ""));
    }),
  );

/** The held numbers stand beside the ledger that they hold: a course with a ledger of its own has its own, or none. */
const heldBeside = ({ folder, shownAs, engineFolder, engineShownAs }: CourseFolder): JsonFile => {
  const isOwn = existsSync(join(folder, "ledger"));
  return readJson(join(isOwn ? folder : engineFolder, HELD_NUMBERS), `${isOwn ? shownAs : engineShownAs}/${HELD_NUMBERS}`);
};

/** Reads a content folder, with everything that its files may refer to. */
export const readCourse = (from: CourseFolder): Course => {
  const place = (part: string): { path: string; shown: string } =>
    existsSync(join(from.folder, part))
      ? { path: join(from.folder, part), shown: `${from.shownAs}/${part}` }
      : { path: join(from.engineFolder, part), shown: `${from.engineShownAs}/${part}` };
  const jsonIn = (part: string): readonly JsonFile[] => {
    const { path, shown } = place(part);
    return namesIn(path, ".json").map((name) => readJson(join(path, name), `${shown}/${name}`));
  };
  const one = (part: string): JsonFile => readJson(place(part).path, place(part).shown);
  const ledger = jsonIn("ledger");
  return {
    files: mdxFiles(from),
    ledger,
    records: ledger.flatMap(recordsIn),
    sources: one("sources.json"),
    cautions: one("cautions.json"),
    glossary: one("glossary.json"),
    paths: one("paths.json"),
    corrections: one("corrections.json"),
    presets: one("presets.json"),
    panels: one("panels.json"),
    askLocally: one("ask-locally.json"),
    words: jsonIn("words"),
    site: one("site.json"),
    curriculum: one("curriculum.json"),
    local: jsonIn("local"),
    graphs: jsonIn("graphs"),
    held: heldBeside(from),
    families: from.families,
    today: from.today,
    draws: from.draws,
  };
};

/** Ids of a JSON list of records: of sources or cautions. */
export const idsIn = (file: JsonFile): readonly string[] =>
  Array.isArray(file.value)
    ? file.value.flatMap((each: unknown) =>
        typeof each === "object" && each !== null && "id" in each && typeof each.id === "string" ? [each.id] : [],
      )
    : [];

/** Terms of the glossary: the ids of its list, and the names of files that stand beside it. */
export const termsOf = (course: Course): readonly string[] => [
  ...idsIn(course.glossary),
  ...course.files.filter((file) => file.kind === "glossary").map((file) => file.slug),
];
