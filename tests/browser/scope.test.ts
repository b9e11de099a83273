import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Place } from "../../src/engine/knee/scope/field.ts";
import { PICTURE_SHADER, PROBE_SHADER, VERTEX_SHADER } from "../../src/figures/scope-shader.ts";
import { scopeModelOf, type ScopeSetting, settingAt } from "../../src/figures/scope-setting.ts";
import { uniformsOf } from "../../src/figures/scope-uniforms.ts";
import { TEAR_VIEWS } from "../../src/engine/knee/scope/tear-views.ts";
import { STATIONS, type StationId } from "../../src/engine/knee/scope/stations.ts";
import { type Drawn, drawnIn, numbersOf } from "../../src/tools/bench/shader-page.ts";
import { launchBrowser, NO_BROWSER } from "../../src/tools/find-browser.ts";
import { siteForTests } from "./open.ts";

const SIZE_PX = 96;
const POINTS = 64;
const SLOW_MS = 120_000;

const held: { browser?: Browser; page?: Page } = {};
beforeAll(async () => {
  const browser = await launchBrowser();
  if (browser === null) throw new Error(NO_BROWSER);
  held.browser = browser;
  held.page = await browser.newPage();
}, SLOW_MS);
afterAll(async () => { await held.browser?.close(); });

const drawn = async (one: Omit<Drawn, "vertex">): Promise<readonly number[]> => {
  if (held.page === undefined) throw new Error("the browser is not open yet");
  return (await held.page.evaluate(drawnIn, { ...one, vertex: VERTEX_SHADER })).pixels;
};

type Colour = readonly [number, number, number, number];

/** A picture of a station: a function that gives the colour at a place, −1 to 1, right and up. */
const pictureOf = async (station: StationId, setting: Partial<ScopeSetting> = {}) => {
  const uniforms = uniformsOf(scopeModelOf(settingAt(station, setting)));
  const numbers = numbersOf(uniforms, SIZE_PX);
  const pixels = await drawn({ widthPx: SIZE_PX, heightPx: SIZE_PX, fragment: PICTURE_SHADER, numbers });
  const pixel = (column: number, row: number): Colour => [0, 1, 2, 3].map((part) => pixels[4 * (row * SIZE_PX + column) + part] ?? 0) as unknown as Colour;
  return { pixels, pixel, at: (u: number, v: number): Colour => pixel(Math.round(((u + 1) * SIZE_PX) / 2 - 0.5), Math.round(((v + 1) * SIZE_PX) / 2 - 0.5)) };
};

const brightness = ([r, g, b]: Colour): number => 0.3 * r + 0.59 * g + 0.11 * b;

describe("the shader", () => {
  it("gives the engine's distances and solids at fixed points", async () => {
    const model = scopeModelOf(settingAt("medial-back", { pattern: "flap", amount: 0.7, instrument: "needle" }));
    const places: readonly Place[] = Array.from({ length: POINTS }, (_, index) => [((index * 37) % 61) - 30.3, ((index * 23) % 43) - 21.4, ((index * 11) % 17) - 3.2]);
    const { F } = uniformsOf(model);
    const pixels = await drawn({ widthPx: POINTS, heightPx: 1, fragment: PROBE_SHADER, numbers: { F: [...F], points: places.flatMap((place) => [...place, 0]), zero: [0] } });
    const wrong = places.flatMap((place, index) => {
      const own = model.field.nearest(place);
      const [first = 0, second = 0, third = 0, solid = 0] = pixels.slice(4 * index, 4 * index + 4);
      const view = new DataView(new ArrayBuffer(4));
      view.setUint32(0, (first << 24) | (second << 16) | (third << 8));
      // The last eight bits of the number are left out, which is less than a ten-thousandth of it.
      const differs = Math.abs(view.getFloat32(0) - own.distanceMm) > 0.003 + 0.001 * Math.abs(own.distanceMm);
      return differs || solid !== own.id ? [[place, own, view.getFloat32(0), solid]] : [];
    });
    expect(wrong).toEqual([]);
  }, SLOW_MS);

  it.each(STATIONS)("%s is lit, round, and clear outside its disc", async (station) => {
    const { pixels, pixel, at } = await pictureOf(station);
    const inside = Array.from({ length: SIZE_PX * SIZE_PX }, (_, index) => pixel(index % SIZE_PX, Math.floor(index / SIZE_PX))).filter(([, , , alpha]) => alpha === 255);
    expect(inside.length / (SIZE_PX * SIZE_PX)).toBeGreaterThan(0.7);
    expect(inside.filter((one) => brightness(one) > 40).length / inside.length).toBeGreaterThan(0.85);
    expect(inside.filter((one) => brightness(one) > 250).length / inside.length).toBeLessThan(0.1);
    expect(pixels.slice(0, 4)).toEqual([0, 0, 0, 0]);
    expect(at(0, 0)[3]).toBe(255);
  }, SLOW_MS);

  it("colours cartilage nearly white, meniscus warmer, synovium red", async () => {
    const { at } = await pictureOf("medial-body");
    const warmth = ([r, , b]: Colour): number => r / Math.max(b, 1);
    const [condyle, meniscus, synovium] = [at(0, 0.6), at(0.2, -0.15), at(0.85, 0.25)];
    expect(warmth(condyle)).toBeLessThan(1.25);
    expect(warmth(meniscus)).toBeGreaterThan(warmth(condyle));
    expect(warmth(synovium)).toBeGreaterThan(1.4);
  }, SLOW_MS);

  it("draws a left knee as the mirror image of a right one", async () => {
    const [right, left] = [await pictureOf("hiatus"), await pictureOf("hiatus", { side: "left" })];
    const differences = Array.from({ length: SIZE_PX * SIZE_PX }, (_, index) => {
      const [column, row] = [index % SIZE_PX, Math.floor(index / SIZE_PX)];
      return Math.abs(brightness(right.pixel(column, row)) - brightness(left.pixel(SIZE_PX - 1 - column, row)));
    });
    // The grain of the camera is not mirrored; everything else is.
    expect(differences.filter((one) => one > 12).length).toBeLessThan(differences.length / 100);
  }, SLOW_MS);

  it("shows a tear where there is one", async () => {
    const [sound, torn] = [await pictureOf("hiatus"), await pictureOf("hiatus", { pattern: "radial", of: "lateral", amount: 1 })];
    const changed = sound.pixels.filter((one, index) => Math.abs(one - (torn.pixels[index] ?? 0)) > 25).length;
    expect(changed).toBeGreaterThan(30);
  }, SLOW_MS);
});

