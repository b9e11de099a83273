import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arcPoint } from "../../src/engine/geometry/arc.ts";
import { cameraOf, rayAt, tipFor } from "../../src/engine/knee/scope/camera.ts";
import { cast } from "../../src/engine/knee/scope/cast.ts";
import type { Place } from "../../src/engine/knee/scope/field.ts";
import { LABELS, sightOf, whatIsInView } from "../../src/engine/knee/scope/in-view.ts";
import type { PATTERNS } from "../../src/engine/knee/scope/lesion.ts";
import { SOLIDS, type SolidName } from "../../src/engine/knee/scope/scene.ts";
import { STATIONS } from "../../src/engine/knee/scope/stations.ts";
import { along, dot3, length, minus, unit } from "../../src/engine/knee/scope/vec3.ts";
import { fieldInLiquidDeg } from "../../src/engine/optics/field-in-liquid-deg.ts";
import { KNEE_BANDS } from "../../src/facts/knee-model.ts";
import { scopeNumber } from "../../src/facts/scope-model.ts";
import { scopeModelOf, settingAt } from "../../src/figures/scope-setting.ts";

const SEED = 20260119;
const idOf = (name: SolidName): number => SOLIDS.indexOf(name);
const share = (label: string, model: ReturnType<typeof scopeModelOf>): number => whatIsInView(model).find((one) => one.label === label)?.share ?? 0;

describe("the distances of the scene", () => {
  it(`change by little more than the way between two points, so that no ray steps through a surface (seed ${SEED})`, () => {
    const models = STATIONS.map((station) => scopeModelOf(settingAt(station, { pattern: "longitudinal", amount: 0.4, instrument: "probe" })));
    const part = (least: number, greatest: number) => fc.double({ min: least, max: greatest, noNaN: true });
    const slopes: number[] = [];
    // Points in the open joint: somewhere along a ray before it meets tissue; and a step from there in any direction.
    fc.assert(fc.property(fc.constantFrom(...models), part(-0.7, 0.7), part(-0.7, 0.7), part(0.05, 0.95), fc.tuple(part(-1, 1), part(-1, 1), part(-1, 1)), ({ field, camera, fieldDeg }, u, v, share, way) => {
      const direction = rayAt(camera, fieldDeg, [u, v]);
      const here = along(camera.tip, direction, share * cast(field, camera.tip, direction).distanceMm);
      const stepMm = length(way);
      const there = along(here, way, 0.2);
      const [near, next] = [field.nearest(here).distanceMm, field.nearest(there).distanceMm];
      if (stepMm > 0.2 && near > 0.1 && next > 0.1) slopes.push(Math.abs(near - next) / (0.2 * stepMm));
    }), { seed: SEED, numRuns: 4000 });
    slopes.sort((first, second) => first - second);
    expect(slopes.length).toBeGreaterThan(500);
    expect(slopes[Math.floor(slopes.length * 0.99)]).toBeLessThan(1.15);
    expect(slopes.at(-1)).toBeLessThan(2);
  });

  it("put the lowest point of each condyle at the opening above its own profile", () => {
    for (const flexionDeg of [0, 30, 90]) {
      const model = scopeModelOf(settingAt("lateral-back", { flexionDeg }));
      for (const [x, openingMm] of [[scopeNumber("condyle-x-medial"), scopeNumber("opening-rest")], [scopeNumber("condyle-x-lateral"), scopeNumber("opening-stressed")]] as const) {
        const contactY = scopeNumber("contact-y") - scopeNumber("roll-back") * (flexionDeg * Math.PI) / 180;
        expect(model.field.nearest([x, contactY, openingMm - 0.2]).distanceMm).toBeGreaterThan(0);
        const above = model.field.nearest([x, contactY, openingMm + 0.4]);
        expect([above.id, above.distanceMm < 0]).toEqual([idOf("femur"), true]);
      }
    }
  });

  it("curve a condyle as its ellipse does: the radius at its lowest point in extension is a² ÷ b", () => {
    const model = scopeModelOf(settingAt("medial-back", { flexionDeg: 0 }));
    const [a, b] = [scopeNumber("condyle-front"), scopeNumber("condyle-up")];
    const [x, y0, gap] = [scopeNumber("condyle-x-medial"), scopeNumber("contact-y"), scopeNumber("opening-stressed")];
    const heightAt = (y: number): number => {
      let [low, high] = [gap - 1, gap + 6];
      for (let step = 0; step < 40; step += 1) {
        const middle = (low + high) / 2;
        const near = model.field.nearest([x, y, middle]);
        if (near.id === idOf("femur") && near.distanceMm < 0) high = middle;
        else low = middle;
      }
      return low;
    };
    const rise = (heightAt(y0 + 3) + heightAt(y0 - 3)) / 2 - heightAt(y0);
    expect((3 * 3) / (2 * rise)).toBeCloseTo((a * a) / b, -0.3);
  });

  it.each(KNEE_BANDS)("draw the menisci of %s years where the axial map has them, within half a millimetre from 15° past each root", (band) => {
    const model = scopeModelOf(settingAt("medial-body", { band }));
    const tendonDeg = -33;
    for (const of of ["medial", "lateral"] as const) {
      const { rim, freeEdge } = model.knee[of];
      for (let angleDeg = rim.toDeg + 15; angleDeg <= rim.fromDeg - 15; angleDeg += 10) {
        if (of === "lateral" && Math.abs(angleDeg - tendonDeg) < 22) continue;
        const edge = arcPoint(freeEdge, angleDeg);
        // Inwards along the ray from the free edge's own centre: outside the tissue before the edge, inside behind it.
        const outward = { xMm: edge.xMm - freeEdge.centre.xMm, yMm: edge.yMm - freeEdge.centre.yMm };
        const far = Math.hypot(outward.xMm, outward.yMm);
        const isTissue = (beyondMm: number): boolean => {
          const at = (value: number, way: number): number => (value + (way / far) * beyondMm) / model.scale;
          const [x, y] = [at(edge.xMm, outward.xMm), at(edge.yMm, outward.yMm)];
          return Array.from({ length: 36 }, (_, step) => -2 + step / 5).some((z) => { const near = model.field.nearest([x, y, z]); return near.id === idOf("meniscus") && near.distanceMm < 0; });
        };
        expect([band, of, angleDeg, isTissue(-0.5), isTissue(0.9)]).toEqual([band, of, angleDeg, false, true]);
      }
    }
  });
});

