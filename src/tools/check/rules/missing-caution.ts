import { CAUTION_PLACES, type CautionPlace } from "../caution-places.ts";
import type { Course } from "../course.ts";
import type { Finding } from "../finding.ts";
import { recordNamed } from "../json-file.ts";
import type { MdxFile, Tag } from "../mdx-file.ts";
import { factsOf } from "../matter.ts";
import type { FileRule } from "../rule.ts";

const attributeText = (tag: Tag, name: string): string => tag.attributes.find((attribute) => attribute.name === name)?.value ?? "";

const showsSimulatedShare = (file: MdxFile, course: Course): boolean =>
  file.tags.some((tag) => {
    const { record } = tag.name === "Num" ? recordNamed(course.records, attributeText(tag, "of")) : {};
    return record !== undefined && record.unit === "%" && /simulat/i.test(record.method);
  });

const stands = (place: CautionPlace, file: MdxFile, course: Course): boolean => {
  if (place.modules === "all" || place.modules.includes(factsOf(file).code)) return true;
  return place.alsoForSimulatedShares === true && showsSimulatedShare(file, course);
};

const missing = (place: CautionPlace, file: MdxFile): readonly Finding[] => {
  const tags = file.tags.filter((tag) => tag.name === "Caution" && attributeText(tag, "id") === place.caution);
  const firstHeading = file.headings[0]?.start ?? file.text.length;
  const [tag] = tags;
  const write = `<Caution id="${place.caution}" />`;
  const where = place.where === "head" ? "at the head of the module, before the first heading" : "in this module";
  const head = { source: file, rule: "missing caution", expected: `caution ${place.caution} ${where}`, write };
  if (tag === undefined) return [{ ...head, offset: file.bodyStart, found: `no ${write}` }];
  if (place.where !== "head" || tags.some(({ start }) => start < firstHeading)) return [];
  return [{ ...head, offset: tag.start, found: `${write} behind the first heading` }];
};

/** Cautions that the author writes stand where they must; those of the layout come by themselves. */
export const missingCaution: FileRule = (file, course) =>
  file.kind === "module"
    ? CAUTION_PLACES.filter((place) => place.by === "author" && stands(place, file, course)).flatMap((place) => missing(place, file))
    : [];
