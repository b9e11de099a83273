import { type KeyboardEvent, type PointerEvent, useEffect, useMemo, useRef, useState } from "react";
import { bearingDeg as bearingTo } from "../engine/knee/bearing.ts";
import { lengthOf, fromTo } from "../engine/geometry/vec2.ts";
import { axialFigure, type AxialFigure } from "../figures/axial-figure.ts";
import { pointAt } from "../figures/axial-frame.ts";
import { axialModelOf, type AxialSetting } from "../figures/axial-setting.ts";

/** Least, greatest and step of every number that a hand may set. */
export const LIMITS = {
  bearingDeg: { least: -20, greatest: 75, step: 1, coarse: 5 },
  depthMm: { least: 1, greatest: 30, step: 0.5, coarse: 2 },
  entryToJunctionMm: { least: 0.5, greatest: 8, step: 0.5, coarse: 1 },
  marginMm: { least: 0, greatest: 6, step: 0.5, coarse: 1 },
  capsuleMm: { least: 1, greatest: 9, step: 0.5, coarse: 1 },
} as const;
export type NumberKey = keyof typeof LIMITS;

/** A value on its grid and inside its limits. */
export const limited = (key: NumberKey, value: number): number => {
  const { least, greatest, step } = LIMITS[key];
  return Math.min(greatest, Math.max(least, Math.round(value / step) * step));
};

const QUIET_MS = 400;

/** Says a text only after the hand has rested, so that a screen reader is not flooded. */
const useRested = (text: string): string => {
  const [said, setSaid] = useState(text);
  useEffect(() => {
    const timer = setTimeout(() => setSaid(text), QUIET_MS);
    return () => clearTimeout(timer);
  }, [text]);
  return said;
};

export interface NeedleHand {
  readonly setting: AxialSetting;
  readonly figure: AxialFigure;
  readonly spoken: string;
  readonly change: (part: Partial<AxialSetting>) => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
  readonly onPointer: (event: PointerEvent<HTMLElement>) => void;
}

const KEYS: Readonly<Record<string, readonly [NumberKey, 1 | -1]>> = { ArrowRight: ["bearingDeg", 1], ArrowLeft: ["bearingDeg", -1], ArrowDown: ["depthMm", 1], ArrowUp: ["depthMm", -1] };

/** The needle in a hand: by pointer, by arrow keys, by number. */
export const useNeedle = (first: AxialSetting, showsAngles: boolean): NeedleHand => {
  const [setting, setSetting] = useState(first);
  const isDragging = useRef(false);
  const figure = useMemo(() => axialFigure(axialModelOf(setting, { isOwn: true, showsAngles })), [setting, showsAngles]);
  const spoken = useRested(figure.text);
  const change = (part: Partial<AxialSetting>): void => setSetting((before) => ({ ...before, ...part }));

  const onKeyDown = (event: KeyboardEvent): void => {
    const move = KEYS[event.key];
    if (move === undefined) return;
    event.preventDefault();
    const [key, way] = move;
    // In a left knee the lateral side is on the left of the picture, and right arrow turns right as seen.
    const seen = key === "bearingDeg" && setting.side === "left" ? -way : way;
    change({ [key]: limited(key, setting[key] + seen * (event.shiftKey ? LIMITS[key].coarse : LIMITS[key].step)) });
  };

  const onPointer = (event: PointerEvent<HTMLElement>): void => {
    if (event.type === "pointerdown") isDragging.current = true;
    if (event.type === "pointerup" || event.type === "pointercancel") isDragging.current = false;
    if (!isDragging.current) return;
    const svg = [...event.currentTarget.querySelectorAll("svg")].find((one) => one.getBoundingClientRect().width > 0);
    if (!svg) return;
    const box = svg.getBoundingClientRect();
    const point = pointAt(svg.classList.contains("narrow") ? "narrow" : "wide", (event.clientX - box.left) / box.width, (event.clientY - box.top) / box.width);
    const { model, needle } = figure.view;
    const bearing = limited("bearingDeg", bearingTo(model.knee.side, model.knee.portals[model.portal], point));
    const depth = needle ? limited("depthMm", lengthOf(fromTo(needle.entry, point))) : setting.depthMm;
    event.currentTarget.setPointerCapture(event.pointerId);
    change({ bearingDeg: bearing, depthMm: depth });
  };
  return { setting, figure, spoken, change, onKeyDown, onPointer };
};
