import { newestOf } from "../json-file.ts";
import type { CourseRule } from "../rule.ts";

/** Numbers written from memory, listed until somebody has seen them in print. */
export const ledgerMemory: CourseRule = (course) =>
  course.records
    .filter((record) => newestOf(record)?.state === "memory")
    .map(({ file, index, key }) => ({
      source: file,
      offset: file.located().spanOf(["entries", index, "key"]).start,
      rule: "to be verified",
      level: "note",
      found: `"${key}" is from memory`,
      expected: "a source, before it is published",
      write: '"state": "read", "source": "…", "readIn": "…"',
    }));
