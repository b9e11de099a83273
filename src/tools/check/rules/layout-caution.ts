import { CAUTION_PLACES } from "../caution-places.ts";
import type { Finding } from "../finding.ts";
import { type FileRule, LEAVE_OUT } from "../rule.ts";
import { factsOf } from "../matter.ts";

/** A caution that the layout places by itself would stand twice if the author wrote it too. */
export const layoutCaution: FileRule = (file) => {
  if (file.kind !== "module") return [];
  const { code } = factsOf(file);
  const placed = CAUTION_PLACES.filter(({ by, modules }) => by === "layout" && (modules === "all" || modules.includes(code))).map(({ caution }) => caution);
  return file.tags.flatMap((tag): readonly Finding[] => {
    const id = tag.name === "Caution" ? (tag.attributes.find(({ name }) => name === "id")?.value ?? "") : "";
    if (!placed.includes(id)) return [];
    return [{ source: file, offset: tag.start, rule: "caution twice", level: "warning", found: `<Caution id="${id}" />`, expected: `nothing here: the layout places ${id} in this module by itself`, write: LEAVE_OUT }];
  });
};
