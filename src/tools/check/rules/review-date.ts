import type { Finding } from "../finding.ts";
import type { MdxFile } from "../mdx-file.ts";
import type { FileRule } from "../rule.ts";

const rule = "review date";

type Review = Readonly<Record<string, unknown>>;

const asDay = (value: unknown): string => {
  if (value instanceof Date && !Number.isNaN(value.getTime())) return value.toISOString().slice(0, 10);
  return typeof value === "string" && /^\d{4}-\d\d-\d\d$/.test(value) ? value : "";
};

/** The same day a year later. */
const yearAfter = (day: string): string => `${Number(day.slice(0, 4)) + 1}${day.slice(4).replace("-02-29", "-02-28")}`;

const reviewOf = (file: MdxFile): Review => {
  const matter = file.matter?.located.value;
  const review = typeof matter === "object" && matter !== null ? (matter as Review)["review"] : null;
  return typeof review === "object" && review !== null ? (review as Review) : {};
};

/** A review lies behind us, its next one before us, and a module past that day is shown as unchecked. */
export const reviewDate: FileRule = (file, course) => {
  const review = reviewOf(file);
  const [on, due] = [asDay(review["on"]), asDay(review["due"])];
  const span = (part: string) => file.matter?.located.spanOf(["review", part]) ?? { start: 0, end: 0 };
  if (file.kind !== "module" || on === "" || due === "") return [];
  const replaced = (part: string, text: string): Pick<Finding, "offset" | "edits"> => ({ offset: span(part).start, edits: [{ ...span(part), text }] });
  if (on > course.today) return [{ source: file, rule, found: `a review on ${on}, and today is ${course.today}`, expected: "a day that has been", ...replaced("on", course.today) }];
  if (due <= on) return [{ source: file, rule, found: `due ${due}, not after the review on ${on}`, expected: "a day after the review", ...replaced("due", yearAfter(on)) }];
  if (due > course.today) return [];
  return [{
    source: file,
    rule,
    level: "warning",
    offset: span("due").start,
    found: `a review that was due on ${due}`,
    expected: "a new review; until then the page says that every number is unchecked",
    write: "review: { state: none }",
  }];
};