describe("every finding", () => {
  const views = [...Object.entries(TEAR_VIEWS).flatMap(([find, list]) => (find === "hiatus" ? [] : list.map((view) => [`${find} from ${view.station}`, view] as const))),
    ...(["fascicle", "hypermobile"] as const).map((pattern) => [pattern, { station: "hiatus", pattern, of: "lateral", amount: 0.9, backMm: 0 }] as const)];

  it.each(views)("%s shows in the picture, and is gone without it", async (_, { station, ...rest }) => {
    const [sound, torn, again] = [await pictureOf(station, { ...rest, pattern: "none" }), await pictureOf(station, rest), await pictureOf(station, rest)];
    const differing = (other: typeof sound): number => torn.pixels.filter((one, index) => Math.abs(one - (other.pixels[index] ?? 0)) > 25).length;
    // Of 27,000 values of the disc: the narrowest gap changes a hundred.
    expect(differing(sound)).toBeGreaterThan(60);
    expect(differing(again)).toBe(0);
  }, SLOW_MS);
});

describe("the page", () => {
  const open = siteForTests();

  it("shows a drawing with words before any script, and keeps it without one", async () => {
    const { page, noise, close } = await open("/scope/", { javaScriptEnabled: false });
    expect(await page.locator(".scopestage [role=img]").getAttribute("aria-label")).toMatch(/In view, by share of the picture: 1 /);
    expect(await page.locator(".scopestage canvas").isVisible()).toBe(false);
    expect(await page.locator(".scopestage .regions").isVisible()).toBe(true);
    expect(noise).toEqual([]);
    await close();
  });

  it("puts the picture in the drawing's place, says what a change brings, and goes back to the drawing", async () => {
    const { page, close } = await open("/scope/");
    await page.locator(".scopestage.painted").waitFor({ timeout: SLOW_MS });
    expect(await page.locator(".scopestage canvas").isVisible()).toBe(true);
    await page.getByLabel("Looked for").selectOption("notch");
    await page.getByRole("status").filter({ hasText: "anterior cruciate ligament" }).waitFor({ timeout: SLOW_MS });
    await page.getByLabel("Turn of the scope, clock angle", { exact: true }).fill("90");
    await page.keyboard.press("Enter");
    await page.locator("[role=img][aria-label*='turned to 3 o’clock']").first().waitFor({ timeout: SLOW_MS });
    await page.getByLabel("drawing").check();
    expect(await page.locator(".scopestage canvas").isVisible()).toBe(false);
    await close();
  }, SLOW_MS);

  it("keeps the drawing where WebGL cannot be had", async () => {
    const { page, close } = await open("/search/");
    await page.addInitScript(() => {
      const own = HTMLCanvasElement.prototype.getContext;
      HTMLCanvasElement.prototype.getContext = function get(this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
        return kind === "webgl2" ? null : Reflect.apply(own, this, [kind, ...rest]);
      } as typeof own;
    });
    await page.goto(new URL("/scope/", page.url()).href);
    await page.locator(".scopework").scrollIntoViewIfNeeded();
    await page.locator("astro-island:not([ssr])").first().waitFor({ state: "attached" });
    await page.getByLabel("Looked for").selectOption("hiatus");
    await page.getByRole("status").filter({ hasText: "popliteus tendon at its hiatus" }).waitFor({ timeout: SLOW_MS });
    expect(await page.locator(".scopestage.painted").count()).toBe(0);
    expect(await page.locator(".scopestage .regions").isVisible()).toBe(true);
    await close();
  }, SLOW_MS);
});
