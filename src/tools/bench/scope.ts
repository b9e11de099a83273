import { STATIONS } from "../../engine/knee/scope/stations.ts";
import { scopeFigure } from "../../figures/scope-figure.ts";
import { scopeModelOf, settingAt } from "../../figures/scope-setting.ts";
import { PICTURE_SHADER, VERTEX_SHADER } from "../../figures/scope-shader.ts";
import { uniformsOf } from "../../figures/scope-uniforms.ts";
import { launchBrowser, NO_BROWSER } from "../find-browser.ts";
import { type Drawn, drawnIn, numbersOf } from "./shader-page.ts";

/** The picture must stand within this, without a graphics card, on two cores. */
const MOST_MS = 1000;
const SIZE_PX = 256;
const SMALL_PX = 8;
const ROUNDS = 5;

const shown = (name: string, ms: number): void => console.log(`${name.padEnd(52)} ${Math.round(ms).toLocaleString("en-GB").padStart(12)} ms`);

/** Times the view through the scope: its drawing here, its picture in a browser that paints without a graphics card. */
export const benchScope = async (): Promise<void> => {
  const browser = await launchBrowser();
  if (browser === null) throw new Error(NO_BROWSER);
  const page = await browser.newPage();
  const drawing = (station: (typeof STATIONS)[number], sizePx: number): Drawn =>
    ({ widthPx: sizePx, heightPx: sizePx, vertex: VERTEX_SHADER, fragment: PICTURE_SHADER, numbers: numbersOf(uniformsOf(scopeModelOf(settingAt(station))), sizePx) });
  try {
    shown("shader prepared, with a first small picture", (await page.evaluate(drawnIn, drawing("notch", SMALL_PX))).tookMs);
    const slow: string[] = [];
    for (const station of STATIONS) {
      const started = performance.now();
      scopeFigure(scopeModelOf(settingAt(station)));
      shown(`drawing with its words, ${station}`, performance.now() - started);
      const times: number[] = [];
      for (let round = 0; round < ROUNDS; round += 1) times.push((await page.evaluate(drawnIn, drawing(station, SIZE_PX))).tookMs);
      shown(`picture of ${SIZE_PX} px, fastest of ${ROUNDS}, ${station}`, Math.min(...times));
      if (Math.min(...times) > MOST_MS) slow.push(station);
    }
    console.log(slow.length === 0 ? `Every picture stands within ${MOST_MS} ms.` : `Slower than ${MOST_MS} ms: ${slow.join(", ")}.`);
    if (slow.length > 0) process.exitCode = 1;
  } finally {
    await browser.close();
  }
};