describe("the camera", () => {
  const portal: Place = [19, 43, 10];
  it("tilts its view by the direction of view, and turns it about the shaft", () => {
    for (const viewDeg of [0, 30, 70]) {
      for (const turnDeg of [0, 90, 200]) {
        const camera = cameraOf({ portal, tip: [2, 10, 7], viewDeg, turnDeg, fieldDeg: 90 });
        expect((Math.acos(dot3(camera.ahead, camera.shaft)) * 180) / Math.PI).toBeCloseTo(viewDeg, 4);
        expect(camera.right[2]).toBeCloseTo(0, 9);
        expect(camera.up[2]).toBeGreaterThan(0);
        for (const one of [camera.right, camera.up, camera.ahead, camera.shaft]) expect(length(one)).toBeCloseTo(1, 9);
      }
    }
    const [up, right] = [0, 90].map((turnDeg) => cameraOf({ portal, tip: [2, 10, 7], viewDeg: 30, turnDeg, fieldDeg: 90 }).ahead);
    expect(up?.[2]).toBeGreaterThan(0.3);
    // Looking back from the front, the picture's right is the side of −x.
    expect(right?.[0]).toBeLessThan(cameraOf({ portal, tip: [2, 10, 7], viewDeg: 0, turnDeg: 0, fieldDeg: 90 }).ahead[0]);
  });

  it("sees the rim of the picture at half the field", () => {
    const camera = cameraOf({ portal, tip: [2, 10, 7], viewDeg: 30, turnDeg: 40, fieldDeg: 80 });
    for (const corner of [[1, 0], [0, -1], [Math.SQRT1_2, Math.SQRT1_2]] as const) expect((Math.acos(dot3(rayAt(camera, 80, corner), camera.ahead)) * 180) / Math.PI).toBeCloseTo(40, 6);
    expect(rayAt(camera, 80, [0, 0])).toEqual(camera.ahead);
  });

  it("stands so that the target is in the middle, where a tip is asked for", () => {
    const target: Place = [-14, -12, 3];
    const scope = { viewDeg: 30, turnDeg: 250, fieldDeg: 90 };
    const tip = tipFor({ portal, target, distanceMm: 18 }, scope);
    const camera = cameraOf({ ...scope, portal, tip });
    expect(dot3(camera.ahead, unit(minus(target, tip)))).toBeCloseTo(1, 5);
    expect(length(minus(target, tip))).toBeCloseTo(18, 6);
  });
});

