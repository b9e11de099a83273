import type { Finding } from "../finding.ts";
import { factsOf } from "../matter.ts";
import type { FileRule } from "../rule.ts";

/** An objective's id starts with the code of its module, so that its group can be read from it. */
export const objectiveIds: FileRule = (file) => {
  const { code, objectives } = factsOf(file);
  if (file.kind !== "module" || !/^(M\d\d|DX)$/.test(code)) return [];
  const head = `${code.toLowerCase()}-`;
  return objectives.flatMap(({ id, start, end }): readonly Finding[] => {
    if (id.startsWith(head) || !/^(m\d\d|dx)-/.test(id)) return [];
    return [{
      source: file,
      offset: start,
      rule: "objective id",
      found: `"${id}" in module ${code}`,
      expected: `an id that starts with "${head}"`,
      edits: [{ start, end, text: id.replace(/^[^-]*-/, head) }],
    }];
  });
};
