import { describe, expect, it } from "vitest";
import { families } from "../../src/bank/index.ts";
import { isModuleStep, PATHS } from "../../src/facts/paths.ts";
import { STUDY_PATHS, studyPathNumber } from "../../src/facts/study-paths.ts";

/** Paths that certificates already name, in the order of their numbers: printed codes hold these for ever. */
const HELD = ["resident-two-weeks", "nurse-core", "nurse-lead", "director"];

describe("the paths that a certificate can name", () => {
  it("keep their numbers: the list only grows at its end", () => {
    expect(STUDY_PATHS.slice(0, HELD.length)).toEqual(HELD);
    expect(new Set(STUDY_PATHS).size).toBe(STUDY_PATHS.length);
    expect(STUDY_PATHS.length).toBeLessThan(32);
  });

  it("are those that hold every core module of their role; a new one is added at the end of content/study-paths.json", () => {
    const whole = PATHS.filter(({ fullFor }) => fullFor !== undefined).map(({ id }) => id);
    expect(whole.filter((id) => studyPathNumber(id) === 0)).toEqual([]);
    expect(PATHS.filter(({ id, fullFor }) => fullFor === undefined && studyPathNumber(id) > 0)).toEqual([]);
  });

  it("name questions that serve an objective, so that what is missing can be shown", () => {
    const named = PATHS.flatMap(({ sittings }) => sittings.flatMap(({ steps }) => steps.filter(isModuleStep).flatMap((step) => step.families ?? [])));
    expect(named.length).toBeGreaterThan(20);
    expect(named.filter((id) => (families.find((family) => family.id === id)?.objectives.length ?? 0) === 0)).toEqual([]);
  });
});
