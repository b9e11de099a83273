import type { Course, FamilyFacts } from "../course.ts";
import { type FamilyFault, familyFinding, namesText } from "../family-finding.ts";
import { recordNamed } from "../json-file.ts";
import type { CourseRule } from "../rule.ts";

const SEEN: ReadonlySet<string> = new Set(["read", "quoted"]);

/** A family that reads numbers seen in print cites one of their papers. */
const missingSources = (family: FamilyFacts, course: Course): readonly FamilyFault[] => {
  const { reads = [], sources } = family;
  if (sources === undefined || sources.length > 0) return [];
  const marks = reads.flatMap((pin) => {
    const { revision } = recordNamed(course.records, pin);
    return revision !== undefined && SEEN.has(revision.state) && revision.source !== "" ? [`{ source: "${revision.source}", entry: "${pin}" }`] : [];
  });
  return marks.length === 0 ? [] : [{ near: family.id, rule: "missing source", found: `reads ${namesText(reads)}, and cites nothing`, expected: "the papers of the numbers that it reads", write: `sources: [${marks.join(", ")}],` }];
};

const strangeSources = (family: FamilyFacts, course: Course): readonly FamilyFault[] =>
  (family.sources ?? []).flatMap(({ source, entry }): readonly FamilyFault[] => {
    if (entry === undefined) return [];
    const { revision } = recordNamed(course.records, entry);
    if (revision === undefined || revision.source === "" || revision.source === source) return [];
    return [{ near: entry, rule: "source", found: `cites "${source}" for "${entry}"`, expected: `"${revision.source}", which the ledger names for it`, write: `{ source: "${revision.source}", entry: "${entry}" }` }];
  });

/** A source stands beside a number that the family does not say it reads. */
const unreadSources = ({ reads = [], sources = [] }: FamilyFacts): readonly FamilyFault[] =>
  sources.flatMap(({ entry }): readonly FamilyFault[] =>
    entry === undefined || reads.includes(entry) ? [] : [{ near: entry, rule: "source", found: `cites "${entry}", which is not among its reads`, expected: "every number that it reads, by its pin", write: `reads: ${namesText([...reads, entry])},` }],
  );

/** What a family reads is cited, and as the ledger has it. */
export const familySources: CourseRule = (course) =>
  course.families.flatMap((family) => [
    ...missingSources(family, course), ...strangeSources(family, course), ...unreadSources(family),
  ].map((fault) => familyFinding(family, fault)));
