import { describe, expect, it } from "vitest";
import { draw, grade } from "../../src/bank/index.ts";
import type { Item } from "../../src/engine/question/item.ts";
import type { Response } from "../../src/engine/question/response.ts";
import { pictureOfItem } from "../../src/figures/picture-of-item.ts";

/**
 * A second way to the answers of the families that show a view through the scope: whoever cannot see the picture reads its
 * words, and reasons from them by anatomy (from memory; no table of it was read).
 */
const ITEMS = 150;

const wrongBy = async (family: string, read: (text: string, item: Item) => Response): Promise<readonly string[]> => {
  const wrong: string[] = [];
  for (let seed = 0; seed < ITEMS; seed += 1) {
    const item = draw(family, seed);
    const text = (await pictureOfItem(item))?.text ?? "";
    if (grade(item, read(text, item)).verdict !== "right") wrong.push(`${seed}: ${text}`);
  }
  return wrong;
};

const hourOf = (text: string, look: string): number => Number(new RegExp(`${look}[^;]*?towards (\\d+) o’clock`).exec(text)?.[1] ?? Number.NaN);
const endsOf = (text: string, look: string): readonly number[] => (new RegExp(`${look}[^;]*?between (\\d+) and (\\d+) o’clock`).exec(text) ?? []).slice(1).map(Number);
/** An hour with up turned to twelve: 0 to 11. */
const levelled = (hour: number, up: number): number => (hour - up + 24) % 12;
const isOnLeft = (hour: number): boolean => hour > 6;

/** Femur above: its hour, or the one over against the tibia's, to the nearest quarter. */
const upIn = (text: string): number => {
  const [femur, tibia] = [hourOf(text, "bulges into the picture"), hourOf(text, "nearly flat")];
  const off = (hour: number, other: number): number => Math.min((hour - other + 24) % 12, (other - hour + 24) % 12);
  const gap = (up: number): number => (Number.isNaN(femur) ? 0 : off(femur, up)) + (Number.isNaN(tibia) ? 0 : off(tibia, up + 6));
  return [12, 3, 6, 9].reduce((best, up) => (gap(up) < gap(best) ? up : best));
};

describe("read from the words of the picture alone", () => {
  it("a place is told by up, by its landmark, and by the side on which that lies", async () => {
    expect(await wrongBy("where-am-i", (text) => {
      const up = upIn(text);
      const front = /lies in front of what is behind it[^;]*?(\d+) %/.exec(text);
      // The tendon is lateral; two crossing cords are the notch; one cord beside the band, from far behind, is medial.
      const isCrossed = Number(front?.[1] ?? 0) > 15;
      const others = isCrossed ? "notch" : "medial";
      const compartment = text.includes("round shining cord") ? "lateral" : others;
      const look = { lateral: "round shining cord", notch: "lies in front of what is behind it", medial: "climbs from far behind" }[compartment];
      const ends = endsOf(text, look).map((hour) => levelled(hour, up));
      // Seen from the front a right knee has its lateral side at the left of the picture. The front cord climbs to that side, at the notch; the tendon lies there; the back cord of the medial view lies towards it.
      const upper = ends.toSorted((first, second) => Math.min(first, 12 - first) - Math.min(second, 12 - second))[0] ?? 0;
      const middle = ends.reduce((sum, hour) => sum + (hour > 6 ? hour - 12 : hour), 0) / ends.length;
      const isLeft = compartment === "notch" ? isOnLeft(upper) : middle < 0;
      return { kind: "name", picks: { compartment, side: isLeft ? "right" : "left", up: String(up) } };
    })).toEqual([]);
  });

  it("a tear is told by along, across, level, slanting, and by what lies out of line", async () => {
    expect(await wrongBy("pattern", (text) => {
      const isCut = /gap leads .*(straight|slantwise)|gap crosses/.test(text);
      const isSplit = text.includes("two lips");
      const pattern = [
        ["complex", isCut && isSplit], ["horizontal", isSplit], ["flap", text.includes("slantwise")], ["root", text.includes("from the free edge to the thick side")], ["radial", isCut],
        ["bucket-handle", text.includes("strip, held at both its ends, lies apart")], ["longitudinal", text.includes("along its length")], ["hiatus", true],
      ].find(([, holds]) => holds)?.[0] as string;
      return { kind: "name", picks: { pattern, displaced: /stands up|lies apart/.test(text) ? "yes" : "no" } };
    })).toEqual([]);
  });

  it("beside the tendon the width of the gap and what follows the probe decide", async () => {
    expect(await wrongBy("hiatus", (text) => {
      const shares = [...text.matchAll(/(\d+) % of the (first|second) picture|and of the second/g)];
      expect(shares.length).toBeGreaterThan(0);
      if (text.includes("comes forwards")) return { kind: "name", picks: { finding: "hypermobile", torn: "nothing" } };
      return { kind: "name", picks: text.includes("is wide") ? { finding: "fascicle", torn: "fascicles" } : { finding: "normal", torn: "nothing" } };
    })).toEqual([]);
  });

  it("a look is missing where its line of the list is not in the strip", async () => {
    expect(await wrongBy("notch-look", (_, item) => {
      const strip = item.stem.join(" ").toLowerCase();
      return { kind: "tray", found: item.kind === "tray" ? item.things.filter(({ text }) => !strip.includes(text.toLowerCase())).map(({ id }) => id) : [] };
    })).toEqual([]);
  });
});
