import { type Label, sampled, sharesOf, sightOf } from "../engine/knee/scope/in-view.ts";
import { SOLIDS } from "../engine/knee/scope/scene.ts";
import { along, length, minus } from "../engine/knee/scope/vec3.ts";
import { scopeNumber } from "../facts/scope-model.ts";
import { cautionLines } from "./caution-lines.ts";
import { element, label as textLabel, pathThrough } from "./markup.ts";
import { DISC, drawnRegion, placed, surround } from "./scope-disc.ts";
import { type Region, regionsOf } from "./scope-regions.ts";
import type { ScopeModel } from "./scope-setting.ts";
import { tearOf } from "./scope-tear.ts";
import { scopeInWords, SCOPE_WORDS, type Seen, seenInWords, sightInWords } from "./scope-words.ts";

const words = SCOPE_WORDS.en;

/** Rays along the diameter: fewer where a page holds several drawings. */
const ACROSS = { fine: 44, plain: 34 } as const;
const LEAST_SHARE = 0.006;
const LEAST_NUMBERED = 0.015;
const FONT_PX = 15;

const numbered = (regions: readonly Region<Label>[], mirror: number): string => regions.map(({ inside, share }, index) => {
  if (share < LEAST_NUMBERED) return "";
  const [x, y] = placed(mirror)(inside);
  return textLabel(x, y + 5, { text: String(index + 1), class: "num", "text-anchor": "middle", "font-size": FONT_PX });
}).join("");

/** A point on the ring round the disc, by clock angle. */
const onRing = (clockDeg: number, beyondPx: number): readonly [number, number] => {
  const [s, c] = [Math.sin((clockDeg * Math.PI) / 180), Math.cos((clockDeg * Math.PI) / 180)];
  return [DISC.xPx + s * (DISC.radiusPx + beyondPx), DISC.yPx - c * (DISC.radiusPx + beyondPx)];
};

/** Marks outside the disc: the level of the horizon, which way is up, medial and lateral, and where a tilted lens points. */
const marks = ({ setting, camera }: ScopeModel, mirror: number): string => {
  const { viewDeg, turnDeg } = setting;
  const isMedialRight = camera.right[0] * mirror < 0;
  const side = (isRight: boolean): string => (isRight === isMedialRight ? words.medial : words.lateral);
  const level = [90, 270].map((clockDeg) => pathThrough([onRing(clockDeg, 2), onRing(clockDeg, 22)])).join("");
  const lens = viewDeg === 0 ? "" : element("path", { class: "lens", d: pathThrough([onRing(turnDeg, 3), onRing(turnDeg + 3.4, 16), onRing(turnDeg - 3.4, 16)], true) });
  const size = { class: "dim", "font-size": FONT_PX };
  return [
    element("path", { class: "ax", d: level }),
    lens,
    textLabel(0, 30, { text: side(false), ...size }),
    textLabel(DISC.widthPx, 30, { text: side(true), "text-anchor": "end", ...size }),
  ].join("");
};

/** A shaft may press this share of its half thickness into what it slides along. */
const HELD = 0.5;

/** What a straight shaft would run into on its way, sampled along it. */
const blockedOf = ({ field, camera, scale, portal }: ScopeModel): Seen["blocked"] => {
  if (field.nearest(camera.tip).distanceMm < 0) return "lens";
  const longMm = length(minus(camera.tip, portal));
  const hard = new Set((["tibia", "femur", "anterior-cruciate", "posterior-cruciate"] as const).map((name) => SOLIDS.indexOf(name)));
  const steps = Math.ceil(longMm);
  const hits = Array.from({ length: steps }, (_, step) => field.nearest(along(camera.tip, camera.shaft, (-longMm * step) / steps))).filter(({ id, distanceMm }) => hard.has(id) && distanceMm < (HELD * scopeNumber("scope-radius")) / scale);
  return hits.length > 0 ? "shaft" : null;
};

export interface ScopeFigure {
  readonly markup: string;
  readonly text: string;
  /** The same words without the caution, for a list beside the picture. */
  readonly list: Seen;
  readonly said: string;
  /** Where the target is, and what stands in the way. */
  readonly target: string;
}

/** The view through the scope as a drawing and in words. */
export const scopeFigure = (model: ScopeModel, detail: keyof typeof ACROSS = "fine"): ScopeFigure => {
  const across = ACROSS[detail];
  const samples = sampled(model, across);
  const mirror = model.setting.side === "left" ? -1 : 1;
  const regions = regionsOf(samples, across, LEAST_SHARE);
  const shares = sharesOf(samples).filter(({ share }) => share >= LEAST_SHARE);
  const seen: Seen = { shares, sight: sightOf(model, model.target), tear: tearOf(model), blocked: blockedOf(model) };
  const markup = element("svg", { class: "fig scope", viewBox: `0 0 ${DISC.widthPx} ${DISC.heightPx}`, "aria-hidden": "true", focusable: "false" }, [
    element("g", { class: "regions" }, regions.map((region) => drawnRegion(region, mirror)).join("") + numbered(regions, mirror)),
    element("path", { class: "surround", "fill-rule": "evenodd", d: surround() }),
    element("circle", { class: "t-out", cx: DISC.xPx, cy: DISC.yPx, r: DISC.radiusPx }),
    marks(model, mirror),
    cautionLines({ yPx: DISC.heightPx - 26, fontPx: FONT_PX, isNarrow: true }),
  ].join(""));
  return { markup, text: scopeInWords(model, seen), list: seen, said: seenInWords(model, seen), target: sightInWords(model, seen) };
};