describe("what is in view", () => {
  it.each(STATIONS)("%s: the lens stands free, the target is in the field and nothing hides it", (station) => {
    for (const band of KNEE_BANDS) {
      const model = scopeModelOf(settingAt(station, { band }));
      expect(model.field.nearest(model.camera.tip).distanceMm).toBeGreaterThan(1);
      const sight = sightOf(model, model.target);
      expect([station, band, sight.radius < 0.75, sight.isOpen]).toEqual([station, band, true, true]);
    }
  });

  it("adds up to the whole picture, and names only what has a name", () => {
    const shares = whatIsInView(scopeModelOf(settingAt("notch")));
    expect(shares.reduce((sum, one) => sum + one.share, 0)).toBeCloseTo(1, 9);
    for (const { label } of shares) expect(LABELS).toContain(label);
    expect(() => whatIsInView(scopeModelOf(settingAt("notch")), 1)).toThrow("across must be at least 2 and at most 200, got 1");
  });

  it("shows both cruciates in the notch, and the tendon at its hiatus", () => {
    const notch = scopeModelOf(settingAt("notch"));
    expect(share("anterior-cruciate", notch)).toBeGreaterThan(0.1);
    expect(share("posterior-cruciate", notch)).toBeGreaterThan(0.03);
    expect(share("popliteus", scopeModelOf(settingAt("hiatus")))).toBeGreaterThan(0.02);
    expect(share("popliteus", scopeModelOf(settingAt("medial-back")))).toBe(0);
  });

  it("is the same in a left knee, whose picture is the mirror image", () => {
    for (const station of STATIONS) expect(whatIsInView(scopeModelOf(settingAt(station, { side: "left" })))).toEqual(whatIsInView(scopeModelOf(settingAt(station))));
    expect([settingAt("hiatus").turnDeg, settingAt("hiatus", { side: "left" }).turnDeg]).toEqual([270, 90]);
  });

  it("does not change in its place when a straight-ahead scope is turned, and does for an angled one", () => {
    const at = (viewDeg: 0 | 30, turnDeg: number) => whatIsInView(scopeModelOf(settingAt("hiatus", { viewDeg, turnDeg })));
    expect(at(0, 200)).toEqual(at(0, 20));
    expect(at(30, 200)).not.toEqual(at(30, 20));
  });

  it("has a wider field in air than in saline, by Snell's law at a flat window", () => {
    const [air, saline] = [false, true].map((isInSaline) => scopeModelOf(settingAt("notch", { isInSaline })));
    expect(air?.fieldDeg).toBe(105);
    expect(saline?.fieldDeg).toBeCloseTo(fieldInLiquidDeg({ fieldInAirDeg: 105, refractiveIndex: 1.335 }), 9);
  });

  it("shows a strip in the notch when it has moved there, and none without a tear", () => {
    const moved = scopeModelOf(settingAt("medial-back", { pattern: "longitudinal", amount: 1, backMm: 10 }));
    expect(share("strip", moved)).toBeGreaterThan(0.05);
    expect(share("strip", scopeModelOf(settingAt("medial-back", { backMm: 10 })))).toBe(0);
  });

  it.each(["probe", "needle", "stitches"] as const)("shows the %s where it is drawn", (instrument) => {
    const label = instrument === "stitches" ? "stitch" : instrument;
    expect(whatIsInView(scopeModelOf(settingAt("medial-back", { instrument })), 60).some((one) => one.label === label)).toBe(true);
  });
});

describe("lesions", () => {
  const hitsOf = (pattern: (typeof PATTERNS)[number], station: (typeof STATIONS)[number] = "medial-back"): readonly string[] => {
    const model = scopeModelOf(settingAt(station, { pattern, amount: 0.8, of: "medial" }));
    return Array.from({ length: 900 }, (_, index) => cast(model.field, model.camera.tip, rayAt(model.camera, model.fieldDeg, [((index % 30) - 14.5) / 21, (Math.floor(index / 30) - 14.5) / 21]))).map(({ distanceMm }) => distanceMm.toFixed(2));
  };
  const sound = hitsOf("none");
  const soundBody = hitsOf("none", "medial-body");

  it.each(["longitudinal", "root", "flap", "horizontal"] as const)("%s changes what the rays meet", (pattern) => {
    expect(hitsOf(pattern).filter((one, index) => one !== sound[index]).length).toBeGreaterThan(5);
  });

  it("radial changes what the rays meet, seen from the station of the body", () => {
    expect(hitsOf("radial", "medial-body").filter((one, index) => one !== soundBody[index]).length).toBeGreaterThan(5);
  });

  it("a tear behind the rim hardly shows from the front, which is why it is looked for elsewhere", () => {
    const model = scopeModelOf(settingAt("medial-back", { pattern: "ramp", amount: 0.8 }));
    const { rim } = model.knee.medial;
    const behind = arcPoint(rim, -85);
    const near = (pattern: "ramp" | "none") => scopeModelOf(settingAt("medial-back", { pattern, amount: 0.8 })).field.nearest([behind.xMm, behind.yMm, 2.5]);
    expect(near("none").distanceMm).toBeLessThan(0);
    expect(near("ramp").distanceMm).toBeGreaterThan(0);
    expect(hitsOf("ramp").filter((one, index) => Math.abs(Number(one) - Number(sound[index])) > 1).length).toBeLessThan(45);
  });

  it("a discoid meniscus covers more of the lateral plateau", () => {
    const plateau = (amount: number) => share("lateral-plateau", scopeModelOf(settingAt("lateral-back", { pattern: "discoid", amount })));
    expect(plateau(0)).toBeGreaterThan(plateau(1) + 0.1);
  });

  it("are refused beyond their ends", () => {
    expect(() => scopeModelOf(settingAt("medial-back", { pattern: "radial", amount: 1.2 }))).toThrow("amount must be at least 0 and at most 1, got 1.2");
  });
});
