import { describe, expect, it } from "vitest";
import { PRESETS } from "../../src/facts/presets.ts";
import { draftOf, emptyDraft } from "../../src/islands/lists/draft.ts";
import { draftFrom, draftText } from "../../src/islands/lists/kept-draft.ts";

const TODAY = 20_800;
const empty = emptyDraft(TODAY);

describe("a list that is being put together", () => {
  it("comes back as it was left, empty, half made or from a ready-made list", () => {
    const half = { ...empty, title: "Winter “list”", objectives: new Set(["m10-least", "m11-count"]), ticked: new Set(["how-many"]), mustBy: "ticked" as const, back: ["code" as const], isSupervised: true };
    for (const draft of [empty, half, ...PRESETS.map((preset) => draftOf(preset, half))]) expect(draftFrom(draftText(draft))).toEqual(draft);
  });

  it("is forgotten where what was kept is no draft", () => {
    const kept = JSON.parse(draftText(empty)) as Record<string, unknown>;
    const wrong = Object.keys(kept).map((key) => ({ ...kept, [key]: { a: 1 } }));
    for (const value of [...wrong, { ...kept, back: ["pigeon"] }, { ...kept, sheet: "any" }, null, 7, "x"]) expect([value, draftFrom(JSON.stringify(value))]).toEqual([value, null]);
    expect([draftFrom(""), draftFrom("{")]).toEqual([null, null]);
  });
});
