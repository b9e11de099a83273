import { numbersIn } from "../number-words.ts";
import { type FileRule, quoted } from "../rule.ts";

/** No tag can stand in the front matter, so no number with a unit can have its source there. */
export const numberInMatter: FileRule = (file) =>
  numbersIn(file.matter?.text ?? "").map(({ start, end }) => {
    const from = (file.matter?.start ?? 0) + start;
    const stop = (file.matter?.start ?? 0) + end;
    return {
      source: file,
      offset: from,
      rule: "number in the front matter",
      found: quoted(file.text.slice(from, stop)),
      expected: "words; the number stands in the text below, in a tag that carries its source",
      edits: [{ start: from, end: stop, text: "…" }],
    };
  });
