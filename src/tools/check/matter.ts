import type { MdxFile } from "./mdx-file.ts";

/** What other rules need of a module's front matter, as far as it can be read. */
export interface ModuleFacts {
  readonly code: string;
  readonly needs: readonly string[];
  readonly objectives: readonly { readonly id: string; readonly start: number; readonly end: number }[];
  readonly reviewed: boolean;
}

type Bag = Readonly<Record<string, unknown>>;
const bag = (value: unknown): Bag => (typeof value === "object" && value !== null ? (value as Bag) : {});
const texts = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((each): each is string => typeof each === "string") : [];

/** Facts of a module for rules that compare files; parts that are missing or wrong are left out. */
export const factsOf = (file: MdxFile): ModuleFacts => {
  const located = file.matter?.located;
  const matter = bag(located?.value);
  const objectives = Array.isArray(matter["objectives"]) ? (matter["objectives"] as readonly unknown[]) : [];
  return {
    code: typeof matter["code"] === "string" ? matter["code"] : "",
    needs: texts(matter["needs"]),
    objectives: objectives.flatMap((each, index) => {
      const id = bag(each)["id"];
      return typeof id === "string" && located !== undefined ? [{ id, ...located.spanOf(["objectives", index, "id"]) }] : [];
    }),
    reviewed: bag(matter["review"])["state"] === "reviewed",
  };
};
