import type { Finding } from "../finding.ts";
import { type FileRule, quoted } from "../rule.ts";

/** Headings start at level 2, since the title of the page is level 1, and go down one step at a time. */
export const headingLevels: FileRule = (file) => {
  let before = 1;
  return file.headings.flatMap(({ depth, start, stop }): readonly Finding[] => {
    const right = Math.max(2, Math.min(depth, before + 1));
    before = right;
    if (depth === right) return [];
    const text = file.text.slice(start, stop);
    const expected = depth === 1 ? "level 2 or lower; level 1 is the title of the page" : `level ${right} at most; no level may be left out`;
    const edits = [{ start, end: start + (/^#*/.exec(text)?.[0].length ?? 0), text: "#".repeat(right) }];
    return [{ source: file, offset: start, rule: "heading level", found: quoted(text), expected, edits }];
  });
};
