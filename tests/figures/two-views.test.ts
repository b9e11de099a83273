import { describe, expect, it } from "vitest";
import { draw } from "../../src/bank/index.ts";
import { fieldDeg, firstSpot, levelSpot, LOOKS, TILT_DEG } from "../../src/bank/m03/two-looks.ts";
import { rayAt } from "../../src/engine/knee/scope/camera.ts";
import { cast } from "../../src/engine/knee/scope/cast.ts";
import { SOLIDS } from "../../src/engine/knee/scope/scene.ts";
import { length, minus } from "../../src/engine/knee/scope/vec3.ts";
import { inPicture, pointInSecond, SECOND_TOP_PX } from "../../src/figures/two-views-frame.ts";
import { scopeModelOf, settingAt } from "../../src/figures/scope-setting.ts";

/** A ring and the number that answers it must lie on the same tissue of the model, and where something can be recognised. */
const rings = LOOKS.flatMap(({ station, turnDeg, tenths }) => tenths.map((place) => ({ station, turnDeg, about: { station, turnDeg: String(turnDeg), side: "right", up: "12", place: place.join(",") } })));
const modelOf = (station: (typeof LOOKS)[number]["station"], viewDeg: 0 | 30, turnDeg: number) => scopeModelOf(settingAt(station, { viewDeg, turnDeg }));
const ABOUT_DEG = Array.from({ length: 12 }, (_, hour) => (hour * Math.PI) / 6);
const EDGE = 0.08;

describe("a ringed place and its number", () => {
  it("lie on one place of the model, to a tenth of a millimetre", () => {
    for (const { station, turnDeg, about } of rings) {
      const [straight, tilted] = [modelOf(station, 0, 0), modelOf(station, TILT_DEG, turnDeg)];
      const here = cast(straight.field, straight.camera.tip, rayAt(straight.camera, straight.fieldDeg, firstSpot({ about })));
      const there = cast(tilted.field, tilted.camera.tip, rayAt(tilted.camera, tilted.fieldDeg, levelSpot({ about })));
      expect(straight.fieldDeg).toBe(fieldDeg());
      expect(there.id).toBe(here.id);
      expect(length(minus(here.place, there.place))).toBeLessThan(0.1);
    }
  });

  it("lie where one tissue ends before another", () => {
    for (const { station, about } of rings) {
      const { field, camera, fieldDeg: wholeDeg } = modelOf(station, 0, 0);
      const [x, y] = firstSpot({ about });
      const seen = ABOUT_DEG.map((angle) => SOLIDS[cast(field, camera.tip, rayAt(camera, wholeDeg, [x + EDGE * Math.cos(angle), y + EDGE * Math.sin(angle)])).id]);
      expect(new Set(seen).size).toBeGreaterThan(1);
    }
  });

  it("stand in the drawing where a finger on the number finds it", () => {
    for (let seed = 0; seed < 200; seed += 1) {
      const item = draw("same-place", seed);
      for (const { xMm, yMm } of item.kind === "mark" ? item.regions : []) {
        const [px, py] = inPicture([Number(xMm) / 100, Number(yMm) / 100], SECOND_TOP_PX);
        const found = pointInSecond(px / 356, py / 356);
        expect([found?.xMm ?? 0, found?.yMm ?? 0].map((value) => value.toFixed(2))).toEqual([Number(xMm).toFixed(2), Number(yMm).toFixed(2)]);
      }
    }
    expect(pointInSecond(0.5, 0.3)).toBeNull();
  });
});
