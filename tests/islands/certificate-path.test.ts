import { describe, expect, it } from "vitest";
import { pathVersion } from "../../src/engine/record/study-path.ts";
import { type CertificatePathFacts, saidPath, studyParts } from "../../src/islands/certificate-path.ts";

const PATH: CertificatePathFacts = { number: 2, title: "Core", who: "Theatre nurse", sittings: [
  { name: "First", parts: [{ module: "M04", questions: [{ id: "a", code: "04a", title: "A" }, { id: "b", code: "04b", title: "B" }], sections: [] }] },
  { name: "Second", parts: [{ module: "M05", questions: null, sections: [] }] },
] };
const WHOLE: CertificatePathFacts = { ...PATH, number: 1, sittings: PATH.sittings.slice(1) };
const versionOf = (path: CertificatePathFacts): number => pathVersion(studyParts(path));

describe("what a code says of its path", () => {
  it("is its name, its parts and its level", () => {
    expect(saidPath({ number: 2, level: "worked", version: versionOf(PATH) }, [WHOLE, PATH])).toBe("Path: “Core” (theatre nurse), M05 whole; M04 in part: 04a, 04b (every objective behind it is Worked or Steady, and each question it names was right once)");
  });

  it("speaks of single questions only where the path names some", () => {
    expect(saidPath({ number: 1, level: "steady", version: versionOf(WHOLE) }, [WHOLE, PATH])).toBe("Path: “Core” (theatre nurse), M05 whole (every objective behind it is Steady)");
  });

  it("says that the parts have changed since, and does not show today's for those of the paper", () => {
    const said = saidPath({ number: 2, level: "worked", version: versionOf(PATH) + 1 }, [PATH]);
    expect(said).toContain("other parts than it has now");
    expect(said).not.toContain("04a");
  });

  it("says so where there is none, or none that this copy has", () => {
    expect([saidPath(null, [PATH]), saidPath({ number: 9, level: "worked", version: 0 }, [PATH])]).toEqual(["Path: none", "Path: one that this copy of the workbook does not have"]);
  });
});
