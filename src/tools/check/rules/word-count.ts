import { FILLER } from "../syntax.ts";
import type { FileRule } from "../rule.ts";

/** Words of prose per module, for whoever sets the minutes. */
export const wordCount: FileRule = (file) => {
  if (file.kind !== "module") return [];
  const words = file.prose.replaceAll(FILLER, " ").match(/[\p{L}\p{N}][\p{L}\p{N}'’.,-]*/gu) ?? [];
  return [{ source: file, offset: file.bodyStart, rule: "length", level: "note", found: `${words.length} words of prose`, expected: "nothing in particular", write: "" }];
};
