import type { Course } from "./course.ts";
import type { Finding } from "./finding.ts";
import type { MdxFile } from "./mdx-file.ts";

/** Looks at one file of prose. */
export type FileRule = (file: MdxFile, course: Course) => readonly Finding[];

/** Looks at everything together. */
export type CourseRule = (course: Course) => readonly Finding[];

/** The corrected line where nothing is to be written. */
export const LEAVE_OUT = "(leave this line out)";

const LONGEST_FOUND = 70;

/** A piece of a file on one line, shortened for a message. */
export const quoted = (text: string): string => {
  const line = text.replace(/\s+/g, " ").trim();
  return line.length > LONGEST_FOUND ? `${line.slice(0, LONGEST_FOUND - 1)}…` : line;
};
