import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { type Course, type FamilyFacts, readCourse } from "../../src/tools/check/course.ts";
import { MADE } from "./made-families.ts";

/** Where the authors' mistakes stand, a folder each. */
export const fixtures: string = join(import.meta.dirname, "fixtures");

/** Question families as the bank lists them; the numbers behind the fixtures are invented. */
const FAMILIES: readonly FamilyFacts[] = [
  { id: "band", code: "01e", module: "M01", objectives: ["m01-band"], reads: ["band-width.8-10@1", "band-width.11-13@1"], sources: [{ source: "author-2020" }] },
  { id: "window", code: "10d", module: "M10", objectives: ["m10-least", "m10-window"], reads: ["depth.boys@2"] },
];

/** Families of the fixture "pins", each with one fault. */
const WRONG_FAMILIES: readonly FamilyFacts[] = [
  { id: "band", code: "01e", module: "M01", objectives: ["m01-band"], reads: ["band-width.8-11@1", "band-width.5-7", "depth.boys@1"], sources: [{ source: "autor-2020" }] },
  {
    id: "share", code: "01b", module: "M01", objectives: ["m01-band"], reads: ["nothing.like-it@1"],
    source: { file: "src/bank/m01/share.ts", text: 'export const share = {\n  reads: ["nothing.like-it@1"],\n};\n' },
  },
];

/** A family of the fixture "adult-family", which reads an adult value and does not say so. */
const ADULT_FAMILY: readonly FamilyFacts[] = [{ id: "band", code: "01e", module: "M01", objectives: ["m01-band"], reads: ["capsule.adult@1"], cautions: ["C3"] }];

const [BAND] = FAMILIES;
const WITH_M10: ReadonlySet<string> = new Set(["good", "objectives", "several", "caution", "attribute", "names", "needs-circle", "needs-twice", "sentence-twice", "panel-judge", "panel-question"]);

const familiesFor = (name: string): readonly FamilyFacts[] => {
  const made = MADE[name];
  if (made !== undefined) return made;
  if (name !== "ledger" && existsSync(join(fixtures, name, "ledger"))) return [];
  if (name === "pins") return WRONG_FAMILIES;
  if (name === "adult-family") return ADULT_FAMILY;
  if (name === "same-name") return [];
  return WITH_M10.has(name) || BAND === undefined ? FAMILIES : [BAND];
};

/** The course of one fixture; `folder` is a copy of it where something was mended. */
export const courseOf = (name: string, folder: string = join(fixtures, name)): Course =>
  readCourse({
    folder,
    shownAs: name,
    engineFolder: join(fixtures, "engine"),
    engineShownAs: "engine",
    families: familiesFor(name),
    today: "2026-11-25",
    draws: name.startsWith("family-") ? 60 : 0,
  });

/** Folders of fixtures that hold a message. */
export const mistakes: readonly string[] = readdirSync(fixtures).filter((name) => existsSync(join(fixtures, name, "message.txt")));
