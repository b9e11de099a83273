import { expect, it } from "vitest";
import { answerTo, draw } from "../../src/bank/index.ts";
import { discFromAbove } from "../../src/figures/pictures/disc.ts";

/** A discoid meniscus over its place, seen from above. What is expected follows from the question and from geometry alone. */

const items = Array.from({ length: 200 }, (_, seed) => draw("rim-stability", seed));
const MIDDLE_PX = [178, 158] as const;
const isRimRight = (side: string | undefined): boolean => side === "right";

const discIn = (markup: string): readonly [number, number] => {
  const [, x, y] = /<circle class="t-plateau" cx="([\d.]+)" cy="([\d.]+)"/.exec(markup) ?? [];
  return [Number(x), Number(y)];
};
/** Ends of the arcs beside the rim that are the learner's own. */
const ownIn = (markup: string): readonly (readonly [number, number])[] =>
  [...markup.matchAll(/class="mineband" d="M([\d.]+) ([\d.]+)A[^"]* ([\d.]+) ([\d.]+)"/g)].flatMap(([, x1, y1, x2, y2]) => [[Number(x1), Number(y1)], [Number(x2), Number(y2)]] as const);

it("is drawn where the question says it lies, on the side of the knee that is named", () => {
  const seen = new Set<string>();
  for (const item of items) {
    const [x, y] = discIn(discFromAbove(item)?.markup ?? "");
    const shift = item.about["shift"] ?? "";
    const towardNotch = isRimRight(item.about["side"]) ? MIDDLE_PX[0] - x : x - MIDDLE_PX[0];
    seen.add(`${shift} ${item.about["side"]}`);
    expect(Math.sign(MIDDLE_PX[1] - y)).toBe({ front: 1, back: -1 }[shift] ?? 0);
    expect(towardNotch > 0).toBe(shift !== "none");
    expect(shift !== "centre" || towardNotch > 20).toBe(true);
  }
  expect(seen.size).toBe(8);
});

it("lies away from the right stitches wherever a shift alone names the place, and marks nothing before an answer", () => {
  let marked = 0;
  for (const item of items) {
    const right = answerTo(item);
    const after = discFromAbove(item, { values: {}, response: right })?.markup ?? "";
    const own = ownIn(after);
    const place = right.kind === "name" ? right.picks["stitch"] : "";
    expect(ownIn(discFromAbove(item)?.markup ?? "")).toEqual([]);
    expect(own).toHaveLength({ untold: 0, nowhere: 0, both: 4 }[place ?? ""] ?? 2);
    if (item.about["shift"] === "none" || place === "both") continue;
    marked += 1;
    const [x, y] = discIn(after);
    const [alongX, alongY] = own.reduce(([sumX, sumY], [atX, atY]) => [sumX + atX - MIDDLE_PX[0], sumY + atY - MIDDLE_PX[1]] as const, [0, 0] as const);
    expect((x - MIDDLE_PX[0]) * alongX + (y - MIDDLE_PX[1]) * alongY).toBeLessThan(0);
  }
  expect(marked).toBeGreaterThan(30);
});

it("says in words what it shows: where the disc lies, what the probe has met, and nothing of where it is loose", () => {
  for (const item of items) {
    const text = discFromAbove(item)?.text ?? "";
    expect(text).toContain({ none: "It lies within the broken line", front: "and forward of the broken line", back: "and behind the broken line", centre: "lies toward the notch, beyond" }[item.about["shift"] ?? ""]);
    expect(text.includes("lifts it nowhere")).toBe(item.about["probed"] === "all" && item.about["lifts"] === "nothing");
    expect(text).not.toMatch(/loose|stitch|stabilis/);
  }
});
