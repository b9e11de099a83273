import { describe, expect, it } from "vitest";
import { vivaPicks } from "../../src/engine/record/viva-picks.ts";
import { type BareEvent, bareEvent, chainOf } from "../support/events.ts";

const at = (number: number, over: Partial<BareEvent>) => bareEvent(number, { at: `2027-02-03T10:${String(number).padStart(2, "0")}:00Z`, ...over });
const idsOf = (events: readonly BareEvent[], most = 9) => vivaPicks(chainOf(events), most).map(({ id }) => id);

describe("answers worth talking about", () => {
  it("are the unsafe ones first, then named slips, the newest first, each slip of a question once", () => {
    expect(idsOf([
      at(1, { verdict: "safe-side", slip: "no-margin" }),
      at(2, { verdict: "unsafe-side", family: "greatest-depth", slip: "twice" }),
      at(3, { verdict: "safe-side", slip: "no-margin" }),
      at(4, { verdict: "unsafe-side", family: "capped-dose" }),
      at(5, { verdict: "rounding", slip: "up" }),
      at(6, { verdict: "unsafe-side", family: "greatest-depth", slip: "twice" }),
    ])).toEqual(["e6", "e4", "e5", "e3"]);
  });

  it("are none that were right, could not be read, or were only read, and no off answer without a name", () => {
    expect(idsOf([at(1, {}), at(2, { verdict: "not-recognised", slip: "x" }), at(3, { kind: "read", verdict: "unsafe-side" }), at(4, { verdict: "safe-side" }), at(5, { kind: "left", verdict: "unsafe-side" })])).toEqual([]);
  });

  it("are as many as there is room for", () => {
    expect(idsOf(Array.from({ length: 20 }, (_, number) => at(number, { verdict: "unsafe-side", family: `f${number}` })), 4)).toEqual(["e19", "e18", "e17", "e16"]);
  });
});
